package fayline.flow.record.change;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * An alteration of the design.
 *
 * @param seq the entry that raised it
 * @param project the project
 * @param name its name in the project, as {@code C-07}
 * @param at when it was raised
 * @param by who raised it
 * @param what what is to be otherwise, as typed
 * @param why why, as typed
 * @param touches what it alters, as {@code sort/id}
 * @param structural whether structure is touched
 * @param verdict what was decided; empty while nothing is
 * @param settled what became of each thing that it touches, by {@code group/id}
 * @param closed how it was closed; empty while it is not
 */
public record Change(
        long seq,
        String project,
        String name,
        Instant at,
        String by,
        String what,
        String why,
        List<String> touches,
        boolean structural,
        Optional<Verdict> verdict,
        SortedMap<String, Settled> settled,
        Optional<Closed> closed) {
    /** Copies the collections. */
    public Change {
        touches = List.copyOf(touches);
        settled = Collections.unmodifiableSortedMap(new TreeMap<>(settled));
    }

    /** How far it is. */
    public Stage stage() {
        if (closed.isPresent()) {
            return Stage.CLOSED;
        }
        if (verdict.isEmpty()) {
            return Stage.RAISED;
        }
        if (!verdict.get().accepted()) {
            return Stage.REFUSED;
        }
        return structural && verdict.get().second().isEmpty() ? Stage.WAITS_FOR_SECOND : Stage.ACCEPTED;
    }

    /** Whether it holds: accepted, with a second person where structure is touched, or closed since. */
    public boolean isInForce() {
        return stage() == Stage.ACCEPTED || stage() == Stage.CLOSED;
    }

    /** Whether somebody has still to do something about it. */
    public boolean isOpen() {
        return stage() != Stage.CLOSED && stage() != Stage.REFUSED;
    }

    /** What became of one thing; empty while it is open. */
    public Optional<Settled> settled(String item) {
        return Optional.ofNullable(settled.get(item));
    }

    /** Whether a part or joint is made otherwise by it while its definition is not yet so. */
    public boolean awaitsDefinitionOf(String made) {
        return stage() == Stage.ACCEPTED
                && verdict.filter(v -> v.isOn(made)).isPresent()
                && !settled.containsKey(itemOf(made));
    }

    /** The line about a part or joint itself. */
    public static String itemOf(String made) {
        return "made/" + made;
    }

    /** How far a change is. */
    public enum Stage {
        /** Nobody has decided. */
        RAISED("to be decided"),
        /** It is accepted, and a second person must agree. */
        WAITS_FOR_SECOND("waits for a second person"),
        /** It is made. */
        ACCEPTED("accepted, being followed"),
        /** Nothing becomes of it. */
        REFUSED("refused"),
        /** All that it touches is settled. */
        CLOSED("closed");

        private final String words;

        Stage(String words) {
            this.words = words;
        }

        /** The stage as people read it. */
        public String words() {
            return words;
        }
    }

    /**
     * What became of one thing that it touches.
     *
     * @param seq its entry
     * @param at when
     * @param by who settled it
     * @param how what became of it
     * @param note why or what was done, as typed
     * @param drawing the drawing that it is made to from now on, where there is one
     */
    public record Settled(long seq, Instant at, String by, Treatment how, String note, String drawing) {}

    /**
     * How it was closed.
     *
     * @param seq its entry
     * @param at when
     * @param by who closed it
     * @param note what is to be said, as typed; may be empty
     */
    public record Closed(long seq, Instant at, String by, String note) {}
}
