package fayline.store.file;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One thing that happened, as a {@code history} file tells it.
 *
 * @param id a name by which a correction finds it; empty where there is none
 * @param at when
 * @param by who did it
 * @param act what happened
 * @param step the step as {@code made/n/key}; empty where the event is of none
 * @param with who else worked on it
 * @param people who worked on it, where it says so outright; otherwise it is who did it and who else worked on it
 * @param places stands and ports that were taken
 * @param whichWay the answer to which way round it lies
 * @param signed who signed the hold point
 * @param slip why a finished step took longer or came later than planned; empty where nothing is said
 * @param text a note, or the reason of a correction
 * @param photos photos that go with a note
 * @param kind what was read, for readings
 * @param of the part, fit or step that was measured
 * @param station the station of a fit
 * @param state the state in which it was measured
 * @param values values exactly as typed, by name: {@code air}, {@code surface}, {@code humidity} ...
 * @param said further fields of what went into a step and of deviations, by name as {@link fayline.store.file.kind.HistoryKind#SAID}
 * @param rows fields of each row of a list, as of rework
 * @param corrects the id of the event that this one corrects
 * @param withdrawn whether that event is taken back altogether
 * @param to for a correction, the time that takes the place of the wrong one
 * @param instead for a correction, the note that takes the place of the wrong one; empty where there is none
 * @param file the file it stands in
 * @param line its line
 */
public record HistoryEvent(
        String id,
        Instant at,
        String by,
        Act act,
        String step,
        List<String> with,
        List<String> people,
        List<String> places,
        String whichWay,
        String signed,
        String slip,
        String text,
        List<HistoryPhoto> photos,
        String kind,
        String of,
        String station,
        String state,
        Map<String, String> values,
        Map<String, String> said,
        List<Map<String, String>> rows,
        Optional<String> corrects,
        boolean withdrawn,
        Optional<Instant> to,
        String instead,
        String file,
        int line) {
    /** Copies the collections. */
    public HistoryEvent {
        with = List.copyOf(with);
        people = List.copyOf(people);
        places = List.copyOf(places);
        photos = List.copyOf(photos);
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
        said = Collections.unmodifiableMap(new LinkedHashMap<>(said));
        rows = rows.stream()
                .map(r -> Collections.unmodifiableMap(new LinkedHashMap<>(r)))
                .toList();
    }

    /** A further field; empty where it is not there. */
    public String said(String key) {
        return said.getOrDefault(key, "");
    }

    /** What happened. */
    public enum Act {
        /** Hands began a step. */
        START,
        /** Hands left it. */
        FINISH,
        /** Something was noted. */
        NOTE,
        /** Something was measured. */
        READING,
        /** An earlier event was wrong. */
        CORRECT,
        /** Material was taken from a lot. */
        DRAW,
        /** A cup was mixed. */
        MIX,
        /** A ply was laid or left out. */
        PLY,
        /** Something came out other than drawn. */
        DEVIATION,
        /** Somebody decided about a deviation, or agreed to that. */
        SETTLE,
        /** A lot came into the stores. */
        RECEIVE,
        /** A lot was carried into the cold or out of it. */
        MOVE,
        /** What is left was counted. */
        COUNT,
        /** Something was ordered. */
        ORDER,
        /** What was ordered came. */
        ARRIVAL,
        /** Somebody looked at a stage. */
        VISIT,
        /** A visit found something. */
        FINDING,
        /** Something found was put right. */
        PUT_RIGHT,
        /** Somebody accepted that, or did not. */
        SIGN_OFF,
        /** An alteration of the design was asked for. */
        CHANGE,
        /** Somebody decided about a change, or agreed to that. */
        CHANGE_DECISION,
        /** Something that a change touches was settled. */
        CHANGE_LINE,
        /** A change was closed. */
        CHANGE_CLOSE
    }
}
