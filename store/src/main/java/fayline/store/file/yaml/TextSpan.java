package fayline.store.file.yaml;

import fayline.store.file.yaml.Tree.Place;
import java.util.ArrayList;
import java.util.List;

/** A text with its lines, for edits by place. Offsets count UTF-16 units from its beginning. */
final class TextSpan {
    private final String text;
    private final List<Integer> starts = new ArrayList<>();
    private final int mark;

    TextSpan(String text) {
        this.text = text;
        this.mark = text.startsWith("\uFEFF") ? 1 : 0;
        starts.add(mark);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n' || (c == '\r' && (i + 1 >= text.length() || text.charAt(i + 1) != '\n'))) {
                starts.add(i + 1);
            }
        }
    }

    int offset(Place p) {
        if (p.line() >= starts.size()) {
            return text.length();
        }
        int start = starts.get(p.line());
        int columns = Math.min(p.column(), text.codePointCount(start, text.length()));
        return text.offsetByCodePoints(start, columns);
    }

    char at(int offset) {
        return offset >= 0 && offset < text.length() ? text.charAt(offset) : '\0';
    }

    int lineOf(int offset) {
        int line = 0;
        while (line + 1 < starts.size() && starts.get(line + 1) <= offset) {
            line++;
        }
        return line;
    }

    int lineStart(int offset) {
        return starts.get(lineOf(offset));
    }

    /** Whether only blanks stand before an offset on its line. */
    boolean isIndent(int offset) {
        return text.substring(lineStart(offset), offset).isBlank();
    }

    int skipBlank(int from) {
        int i = from;
        while (Character.isWhitespace(at(i))) {
            i++;
        }
        return i;
    }

    /** The offset after the last thing before another offset that is no blank, within its line. */
    int backBlank(int from) {
        int i = from;
        int start = lineStart(from);
        while (i > start && (at(i - 1) == ' ' || at(i - 1) == '\t')) {
            i--;
        }
        return i == start ? from : i;
    }

    /** The colon that ends the key at an offset. */
    int colonAfter(int key) {
        int i = key;
        char quote = at(i) == '"' || at(i) == '\'' ? at(i) : '\0';
        if (quote != '\0') {
            i = text.indexOf(quote, i + 1);
        }
        int colon = text.indexOf(':', i);
        if (colon < 0) {
            throw new UneditableException("a key without a colon");
        }
        return colon;
    }

    String newline() {
        return text.contains("\r\n") ? "\r\n" : "\n";
    }

    String insert(int offset, String more) {
        return text.substring(0, offset) + more + text.substring(offset);
    }

    String replace(int from, int to, String other) {
        return text.substring(0, from) + other + text.substring(to);
    }

    /** The text with a line added after another. */
    String insertLine(int after, String line) {
        if (after + 1 < starts.size()) {
            return insert(starts.get(after + 1), line + newline());
        }
        return text + newline() + line;
    }

    /** The text without some lines, both ends included. */
    String removeLines(int first, int last) {
        int to = last + 1 < starts.size() ? starts.get(last + 1) : text.length();
        return replace(starts.get(first), to, "");
    }
}
