package fayline.flow.result.fit;

import fayline.basis.finding.Phrase;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.space.FlushMove;
import java.util.List;
import java.util.Optional;

/**
 * What happened to the part between two states that were read.
 *
 * @param from the earlier state's id
 * @param to the later one's
 * @param move the rigid move that explains most of it, of a flat part in its plane, of a curved one in space and from its flushes
 *     too; empty where places are not known or too few were read twice
 * @param pivot its pivot
 * @param gaps change of the gap at each station that was read in both, less what warmth alone does where that is known
 * @param restMm what the move does not explain: root of the mean square
 * @param flush shift and tilt out of plane of a flat part, where flush was read at three stations in both
 * @param words the move in words; empty without one
 * @param warmth what the temperatures of the two states have to do with it, in words; empty where nothing is to be said
 */
public record StateChange(
        String from,
        String to,
        Optional<SpaceMove> move,
        Vector pivot,
        List<Change> gaps,
        double restMm,
        Optional<FlushMove> flush,
        Phrase words,
        Phrase warmth) {
    /** Copies the list. */
    public StateChange {
        gaps = List.copyOf(gaps);
    }

    /**
     * Change at a station.
     *
     * @param station its mark
     * @param changeMm later less earlier
     */
    public record Change(String station, double changeMm) {}
}
