package fayline.store.file.yaml;

import fayline.store.file.yaml.Tree.Body;
import fayline.store.file.yaml.Tree.Form;
import fayline.store.file.yaml.Tree.Place;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.StreamEndEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML 1.2 text into a {@link Tree}. Only what a definition needs is let in: mappings, lists and scalars. Tags,
 * anchors, aliases, merge keys, doubled keys, several documents, deep nesting and large files are refused with their line;
 * whatever the parser throws is a refusal too.
 */
public final class YamlDoor {
    /** The largest file, in bytes of UTF-8. */
    public static final int MAX_BYTES = 2_000_000;

    private static final int MAX_DEPTH = 24;
    private static final int MAX_NODES = 200_000;

    private final String file;
    private final Problems problems;
    private final Iterator<Event> events;
    private int nodes;

    private YamlDoor(String file, String text, Problems problems) {
        this.file = file;
        this.problems = problems;
        LoadSettings settings = LoadSettings.builder()
                .setLabel(file)
                .setCodePointLimit(MAX_BYTES)
                .build();
        this.events = new Parse(settings).parseString(text).iterator();
    }

    /**
     * Reads a file.
     *
     * @param file its name, for messages
     * @param text its text
     * @param problems where refusals go
     * @return the root, or empty if the text was refused
     */
    public static Optional<Tree> read(String file, String text, Problems problems) {
        if (text.getBytes(StandardCharsets.UTF_8).length > MAX_BYTES) {
            problems.stopFile(
                    file, 0, "a file of more than 2 MB", "at most 2 MB", "split it into a folder of the kind's name");
            return Optional.empty();
        }
        String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
        try {
            return Optional.of(new YamlDoor(file, body, problems).document());
        } catch (Refused e) {
            problems.stopFile(file, e.line, e.found, e.expected, e.suggestion);
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark()
                    .or(e::getContextMark)
                    .map(m -> m.getLine() + 1)
                    .orElse(0);
            String context = e.getContext() == null ? "" : " (" + e.getContext() + ")";
            problems.stopFile(
                    file,
                    line,
                    "text that is no YAML: " + e.getProblem() + context,
                    "YAML that can be read",
                    "look at this line and the one above");
        } catch (YamlEngineException | IllegalArgumentException | IllegalStateException | IndexOutOfBoundsException e) {
            int line = lineOfBadCharacter(body);
            problems.stopFile(
                    file,
                    line,
                    line > 0 ? "a control character" : firstLine(e),
                    "YAML that can be read",
                    line > 0 ? "remove it" : "");
        }
        return Optional.empty();
    }

    private static String firstLine(RuntimeException e) {
        String m = String.valueOf(e.getMessage());
        int cut = m.indexOf('\n');
        return Problems.quote(cut < 0 ? m : m.substring(0, cut)).replace("\"", "");
    }

