package fayline.app.web.change;

import java.util.List;

/**
 * A change as a page shows it.
 *
 * @param seq the entry that raised it
 * @param name its name
 * @param what what is to be otherwise
 * @param why why
 * @param raised when and by whom
 * @param stage how far it is
 * @param open whether somebody has still to do something about it
 * @param structural whether structure is touched
 * @param alters what it alters itself, in words
 * @param said what was decided and closed, each a sentence
 * @param groups what it touches, by group
 * @param counts how much of it is made
 * @param disposals what was begun before it, each with what becomes of it
 * @param missing what is missing before it can be closed
 */
public record ChangeView(
        long seq,
        String name,
        String what,
        String why,
        String raised,
        Stage stage,
        boolean open,
        boolean structural,
        List<String> alters,
        List<String> said,
        List<Group> groups,
        String counts,
        List<Disposal> disposals,
        List<String> missing) {
    /** Copies the lists. */
    public ChangeView {
        alters = List.copyOf(alters);
        said = List.copyOf(said);
        groups = List.copyOf(groups);
        disposals = List.copyOf(disposals);
        missing = List.copyOf(missing);
    }

    /**
     * How far it is.
     *
     * @param words the stage
     * @param toDecide whether the lead has to decide
     * @param forSecond whether a second person has to agree
     * @param followed whether its lines are being settled
     */
    public record Stage(String words, boolean toDecide, boolean forSecond, boolean followed) {}

    /**
     * Things of one sort.
     *
     * @param name its heading
     * @param key the word in the record
     * @param count how many there are and how many are settled
     * @param settled whether each is settled by itself
     * @param lines the things
     */
    public record Group(String name, String key, String count, boolean settled, List<Line> lines) {
        /** Copies the list. */
        public Group {
            lines = List.copyOf(lines);
        }

        /** Whether something of it is open. */
        public boolean open() {
            return settled && lines.stream().anyMatch(Line::open);
        }
    }

    /**
     * One thing.
     *
     * @param item its name among all, as {@code group/id}
     * @param name what people call it
     * @param link where it is shown; empty for nowhere
     * @param why over which ways it is touched
     * @param standing whether it is made; empty where it is nothing made
     * @param detail what is to be known of it
     * @param became what became of it; empty while it is open
     * @param open whether that is still to be said
     */
    public record Line(
            String item,
            String name,
            String link,
            String why,
            String standing,
            String detail,
            String became,
            boolean open) {}

    /**
     * What becomes of something that was begun before.
     *
     * @param made the part or joint
     * @param name what people call it
     * @param says what was decided, or what is to be done
     * @param link its deviation; empty where none is opened
     * @param open whether something is to be done
     */
    public record Disposal(String made, String name, String says, String link, boolean open) {}
}
