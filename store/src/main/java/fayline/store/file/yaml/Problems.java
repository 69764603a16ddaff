package fayline.store.file.yaml;

import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** Collects problems with their places. Not for use by several threads. */
public final class Problems {
    private static final int SHOWN = 60;
    private final List<InputProblem> list = new ArrayList<>();

    /** Adds a problem that refuses the input. */
    public void stop(Tree at, String found, String expected, String suggestion) {
        add(Severity.STOP, at.file(), at.line(), at.path(), found, expected, suggestion);
    }

    /** Adds a problem that lets the input pass. */
    public void caution(Tree at, String found, String expected, String suggestion) {
        add(Severity.CAUTION, at.file(), at.line(), at.path(), found, expected, suggestion);
    }

    /** Adds a problem at a key of a mapping. */
    public void stopAtKey(Tree mapping, String key, String found, String expected, String suggestion) {
        add(Severity.STOP, mapping.file(), mapping.lineOf(key), join(mapping.path(), key), found, expected, suggestion);
    }

    /** Adds a problem of a file. */
    public void stopFile(String file, int line, String found, String expected, String suggestion) {
        add(Severity.STOP, file, line, "", found, expected, suggestion);
    }

    /** Adds a caution of a file. */
    public void cautionFile(String file, String found, String expected, String suggestion) {
        add(Severity.CAUTION, file, 0, "", found, expected, suggestion);
    }

    private void add(Severity s, String file, int line, String key, String found, String expected, String suggestion) {
        list.add(new InputProblem(s, file, line, key, found, expected, suggestion));
    }

    /** Adds problems found elsewhere. */
    public void addAll(Collection<InputProblem> more) {
        list.addAll(more);
    }

    /** How many there are. */
    public int count() {
        return list.size();
    }

    /** How many refuse the input. */
    public long stops() {
        return list.stream().filter(p -> p.severity() == Severity.STOP).count();
    }

    /** All of them by place, each once. */
    public List<InputProblem> sorted() {
        return List.copyOf(new TreeSet<>(list));
    }

    /** A path with a key added. */
    static String join(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** A text in quotes for a message: short, and nothing in it that hides or turns what is shown. */
    public static String quote(String text) {
        StringBuilder b = new StringBuilder("\"");
        int shown = 0;
        for (int i = 0; i < text.length() && shown < SHOWN; shown++) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            int type = Character.getType(c);
            if (type == Character.CONTROL
                    || type == Character.FORMAT
                    || type == Character.SURROGATE
                    || type == Character.LINE_SEPARATOR
                    || type == Character.PARAGRAPH_SEPARATOR) {
                b.append(String.format(Locale.ROOT, "\\u%04X", c));
            } else {
                b.appendCodePoint(c);
            }
        }
        if (text.codePointCount(0, text.length()) > SHOWN) {
            b.append("...");
        }
        return b.append('"').toString();
    }

    /** What a node holds, for a message. */
    public static String found(Tree at) {
        if (at.isBlank()) {
            return "nothing";
        }
        return at.form() == Tree.Form.SCALAR ? quote(at.text()) : at.form().words();
    }
}
