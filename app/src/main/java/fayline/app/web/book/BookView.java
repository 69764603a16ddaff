package fayline.app.web.book;

import java.util.List;

/**
 * Books to print, and those printed.
 *
 * @param groups the whole aircraft first, then what stands in each assembly
 * @param printed books whose printing is in the record, the newest first
 */
public record BookView(List<Group> groups, List<Printed> printed) {
    /** Copies the lists. */
    public BookView {
        groups = List.copyOf(groups);
        printed = List.copyOf(printed);
    }

    /**
     * Books that stand together.
     *
     * @param book the book of all of them
     * @param below the books of each
     */
    public record Group(Line book, List<Line> below) {
        /** Copies the list. */
        public Group {
            below = List.copyOf(below);
        }
    }

    /**
     * A book.
     *
     * @param of the id of what it is of; empty for the aircraft
     * @param name its name
     * @param begun how much of it the record tells of, in words
     */
    public record Line(String of, String name, String begun) {}

    /**
     * A book that was printed.
     *
     * @param number its number among the sheets
     * @param name what it is of
     * @param paper the head on it
     * @param at when, and by whom
     */
    public record Printed(long number, String name, String paper, String at) {}
}
