package fayline.app.web.journal;

import java.util.List;

/**
 * The record.
 *
 * @param entries how many there are
 * @param paper where it ends, in the short form
 * @param head where it ends, by the last entry's hash
 * @param checked what the check found, where it was asked for; empty otherwise
 * @param sound whether the check found nothing wrong
 * @param typed the head that was typed to check against
 * @param text the words that are sought
 * @param sorts kinds of entries to choose from
 * @param lines entries, the newest first
 * @param further the address of older ones; empty where there are none
 * @param sheets sheets printed so far, the newest first
 * @param advice when a sheet is due; empty where one was printed within a week
 * @param mayPrint whether a sheet may be printed here
 */
public record RecordView(
        long entries,
        String paper,
        String head,
        String checked,
        boolean sound,
        String typed,
        String text,
        List<Sort> sorts,
        List<Line> lines,
        String further,
        List<Sheet> sheets,
        String advice,
        boolean mayPrint) {
    /** Copies the lists. */
    public RecordView {
        sorts = List.copyOf(sorts);
        lines = List.copyOf(lines);
        sheets = List.copyOf(sheets);
    }

    /**
     * Kinds of entries that are shown together.
     *
     * @param key the word in the address
     * @param words its name
     * @param chosen whether only these are shown
     */
    public record Sort(String key, String words, boolean chosen) {}

    /**
     * An entry.
     *
     * @param seq its number
     * @param at when it was taken
     * @param by who
     * @param says what happened
     */
    public record Line(long seq, String at, String by, String says) {}

    /**
     * A sheet.
     *
     * @param number its number
     * @param book what it is the book of; empty for a sheet alone
     * @param at when it was made
     * @param by who made it
     * @param paper the head on it
     */
    public record Sheet(long number, String book, String at, String by, String paper) {}
}
