package fayline.store.file.yaml;

import fayline.store.file.yaml.Tree.Form;
import fayline.store.file.yaml.Tree.Place;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Changes one value, key or list item in a YAML text and leaves every other line as it is: comments, order, blank lines, line
 * ends. Every edit is read again and compared with what was meant; an edit that would change anything else is refused.
 *
 * <p>Paths are written as in messages, {@code people[0].absences[1].to}; an item may be named by its id instead of its position,
 * {@code people[ada].absences[1].to}. A name of digits alone is a position.
 */
public final class YamlEdit {
    private final String file;
    private final String text;
    private final Tree root;

    private YamlEdit(String file, String text, Tree root) {
        this.file = file;
        this.text = text;
        this.root = root;
    }

    /**
     * Begins with a text.
     *
     * @param file its name, for messages
     * @param text the text
     * @throws UneditableException if it cannot be read
     */
    public static YamlEdit of(String file, String text) {
        Problems problems = new Problems();
        Optional<Tree> root = YamlDoor.read(file, text, problems);
        if (root.isEmpty() || problems.stops() > 0) {
            throw new UneditableException(problems.sorted().get(0).sentence());
        }
        return new YamlEdit(file, text, root.get());
    }

    /** The text as it is now. */
    public String text() {
        return text;
    }

    /** The value at a path, if there is one and it is a scalar. */
    public Optional<String> value(String path) {
        return at(YamlPath.parse(path)).filter(t -> t.form() == Form.SCALAR).map(Tree::text);
    }

    /**
     * What is said at a path, keys and values and items in order, so that two texts can be compared without their comments and line
     * breaks; empty where there is nothing.
     */
    public String said(String path) {
        return at(YamlPath.parse(path)).map(YamlEdit::said).orElse("");
    }

    private static String said(Tree t) {
        return switch (t.form()) {
            case SCALAR -> t.text();
            case LIST -> t.items().stream().map(YamlEdit::said).collect(Collectors.joining(", "));
            case MAPPING ->
                t.entries().entrySet().stream()
                        .map(e -> e.getKey() + " " + said(e.getValue()))
                        .collect(Collectors.joining(", "));
        };
    }

    /** How many items a list has; 0 where there is none. */
    public int size(String path) {
        return at(YamlPath.parse(path)).map(t -> t.items().size()).orElse(0);
    }

    private Optional<Tree> at(YamlPath path) {
        return path.in(root);
    }

    /**
     * Sets a scalar; a key that is not there yet is added at the end of its mapping.
     *
     * @param path where
     * @param value the text as it is to be read
     * @throws UneditableException if there is no such place, or only an edit by hand can do it
     */
    public YamlEdit set(String path, String value) {
        YamlPath p = YamlPath.parse(path);
        Optional<Tree> there = at(p);
        TextSpan span = new TextSpan(text);
        String changed;
        if (there.isPresent()) {
            changed = replace(span, there.get(), value);
        } else {
            changed = addKey(span, parent(p, Form.MAPPING), p.lastKey(), YamlScalar.write(value, false));
        }
        return verified(changed, p, Meaning.set(value));
    }

    private static String replace(TextSpan span, Tree there, String value) {
        if (there.form() != Form.SCALAR) {
            throw new UneditableException(there + " is " + there.form().words() + ", not a single value");
        }
        String written = YamlScalar.write(value, there.quoted());
        if (there.isBlank()) {
            return span.insert(span.offset(there.start()), " " + written);
        }
        int from = span.offset(there.start());
        int to = span.offset(there.end());
        boolean block = span.at(from) == '|' || span.at(from) == '>';
        return span.replace(from, to, written + (block && there.end().column() == 0 ? span.newline() : ""));
    }

    /**
     * Adds an item at the end of a list. A list that is not there yet is made.
     *
     * @param path the list
     * @param fields the item's keys and values in order
     * @throws UneditableException if there is no such place, or only an edit by hand can do it
     */
    public YamlEdit append(String path, Map<String, String> fields) {
        StringBuilder item = new StringBuilder("{");
        fields.forEach((k, v) -> item.append(item.length() > 1 ? ", " : "")
                .append(YamlScalar.write(k, false))
                .append(": ")
                .append(YamlScalar.write(v, false)));
        return append(path, item.append('}').toString(), Meaning.append(fields));
    }

    /** Adds a scalar item at the end of a list. */
    public YamlEdit append(String path, String value) {
        return append(path, YamlScalar.write(value, false), Meaning.append(value));
    }

    private YamlEdit append(String path, String written, Meaning meaning) {
        YamlPath p = YamlPath.parse(path);
        Optional<Tree> there = at(p);
        TextSpan span = new TextSpan(text);
        String changed;
        if (there.isEmpty()) {
            changed = addKey(span, parent(p, Form.MAPPING), p.lastKey(), "[" + written + "]");
        } else if (there.get().isBlank()) {
            changed = span.insert(span.offset(there.get().start()), " [" + written + "]");
        } else if (there.get().form() != Form.LIST) {
            throw new UneditableException(there.get() + " is no list");
        } else if (there.get().flow()) {
            changed = addInside(span, there.get(), there.get().items().isEmpty(), written);
        } else {
            Tree list = there.get();
            int dash = dash(span, list.items().get(0));
            String indent = " ".repeat(dash - span.lineStart(dash));
            changed = span.insertLine(lastLine(list), indent + "- " + written);
        }
        return verified(changed, p, meaning);
    }

