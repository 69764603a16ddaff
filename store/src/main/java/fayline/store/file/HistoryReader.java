package fayline.store.file;

import fayline.flow.project.Definition;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.design.Made;
import fayline.flow.project.piece.Division;
import fayline.flow.record.payload.Photo;
import fayline.store.file.kind.Fields;
import fayline.store.file.kind.HistoryKind;
import fayline.store.file.kind.Kind;
import fayline.store.file.yaml.Nearest;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import fayline.store.file.yaml.YamlDoor;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads what has happened so far, in YAML, and checks it against the definition. */
public final class HistoryReader {
    /** The form of ids that the record gives to events. */
    private static final String GIVEN_ID = "h-[0-9a-f]{40}|[0-9a-f-]{16,64}";

    private final Definition definition;
    private final boolean whole;
    private final Problems problems = new Problems();
    private final Set<String> seen = new HashSet<>();

    private HistoryReader(Definition definition, boolean whole) {
        this.definition = definition;
        this.whole = whole;
    }

    /**
     * Reads the history of a folder.
     *
     * @param folder the files
     * @param definition the definition of the same folder
     */
    public static HistoryRead read(DefinitionFolder folder, Definition definition) {
        return read(folder, definition, true);
    }

    /**
     * Reads the history of a folder whose definition may not hold together.
     *
     * @param whole whether the definition is whole; else what events name is not looked up in it
     */
    static HistoryRead read(DefinitionFolder folder, Definition definition, boolean whole) {
        HistoryReader reader = new HistoryReader(definition, whole);
        List<Tree> trees = new ArrayList<>();
        for (String path : folder.paths()) {
            if (Kind.ofPath(path).filter(k -> k == Kind.HISTORY).isPresent()) {
                folder.text(path)
                        .flatMap(t -> YamlDoor.read(path, t, reader.problems))
                        .ifPresent(trees::add);
            }
        }
        trees.forEach(t -> Kind.HISTORY.file().check(t, reader.problems));
        List<HistoryEvent> events = trees.stream()
                .flatMap(t -> t.down(Kind.HISTORY.key()).items().stream())
                .filter(t -> t.form() == Tree.Form.MAPPING)
                .map(reader::event)
                .sorted(Comparator.comparing(HistoryEvent::at))
                .toList();
        trees.forEach(t -> t.down(Kind.HISTORY.key()).items().forEach(reader::check));
        boolean refused = reader.problems.stops() > 0;
        return new HistoryRead(refused ? List.of() : events, reader.problems.sorted());
    }

    private HistoryEvent event(Tree t) {
        Fields f = new Fields(t);
        ZoneId zone = definition.shop().zone();
        Map<String, String> values = new LinkedHashMap<>();
        HistoryKind.AS_TYPED.forEach(k -> f.text(k).ifPresent(v -> values.put(k, v)));
        f.text("id").ifPresent(seen::add);
        return new HistoryEvent(
                f.text("id", ""),
                moment(f, "at", zone).orElse(Instant.EPOCH),
                f.text("by", ""),
                f.word("do", HistoryEvent.Act.class).orElse(HistoryEvent.Act.NOTE),
                f.text("step", ""),
                f.texts("with"),
                f.texts("people"),
                f.texts("places"),
                f.text("which-way", ""),
                f.text("signed", ""),
                f.text("slip", ""),
                f.text("text", ""),
                t.down("photos").items().stream().map(HistoryReader::photo).toList(),
                f.text("kind", ""),
                f.text("of", ""),
                f.text("station", ""),
                f.text("state", ""),
                values,
                said(f, zone),
                rows(t),
                f.text("corrects"),
                f.yes("withdrawn"),
                moment(f, "to", zone),
                f.text("instead", ""),
                t.file(),
                t.line());
    }

    private static Map<String, String> said(Fields f, ZoneId zone) {
        Map<String, String> said = new LinkedHashMap<>();
        HistoryKind.SAID.forEach(k -> f.text(k).ifPresent(v -> said.put(k, v)));
        moment(f, "told", zone).ifPresent(m -> said.put("told", m.toString()));
        for (String list : List.of("needed", "touches", "items")) {
            f.texts(list).stream().reduce((a, b) -> a + " " + b).ifPresent(n -> said.put(list, n));
        }
        return said;
    }

    /** The rows of whichever list an event holds. */
    private static List<Map<String, String>> rows(Tree t) {
        List<Map<String, String>> rows = new ArrayList<>();
        new TreeMap<>(HistoryKind.ROWS)
                .forEach((list, keys) -> t.down(list).items().forEach(row -> rows.add(row(row, keys))));
        return rows;
    }

    private static Map<String, String> row(Tree t, List<String> keys) {
        Map<String, String> row = new LinkedHashMap<>();
        keys.forEach(k -> new Fields(t).text(k).ifPresent(v -> row.put(k, v)));
        return row;
    }

    private static HistoryPhoto photo(Tree t) {
        Fields f = new Fields(t);
        String file = f.text("file", "");
        return new HistoryPhoto(
                file,
                f.word("people", Photo.People.class).orElse(Photo.People.UNSAID),
                f.yes("original"),
                f.yes("location"),
                f.text("sent", file));
    }

