package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import java.util.List;

/**
 * The lines from the first to the last in which two texts differ.
 *
 * @param first the first of them, counted from 1
 * @param before those of the one text
 * @param after those of the other
 */
record ChangedLines(int first, List<String> before, List<String> after) {
    /** Copies the lists. */
    ChangedLines {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    static ChangedLines between(String one, String other) {
        List<String> a = one.lines().toList();
        List<String> b = other.lines().toList();
        int most = Math.min(a.size(), b.size());
        int head = 0;
        while (head < most && a.get(head).equals(b.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < most - head && a.get(a.size() - 1 - tail).equals(b.get(b.size() - 1 - tail))) {
            tail++;
        }
        return new ChangedLines(head + 1, a.subList(head, a.size() - tail), b.subList(head, b.size() - tail));
    }

    Meanwhile by(String who, long seq) {
        int last = first + Math.max(before.size(), 1) - 1;
        String what = last == first ? "Line " + first : "Lines " + first + " to " + last;
        return new Meanwhile(what, String.join("\n", before), String.join("\n", after), "", who, seq);
    }
}
