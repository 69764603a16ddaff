package fayline.app.usecase.journal;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing that an entry changed.
 *
 * @param what the field, or {@code line 12} of a file as it is after
 * @param before what stood there; empty for nothing
 * @param after what stands there; empty for nothing
 */
public record Difference(String what, String before, String after) {
    /** Beyond so many pairs of lines the whole middle counts as changed: nobody reads further, and the time stays short. */
    private static final int LONGEST = 2_000_000;

    /**
     * Lines that differ, by the longest common subsequence of what lies between the equal beginnings and ends.
     *
     * @param before a text; empty for none
     * @param after the text after it
     */
    static List<Difference> ofLines(String before, String after) {
        List<String> a = lines(before);
        List<String> b = lines(after);
        int from = 0;
        while (from < Math.min(a.size(), b.size()) && a.get(from).equals(b.get(from))) {
            from++;
        }
        int same = 0;
        while (same < Math.min(a.size(), b.size()) - from
                && a.get(a.size() - 1 - same).equals(b.get(b.size() - 1 - same))) {
            same++;
        }
        return between(a.subList(from, a.size() - same), b.subList(from, b.size() - same), from);
    }

    private static List<String> lines(String text) {
        return text.isEmpty() ? List.of() : text.lines().toList();
    }

    private static List<Difference> between(List<String> a, List<String> b, int offset) {
        int[][] common = common(a, b);
        List<Difference> all = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        List<String> come = new ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < a.size() || j < b.size()) {
            if (i < a.size() && j < b.size() && common.length > 0 && a.get(i).equals(b.get(j))) {
                flush(gone, come, offset + j, all);
                i++;
                j++;
            } else if (j == b.size() || (i < a.size() && common.length > 0 && common[i + 1][j] >= common[i][j + 1])) {
                gone.add(a.get(i++));
            } else if (i < a.size() && common.length == 0) {
                gone.add(a.get(i++));
            } else {
                come.add(b.get(j++));
            }
        }
        flush(gone, come, offset + j, all);
        return all;
    }

    private static void flush(List<String> gone, List<String> come, int line, List<Difference> all) {
        if (!gone.isEmpty() || !come.isEmpty()) {
            all.add(new Difference(
                    "line " + (line - come.size() + 1), String.join("\n", gone), String.join("\n", come)));
            gone.clear();
            come.clear();
        }
    }

    /** Lengths of the longest common subsequences of what follows; nothing where that would take long. */
    private static int[][] common(List<String> a, List<String> b) {
        if ((long) a.size() * b.size() > LONGEST) {
            return new int[0][];
        }
        int[][] length = new int[a.size() + 1][b.size() + 1];
        for (int i = a.size() - 1; i >= 0; i--) {
            for (int j = b.size() - 1; j >= 0; j--) {
                length[i][j] = a.get(i).equals(b.get(j))
                        ? length[i + 1][j + 1] + 1
                        : Math.max(length[i + 1][j], length[i][j + 1]);
            }
        }
        return length;
    }
}
