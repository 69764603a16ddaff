package fayline.app.web.journal;

import fayline.app.usecase.book.BookScope;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.app.web.people.PeopleSentences;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What an entry says, in a sentence of the shop's own names. */
final class EntryWords {
    private static final int LONGEST = 140;
    private final Sight sight;

    EntryWords(Sight sight) {
        this.sight = sight;
    }

    String by(Entry e) {
        return e.by().isEmpty() ? "the program" : sight.personName(e.by());
    }

    String says(Entry e) {
        Optional<EntryKind> kind = EntryKind.of(e.kind());
        Value.Fields f = e.fields();
        if (e.isEmptied()) {
            return noun(e) + ": " + erased(e).orElse("emptied, and no entry says why");
        }
        return kind.map(k -> sentence(k, e, f)).orElseGet(() -> "an entry of a later version: " + e.kind());
    }

    /** How an entry was erased: by whom, when and why. */
    Optional<String> erased(Entry e) {
        return sight.view()
                .record()
                .erasures()
                .of(e.seq())
                .map(x -> x.words(sight.time().zone()) + ", by " + sight.personName(x.by()));
    }

    /** What an entry was, where nothing of what it said is left. */
    private static String noun(Entry e) {
        return EntryKind.of(e.kind())
                .map(k -> switch (k) {
                    case STEP_NOTED -> "a note";
                    case CORRECTED -> "a correction";
                    case WEEK_TOLD -> "what was told of a week";
                    case DEVIATION_RAISED -> "a deviation's pictures";
                    case FINDING_RAISED, FINDING_CORRECTED -> "a finding's pictures";
                    case PERSON_ADMITTED -> "the name of somebody who may enter";
                    case DEVICE_PAIRED, DEVICE_ENDED -> "the name of a device";
                    default -> "an entry";
                })
                .orElse("an entry");
    }

    private String sentence(EntryKind kind, Entry e, Value.Fields f) {
        return switch (kind) {
            case FILE_SAVED -> "saved " + f.text("path");
            case FILE_REMOVED -> "took out " + f.text("path");
            case PROJECT_ADDED -> "project " + f.text("name") + " joined the shop";
            case FOLDER_IMPORTED ->
                "read a folder in: " + count(f, "files", "file") + ", " + count(f, "events", "event");
            case STEP_STARTED ->
                "started " + step(f) + with(f, "people", sight.personNames(f.texts("people")))
                        + (f.text("despite").isEmpty()
                                ? ""
                                : ", although a change stood before it: " + f.text("despite"));
            case STEP_FINISHED ->
                "finished " + step(f)
                        + (f.text("signed").isEmpty() ? "" : ", signed by " + sight.personName(f.text("signed")));
            case STEP_NOTED -> "noted on " + step(f) + ": " + shortened(f.text("text"));
            case CORRECTED ->
                (f.text("withdrawn").isEmpty() ? "corrected" : "withdrew") + " entry "
                        + f.whole("entry").orElse(0L) + ": " + shortened(f.text("why"));
            case ERASED ->
                "erased what was personal in entry " + f.whole("entry").orElse(0L) + ", because "
                        + shortened(f.text("why"));
            case READING_TAKEN -> "read " + f.text("kind") + of(f) + ": " + values(f);
            case LOT_DRAWN, MIX_MADE, PLY_LAID, DEVIATION_RAISED, DEVIATION_SETTLED ->
                MadeSentences.of(e, kind, this::step, sight);
            case LOT_RECEIVED, LOT_MOVED, STOCK_TAKEN, ORDER_PLACED, ORDER_RECEIVED ->
                StoresSentences.of(kind, f, sight);
            case VISIT_HELD, FINDING_RAISED, FINDING_CORRECTED, FINDING_SIGNED ->
                InspectSentences.of(kind, f, sight, sight.view().record().inspect());
            case CHANGE_RAISED, CHANGE_DECIDED, CHANGE_SETTLED, CHANGE_CLOSED -> ChangeSentences.of(e, kind, sight);
            case WEEK_TOLD -> "settled what is told of the week from " + f.text("week");
            case PLAN_PUBLISHED -> "told the crew a plan of " + count(f, "steps", "step");
            case SHEET_PRINTED -> printed(f);
            case PERSON_ADMITTED,
                    PERSON_CHANGED,
                    DEVICE_PAIRED,
                    DEVICE_ENDED,
                    SIGNED_IN,
                    SIGNED_OUT,
                    SIGN_IN_BARRED,
                    ACT_REFUSED -> PeopleSentences.of(e, kind, sight::personName);
        };
    }

    private String printed(Value.Fields f) {
        long number = f.whole("number").orElse(0L);
        if (!f.text("what").equals("book")) {
            return "printed record sheet " + number;
        }
        return "printed the book of "
                + BookScope.of(sight.definition(), f.text("of"))
                        .map(BookScope::name)
                        .orElse(f.text("of"))
                + ", as sheet " + number;
    }

    private String step(Value.Fields f) {
        return sight.stepName(f.text("step"));
    }

    private static String with(Value.Fields f, String field, String names) {
        return f.texts(field).isEmpty() ? "" : " with " + names;
    }

    private static String count(Value.Fields f, String field, String one) {
        long n = f.whole(field).orElse((long) f.items(field).size());
        return n + " " + one + (n == 1 ? "" : "s");
    }

    private String of(Value.Fields f) {
        String of = f.text("of");
        return (of.isEmpty() ? "" : " of " + thing(of))
                + (f.text("station").isEmpty() ? "" : ", station " + f.text("station"))
                + (f.text("state").isEmpty() ? "" : ", " + f.text("state").replace('-', ' '));
    }

    /** A fit by its name; else whatever the id is of. */
    private String thing(String id) {
        return sight.definition().fits().find(id).map(fit -> fit.name()).orElseGet(() -> sight.named(id));
    }

    /** The value first, as it was typed; then what it was read with. */
    private static String values(Value.Fields f) {
        Map<String, String> values = new TreeMap<>(f.inner("values").allTexts());
        String value = values.getOrDefault("value", "");
        values.remove("value");
        String beside = values.entrySet().stream()
                .map(v -> v.getKey() + " " + v.getValue())
                .collect(Collectors.joining(", "));
        return value + (value.isEmpty() ? beside : beside.isEmpty() ? "" : " (" + beside + ")");
    }

    static String shortened(String text) {
        String line = text.strip().replaceAll("\\s+", " ");
        return line.length() > LONGEST ? line.substring(0, LONGEST) + " \u2026" : line;
    }

    /** Where what the entry is about is shown; empty for nowhere. */
    static String link(Entry e) {
        Value.Fields f = e.fields();
        List<String> ofStep =
                List.of(EntryKind.STEP_STARTED.key(), EntryKind.STEP_FINISHED.key(), EntryKind.STEP_NOTED.key());
        if (ofStep.contains(e.kind()) || MadeSentences.OF_STEP.contains(e.kind())) {
            return Sight.cardLink(f.text("step"));
        }
        if (ChangeSentences.KINDS.contains(e.kind())) {
            return "/change/" + f.whole("change").orElse(e.seq()) + "?project=" + Visit.encoded(e.project());
        }
        boolean book = f.text("what").equals("book");
        return e.kind().equals(EntryKind.SHEET_PRINTED.key())
                ? (book ? "/book/sheet/" : "/record/sheet/") + f.whole("number").orElse(0L) + ".pdf"
                : "";
    }
}