    private static int lineOfBadCharacter(String text) {
        int line = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
            } else if ((c < ' ' && c != '\t' && c != '\r') || c == 0x7f) {
                return line;
            }
        }
        return 0;
    }

    private Tree document() {
        Event e = next();
        while (!(e instanceof DocumentStartEvent) && !(e instanceof StreamEndEvent)) {
            e = next();
        }
        if (e instanceof StreamEndEvent) {
            throw new Refused(1, "an empty file", "one key with its list below", "remove the file or fill it");
        }
        Tree root = node(next(), "", 0);
        next();
        Event after = next();
        if (after instanceof DocumentStartEvent) {
            throw new Refused(line(after), "a second document", "one document in a file", "remove the line \"---\"");
        }
        return root;
    }

    private Event next() {
        return events.next();
    }

    private Tree node(Event e, String path, int depth) {
        if (++nodes > MAX_NODES) {
            throw new Refused(line(e), "more than " + MAX_NODES + " values", "fewer", "split the file");
        }
        if (depth > MAX_DEPTH) {
            throw new Refused(line(e), "more than " + MAX_DEPTH + " levels", "fewer levels", "");
        }
        refuseExtras(e);
        if (e instanceof ScalarEvent s) {
            Body body = new Body(Form.SCALAR, s.getValue(), !s.isPlain(), false, Map.of(), Map.of(), List.of());
            return new Tree(body, file, path, place(s.getStartMark()), place(s.getEndMark()));
        }
        return e instanceof MappingStartEvent m ? mapping(m, path, depth) : list((CollectionStartEvent) e, path, depth);
    }

    private Tree list(CollectionStartEvent start, String path, int depth) {
        List<Tree> items = new ArrayList<>();
        Event e = next();
        while (e.getEventId() != Event.ID.SequenceEnd) {
            items.add(node(e, path + "[" + items.size() + "]", depth + 1));
            e = next();
        }
        Body body = new Body(Form.LIST, "", false, start.isFlow(), Map.of(), Map.of(), items);
        Place last = items.isEmpty()
                ? place(e.getStartMark())
                : items.get(items.size() - 1).end();
        return new Tree(body, file, path, place(start.getStartMark()), start.isFlow() ? place(e.getEndMark()) : last);
    }

    private Tree mapping(MappingStartEvent start, String path, int depth) {
        Map<String, Tree> entries = new LinkedHashMap<>();
        Map<String, Place> keys = new LinkedHashMap<>();
        Place last = place(start.getStartMark());
        Event e = next();
        while (e.getEventId() != Event.ID.MappingEnd) {
            refuseExtras(e);
            if (!(e instanceof ScalarEvent k)) {
                throw new Refused(line(e), "a key that is itself a list or mapping", "a word as key", "");
            }
            String key = modern(k.getValue());
            if (key.equals("<<") && k.isPlain()) {
                throw new Refused(line(e), "a merge key \"<<\"", "every value written out", "");
            }
            String below = Problems.join(path, key);
            Tree value = node(next(), below, depth + 1);
            if (entries.containsKey(key)) {
                Place first = keys.getOrDefault(key, last);
                problems.addAll(List.of(new fayline.basis.finding.InputProblem(
                        fayline.basis.finding.Severity.STOP,
                        file,
                        line(e),
                        below,
                        "the key " + Problems.quote(key) + " a second time",
                        "each key once",
                        "it stands in line " + (first.line() + 1) + " too")));
            } else {
                entries.put(key, value);
                keys.put(key, place(k.getStartMark()));
            }
            last = value.isBlank() ? place(k.getEndMark()) : value.end();
            e = next();
        }
        Body body = new Body(Form.MAPPING, "", false, start.isFlow(), entries, keys, List.of());
        return new Tree(body, file, path, place(start.getStartMark()), start.isFlow() ? place(e.getEndMark()) : last);
    }

    /** Both spellings of mould are understood; the product says mould. */
    private static String modern(String key) {
        return key.equals("mold") || key.equals("molds") ? key.replace("mold", "mould") : key;
    }

    private static void refuseExtras(Event e) {
        if (e instanceof AliasEvent) {
            throw new Refused(line(e), "an alias (*)", "the value itself", "write the value out");
        }
        if (e instanceof NodeEvent n && n.getAnchor().isPresent()) {
            throw new Refused(line(e), "an anchor (&)", "a plain value", "remove the anchor");
        }
        Optional<String> tag = Optional.empty();
        if (e instanceof ScalarEvent s) {
            tag = s.getTag();
        } else if (e instanceof CollectionStartEvent c) {
            tag = c.getTag();
        }
        if (tag.isPresent()) {
            throw new Refused(line(e), "a tag (" + Problems.quote(tag.get()) + ")", "a plain value", "remove the tag");
        }
    }

    private static Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine(), m.getColumn())).orElse(new Place(0, 0));
    }

    private static int line(Event e) {
        return place(e.getStartMark()).line() + 1;
    }

    private static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final int line;
        private final String found;
        private final String expected;
        private final String suggestion;

        Refused(int line, String found, String expected, String suggestion) {
            super(found);
            this.line = line;
            this.found = found;
            this.expected = expected;
            this.suggestion = suggestion;
        }
    }
}
