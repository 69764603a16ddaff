package fayline.store.file.yaml;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A node of a YAML file with its place: a scalar, a mapping or a list. Scalars keep their text as typed; what it means is
 * decided by who asks for it, so that {@code no}, {@code 1e3} and {@code 12:30} hold no surprises. Immutable.
 */
public final class Tree {
    private final String file;
    private final String path;
    private final Form form;
    private final String text;
    private final boolean quoted;
    private final boolean flow;
    private final Map<String, Tree> entries;
    private final Map<String, Place> keys;
    private final List<Tree> items;
    private final Place start;
    private final Place end;

    Tree(Body body, String file, String path, Place start, Place end) {
        this.file = file;
        this.path = path;
        this.form = body.form();
        this.text = body.text();
        this.quoted = body.quoted();
        this.flow = body.flow();
        this.entries = Collections.unmodifiableMap(new LinkedHashMap<>(body.entries()));
        this.keys = Map.copyOf(body.keys());
        this.items = List.copyOf(body.items());
        this.start = start;
        this.end = end;
    }

    /** An empty mapping that stands for a file or value that is not there. */
    public static Tree nothing(String file, String path) {
        return new Tree(
                new Body(Form.MAPPING, "", false, true, Map.of(), Map.of(), List.of()),
                file,
                path,
                new Place(0, 0),
                new Place(0, 0));
    }

    /** What sort of node it is. */
    public enum Form {
        /** A text or number. */
        SCALAR("a single value"),
        /** Keys with values. */
        MAPPING("keys with values"),
        /** Items in order. */
        LIST("a list");

        private final String words;

        Form(String words) {
            this.words = words;
        }

        /** The name for messages. */
        public String words() {
            return words;
        }
    }

    /**
     * A place in a file.
     *
     * @param line line, counted from 0
     * @param column column in code points, counted from 0
     */
    public record Place(int line, int column) {}

    record Body(
            Form form,
            String text,
            boolean quoted,
            boolean flow,
            Map<String, Tree> entries,
            Map<String, Place> keys,
            List<Tree> items) {}

    /** The file, relative to its folder. */
    public String file() {
        return file;
    }

    /** The key path, as {@code parts[3].mould}; items are counted from 0. */
    public String path() {
        return path;
    }

    /** What sort of node it is. */
    public Form form() {
        return form;
    }

    /** The text of a scalar; empty for others. */
    public String text() {
        return text;
    }

    /** Whether a scalar stands in quotes or in a block. */
    public boolean quoted() {
        return quoted;
    }

    /** Whether a mapping or list is written in brackets. */
    public boolean flow() {
        return flow;
    }

    /** Whether nothing is written: a key without a value. */
    public boolean isBlank() {
        return form == Form.SCALAR && text.isEmpty() && !quoted;
    }

    /** The entries of a mapping in order; empty for others. */
    public Map<String, Tree> entries() {
        return entries;
    }

    /** The value of a key. */
    public Optional<Tree> get(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    /** The items of a list; empty for others. */
    public List<Tree> items() {
        return items;
    }

    /** The line, counted from 1. */
    public int line() {
        return start.line() + 1;
    }

    /** The line of a key, counted from 1; that of the mapping if it has no such key. */
    public int lineOf(String key) {
        Place p = keys.get(key);
        return p == null ? line() : p.line() + 1;
    }

    /** Where the key of an entry stands. */
    Optional<Place> keyPlace(String key) {
        return Optional.ofNullable(keys.get(key));
    }

    /** Where the node begins. */
    Place start() {
        return start;
    }

    /** Where it ends, exclusive. */
    Place end() {
        return end;
    }

    /** The node below by its path of keys and positions, as far as it is there: else the last one found. */
    public Tree down(Object... steps) {
        Tree at = this;
        for (Object s : steps) {
            if (s instanceof Integer i && i >= 0 && i < at.items.size()) {
                at = at.items.get(i);
            } else if (s instanceof String k && at.entries.containsKey(k)) {
                at = at.entries.getOrDefault(k, at);
            } else {
                return at;
            }
        }
        return at;
    }

    @Override
    public String toString() {
        return file + ":" + line() + ": " + path;
    }
}
