package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.method.fitup.after.AsBuiltResult;
import fayline.method.fitup.after.Lesson;
import java.util.List;
import java.util.Optional;

/**
 * The bonded part against what was foretold.
 *
 * @param from the state whose readings foretold it
 * @param to the state in which it was read after the bond
 * @param stations foretold and read gap at each station
 * @param result the comparison; empty where an uncertainty is missing
 * @param lesson what the scheme's bias is held to be, where there is a comparison
 * @param words what it means
 * @param lessonWords the lesson in words; empty without one
 */
public record FitAfter(
        String from,
        String to,
        List<Pair> stations,
        Optional<AsBuiltResult> result,
        Optional<Lesson> lesson,
        String words,
        Phrase lessonWords) {
    /** Copies the list. */
    public FitAfter {
        stations = List.copyOf(stations);
    }

    /**
     * One station.
     *
     * @param station its mark
     * @param foretoldMm the gap that was foretold
     * @param readMm the gap that was read
     */
    public record Pair(String station, double foretoldMm, double readMm) {}
}
