package fayline.store.file.net;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The lines of a file, read one after the other; knows where it is when something is wrong. */
final class Lines {
    /** Numbers at the beginning of an activity's row: its own, 1 for modes, and a count or duration. */
    static final int ROW_HEAD = 3;

    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d+");

    private final String file;
    private final List<String> lines;
    private int next;

    Lines(String file, List<String> lines) {
        this.file = file;
        this.lines = lines;
    }

    /** The next line; fails at the end of the file. */
    String next(String expected) {
        if (next >= lines.size()) {
            next = lines.size() + 1;
            throw wrong("line", "the end of the file", expected);
        }
        return lines.get(next++);
    }

    /** Goes on behind the first line that begins so, and returns the rest of that line. */
    String after(String beginning) {
        while (true) {
            String line = next("a line that begins with \"" + beginning + "\"").strip();
            if (line.startsWith(beginning)) {
                return line.substring(beginning.length());
            }
        }
    }

    /** The whole numbers of the next line that is neither empty nor a rule of signs. */
    List<Integer> numbers(String key, String expected) {
        String line = "";
        while (line.isEmpty() || line.chars().allMatch(c -> c == '-' || c == '*')) {
            line = next(expected).strip();
        }
        return whole(line, key, expected);
    }

    /** The row of an activity, as long as the least it needs. */
    List<Integer> row(int number, String key, int least) {
        List<Integer> row = numbers(key, "whole numbers, the row of activity " + number);
        if (row.size() < least) {
            throw wrong(key, row.size() + " numbers", "at least " + least);
        }
        if (row.get(0) != number) {
            throw wrong(key, "activity " + row.get(0), "activity " + number);
        }
        within(row.get(1), 1, 1, "modes");
        return row;
    }

    /** The whole numbers in a text, which holds nothing else; brackets around a number are left out. */
    List<Integer> whole(String text, String key, String expected) {
        List<Integer> all = new ArrayList<>();
        for (String word : text.strip().split("\\s+")) {
            all.add(number(word, key, expected));
        }
        return all;
    }

    /** The first whole number in a text. */
    int first(String text, String key) {
        Matcher m = WHOLE.matcher(text);
        if (!m.find()) {
            throw wrong(key, quoted(text.strip()), "a whole number");
        }
        return number(m.group(), key, "a whole number");
    }

    private int number(String word, String key, String expected) {
        String bare = word.startsWith("[") && word.endsWith("]") ? word.substring(1, word.length() - 1) : word;
        try {
            return Integer.parseInt(bare);
        } catch (NumberFormatException e) {
            throw wrong(key, quoted(word), expected);
        }
    }

    /** A number that must lie in a range, or the line just read is wrong. */
    int within(int value, int least, int most, String key) {
        if (value < least || value > most) {
            throw wrong(key, Integer.toString(value), "from " + least + " to " + most);
        }
        return value;
    }

    /** What is wrong with the line just read. */
    UnreadableNetException wrong(String key, String found, String expected) {
        return new UnreadableNetException(file, next, key, found, expected);
    }

    static String quoted(String text) {
        return '"' + text + '"';
    }
}