    private static Optional<Instant> moment(Fields f, String key, ZoneId zone) {
        Optional<String> offset = f.text("offset").filter(o -> o.matches("[+-][0-9]{2}:[0-9]{2}"));
        try {
            return f.moment(key)
                    .map(m -> offset.isPresent()
                            ? m.toInstant(ZoneOffset.of(offset.orElseThrow()))
                            : m.atZone(zone).toInstant());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private void check(Tree t) {
        if (whole) {
            names(t);
        }
        needs(t);
    }

    private void names(Tree t) {
        List<String> people = ids(definition.shop().people().stream());
        named(t.get("by"), people, "a person");
        named(t.get("signed"), people, "a person");
        t.down("with").items().forEach(p -> named(Optional.of(p), people, "a person"));
        t.down("people").items().forEach(p -> named(Optional.of(p), people, "a person"));
        // An event without an id of its own gets one from its content when it is recorded.
        named(t.get("corrects").filter(c -> !c.text().matches(GIVEN_ID)), List.copyOf(seen), "the id of another event");
        named(
                t.get("deviation").filter(c -> !c.text().matches(GIVEN_ID)),
                List.copyOf(seen),
                "the id of another event");
        for (String answered : List.of("visit", "finding", "change")) {
            named(
                    t.get(answered).filter(c -> !c.text().matches(GIVEN_ID)),
                    List.copyOf(seen),
                    "the id of another event");
        }
        named(t.get("second"), people, "a person");
        t.get("step").ifPresent(this::step);
        t.get("about").ifPresent(this::step);
    }

    private void needs(Tree t) {
        switch (new Fields(t).text("do", "")) {
            case "start", "finish" -> needs(t, "step");
            case "note" -> {
                needs(t, "step");
                if (t.down("photos").items().isEmpty()) {
                    needs(t, "text");
                }
            }
            case "reading" -> needs(t, "kind");
            case "correct" -> needs(t, "corrects");
            case "draw" -> needs(t, "step", "lot");
            case "mix" -> needs(t, "step", "system");
            case "ply" -> needs(t, "step", "ply");
            case "deviation" -> needs(t, "about");
            case "finding" -> needs(t, "visit", "about", "text");
            case "put-right" -> needs(t, "finding", "text");
            case "sign-off" -> needs(t, "finding");
            case "settle" -> needs(t, "deviation", "disposition");
            case "change" -> needs(t, "what", "why", "touches");
            case "change-decision" -> needs(t, "change", "decision");
            case "change-line" -> needs(t, "change", "item", "how");
            case "change-close" -> needs(t, "change");
            case "receive" -> needs(t, "lot", "of", "quantity", "received");
            case "move" -> needs(t, "lot", "place");
            case "count" -> needs(t, "counts");
            case "order" -> needs(t, "order", "what", "quantity", "due");
            case "arrival" -> needs(t, "order");
            default -> {
                // refused by its shape
            }
        }
        if (new Fields(t).text("kind", "").equals("climate")) {
            needs(t, "air");
        }
    }

    private void needs(Tree t, String... keys) {
        for (String key : keys) {
            need(t, key);
        }
    }

    private void need(Tree t, String key) {
        if (t.get(key).isEmpty()) {
            problems.stopAtKey(
                    t,
                    key,
                    "nothing",
                    "\"" + key + ":\" for do: " + new Fields(t).text("do", ""),
                    "add \"" + key + ":\"");
        }
    }

    private void named(Optional<Tree> at, List<String> known, String what) {
        at.filter(t -> t.form() == Tree.Form.SCALAR && !known.contains(t.text()))
                .ifPresent(t -> problems.stop(
                        t, Problems.quote(t.text()), what + " that exists", Nearest.suggest(t.text(), known)));
    }

    private void step(Tree at) {
        String[] bits = at.text().split("/", -1);
        // Work that puts a deviation right stands in no recipe: what was decided about it makes its steps.
        if (bits.length != 3 || !bits[1].matches("[0-9]{1,3}") || bits[2].matches("rework-[0-9]{1,4}")) {
            return;
        }
        Optional<Made> made = definition
                .parts()
                .find(bits[0])
                .or(() -> Division.partOf(definition, bits[0]))
                .map(p -> (Made) p)
                .or(() -> definition.joints().find(bits[0]).map(j -> (Made) j));
        int n = Integer.parseInt(bits[1]);
        List<String> steps = made.filter(m -> n >= 1 && n <= m.make().size())
                .flatMap(m -> definition.recipes().find(m.make().get(n - 1).recipe()))
                .map(r -> ids(r.steps().stream()))
                .orElse(List.of());
        if (!steps.contains(bits[2])) {
            List<String> things = ids(Stream.concat(definition.parts().stream(), definition.joints().stream()));
            problems.stop(
                    at,
                    Problems.quote(at.text()),
                    "a step of the definition",
                    made.isEmpty() ? Nearest.suggest(bits[0], things) : Nearest.suggest(bits[2], steps));
        }
    }

    private static List<String> ids(Stream<? extends Keyed> things) {
        return things.map(Keyed::id).toList();
    }
}