    /**
     * Removes a key or a list item.
     *
     * @param path what
     * @throws UneditableException if there is no such place, or only an edit by hand can do it
     */
    public YamlEdit remove(String path) {
        YamlPath p = YamlPath.parse(path);
        Tree gone = at(p).orElseThrow(() -> new UneditableException("no " + path + " in " + file));
        Tree parent = p.parent().in(root).orElse(root);
        TextSpan span = new TextSpan(text);
        String changed;
        if (parent.form() == Form.LIST) {
            changed = parent.flow()
                    ? removeInside(span, parent, gone, span.offset(gone.start()))
                    : removeItem(span, p, gone);
        } else {
            changed = removeKey(span, parent, gone, p.lastKey());
        }
        return verified(changed, p, Meaning.remove());
    }

    private String removeItem(TextSpan span, YamlPath p, Tree gone) {
        Tree list = p.parent().in(root).orElse(root);
        int dash = dash(span, gone);
        int first = span.lineOf(dash);
        if (!span.isIndent(dash)) {
            throw new UneditableException(gone + " shares its line; edit the text");
        }
        if (list.items().size() > 1) {
            return span.removeLines(first, lastLine(gone));
        }
        YamlPath owner = p.parent();
        Tree mapping = owner.parent().in(root).orElse(root);
        Place key = mapping.keyPlace(owner.lastKey())
                .orElseThrow(() -> new UneditableException("the only item of a list within a list; edit the text"));
        int colon = span.colonAfter(span.offset(key));
        return new TextSpan(span.removeLines(first, lastLine(gone))).insert(colon + 1, " []");
    }

    private String removeKey(TextSpan span, Tree parent, Tree gone, String key) {
        int from = span.offset(parent.keyPlace(key).orElseThrow(() -> new UneditableException("no " + key)));
        if (parent.entries().size() == 1 && !parent.flow()) {
            throw new UneditableException(gone + " is the only key there; remove what holds it");
        }
        if (parent.flow()) {
            return removeInside(span, parent, gone, from);
        }
        if (span.isIndent(from)) {
            int last = gone.isBlank() ? span.lineOf(from) : lastLine(gone);
            return span.removeLines(span.lineOf(from), last);
        }
        List<String> keys = List.copyOf(parent.entries().keySet());
        String next = keys.get(keys.indexOf(key) + 1);
        int to = span.offset(Objects.requireNonNull(parent.keyPlace(next).orElse(null)));
        return span.replace(from, to, "");
    }

    /** Removes a member of a bracket with the comma beside it. */
    private String removeInside(TextSpan span, Tree parent, Tree gone, int from) {
        int to = gone.isBlank() ? Math.max(from, span.offset(gone.end())) : span.offset(gone.end());
        int open = span.offset(parent.start());
        int next = span.skipBlank(to);
        if (span.at(next) == ',') {
            return span.replace(from, span.skipBlank(next + 1), "");
        }
        int before = span.backBlank(from);
        return before - 1 > open && span.at(before - 1) == ','
                ? span.replace(before - 1, to, "")
                : span.replace(from, to, "");
    }

    private static String addKey(TextSpan span, Tree mapping, String key, String written) {
        String entry = YamlScalar.write(key, false) + ": " + written;
        if (mapping.flow()) {
            return addInside(span, mapping, mapping.entries().isEmpty(), entry);
        }
        String first = mapping.entries().keySet().iterator().next();
        int column = mapping.keyPlace(first).map(Place::column).orElse(0);
        return span.insertLine(lastLine(mapping), " ".repeat(column) + entry);
    }

    private static String addInside(TextSpan span, Tree bracket, boolean empty, String written) {
        int close = span.offset(bracket.end()) - 1;
        int end = span.backBlank(close);
        if (empty) {
            return span.replace(span.offset(bracket.start()) + 1, close, written);
        }
        return span.insert(end, (span.at(end - 1) == ',' ? " " : ", ") + written);
    }

    private Tree parent(YamlPath p, Form form) {
        Optional<Tree> parent = p.parent().in(root);
        if (parent.isEmpty() || parent.get().form() != form || p.lastKey().isEmpty()) {
            throw new UneditableException("no place for " + p + " in " + file);
        }
        return parent.get();
    }

    /** The dash of a block item. */
    private static int dash(TextSpan span, Tree item) {
        int i = span.offset(item.start()) - 1;
        while (i >= 0 && span.at(i) != '-') {
            if (!Character.isWhitespace(span.at(i))) {
                throw new UneditableException(item + " has something before it; edit the text");
            }
            i--;
        }
        return i;
    }

    /** The last line that a node covers. */
    private static int lastLine(Tree node) {
        Place end = node.end();
        return end.column() == 0 && end.line() > node.line() - 1 ? end.line() - 1 : end.line();
    }

    private YamlEdit verified(String changed, YamlPath path, Meaning meaning) {
        YamlEdit after = of(file, changed);
        Object wanted = meaning.applied(Meaning.plain(root), path);
        if (!wanted.equals(Meaning.plain(after.root))) {
            throw new UneditableException("the line of " + path + " in " + file + " can only be changed by hand");
        }
        return after;
    }
}
