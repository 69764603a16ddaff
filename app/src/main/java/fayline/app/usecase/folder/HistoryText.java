package fayline.app.usecase.folder;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.StepRecord;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import fayline.flow.record.trouble.Rework;
import fayline.store.file.kind.HistoryKind;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Writes entries as a history file that reads in again to the same record. */
final class HistoryText {
    private static final String HEAD =
            "# What the record holds beyond the other history files. Written by export; read in again"
                    + " by import.\nhistory:\n";
    /** Keys whose values are whole numbers, which stand without quotation marks. */
    private static final List<String> COUNTS = List.of("ply", "batch");

    private final ZoneId zone;
    private final Map<Long, String> clients;
    private final StringBuilder out = new StringBuilder(HEAD);

    /**
     * A writer.
     *
     * @param zone the shop's zone
     * @param clients the id of every entry by its sequence number
     */
    HistoryText(ZoneId zone, Map<Long, String> clients) {
        this.zone = zone;
        this.clients = clients;
    }

    /** The file so far. */
    String text() {
        return out.toString();
    }

    /** Writes one entry; kinds that are no events are passed over, and so is what was erased. */
    void add(Entry e) {
        Optional<EntryKind> kind = EntryKind.of(e.kind());
        if (kind.isEmpty() || e.isEmptied()) {
            return;
        }
        Value.Fields f = e.fields();
        switch (kind.get()) {
            case STEP_STARTED -> {
                begin(e, "start", f);
                work(f);
                text("despite", f.text("despite"));
            }
            case STEP_FINISHED -> {
                begin(e, "finish", f);
                work(f);
                missing(StepRecord.Lack.allOf(f));
            }
            case STEP_NOTED -> {
                begin(e, "note", f);
                text("text", f.text("text"));
                photos(Photo.allOf(f));
            }
            case READING_TAKEN -> {
                begin(e, "reading", f);
                plain("kind", f.text("kind"));
                measured(f);
            }
            case CORRECTED -> correct(e, f);
            case LOT_DRAWN -> made(e, "draw", f);
            case MIX_MADE -> made(e, "mix", f);
            case PLY_LAID -> made(e, "ply", f);
            case DEVIATION_RAISED -> {
                begin(e, "deviation", f);
                plain("about", f.text("about").substring(f.text("about").indexOf('/') + 1));
                text("text", f.text("text"));
                plain("structural", f.text("structural"));
                named("change", f);
                told(f);
                photos(Photo.allOf(f));
            }
            case DEVIATION_SETTLED -> settle(e, f);
            case LOT_RECEIVED -> {
                made(e, "receive", f);
                plain("of", f.text("of"));
            }
            case LOT_MOVED -> {
                made(e, "move", f);
                plain("place", f.text("to"));
            }
            case STOCK_TAKEN -> {
                made(e, "count", f);
                rows(f, "counts");
            }
            case ORDER_PLACED -> {
                made(e, "order", f);
                list("needed", f.texts("needed"));
                rows(f, "features");
            }
            case ORDER_RECEIVED -> {
                made(e, "arrival", f);
                text("text", f.text("note"));
                rows(f, "measured");
            }
            case VISIT_HELD -> inspect(e, "visit", f, "");
            case FINDING_RAISED -> inspect(e, "finding", f, "visit");
            case FINDING_CORRECTED -> inspect(e, "put-right", f, "finding");
            case FINDING_SIGNED -> inspect(e, "sign-off", f, "finding");
            case CHANGE_RAISED -> {
                change(e, "change", f);
                text("number", f.text("number"));
                text("what", f.text("what"));
                text("why", f.text("why"));
                list("touches", f.texts("touches"));
            }
            case CHANGE_DECIDED -> {
                change(e, "change-decision", f);
                plain("decision", f.text("decision"));
                plain("second", f.text("second"));
                list("items", f.texts("items"));
                rows(f, "withdraws");
            }
            case CHANGE_SETTLED -> {
                change(e, "change-line", f);
                plain("item", f.text("item"));
                plain("how", f.text("how"));
                text("drawing", f.text("drawing"));
            }
            case CHANGE_CLOSED -> change(e, "change-close", f);
            case FILE_SAVED,
                    FILE_REMOVED,
                    PROJECT_ADDED,
                    FOLDER_IMPORTED,
                    PLAN_PUBLISHED,
                    PERSON_ADMITTED,
                    PERSON_CHANGED,
                    DEVICE_PAIRED,
                    DEVICE_ENDED,
                    SIGNED_IN,
                    SIGNED_OUT,
                    SIGN_IN_BARRED,
                    SHEET_PRINTED,
                    WEEK_TOLD,
                    ERASED,
                    ACT_REFUSED -> {}
        }
    }

    private void missing(List<StepRecord.Lack> missing) {
        if (!missing.isEmpty()) {
            out.append("    missing:\n");
        }
        for (StepRecord.Lack lack : missing) {
            out.append("      - what: ").append(quoted(lack.what())).append('\n');
            inRow("why", lack.why().isEmpty() ? "" : quoted(lack.why()));
        }
    }

    private void made(Entry e, String act, Value.Fields f) {
        begin(e, act, f);
        plain("lot", f.text("lot"));
        HistoryKind.SAID.forEach(k -> {
            if (COUNTS.contains(k)) {
                plain(k, f.text(k));
            } else {
                text(k, f.text(k));
            }
        });
        told(f);
    }

    private void rows(Value.Fields f, String list) {
        List<Value> items = f.items(list);
        if (!items.isEmpty()) {
            out.append("    ").append(list).append(":\n");
        }
        for (Value item : items) {
            if (item instanceof Value.Fields row) {
                String lead = "      - ";
                for (String key : HistoryKind.ROWS.getOrDefault(list, List.of())) {
                    if (row.text(key).isEmpty() && list.equals("withdraws")) {
                        continue;
                    }
                    out.append(lead)
                            .append(key)
                            .append(": ")
                            .append(quoted(row.text(key)))
                            .append('\n');
                    lead = "        ";
                }
            }
        }
    }

    /** What belongs to a visit; what it answers is named by its id. */
    private void inspect(Entry e, String act, Value.Fields f, String answers) {
        begin(e, act, f);
        if (!answers.isEmpty()) {
            named(answers, f);
        }
        plain("about", f.text("about").substring(f.text("about").indexOf('/') + 1));
        plain("stage", f.text("stage"));
        plain("own", f.text("own"));
        plain("accepted", f.text("accepted"));
        text("who", f.text("who"));
        text("scale", f.text("scale"));
        text("facing", f.text("facing"));
        text("text", f.text("text"));
        photos(Photo.allOf(f));
    }

    private void told(Value.Fields f) {
        if (!f.text("told").isEmpty()) {
            plain("told", local(Instant.parse(f.text("told"))));
        }
    }

    /** An entry that another names, by the id under which it is told. */
    private void named(String key, Value.Fields f) {
        String named = clients.get(f.whole(key).orElse(0L));
        plain(key, named == null ? "" : named);
    }

    private void change(Entry e, String act, Value.Fields f) {
        begin(e, act, f);
        named("change", f);
        text("text", f.text("note"));
        plain("structural", f.text("structural"));
    }

    private void settle(Entry e, Value.Fields f) {
        begin(e, "settle", f);
        named("deviation", f);
        plain("disposition", f.text("disposition"));
        text("text", f.text("note"));
        plain("structural", f.text("structural"));
        plain("second", f.text("second"));
        List<Rework> rework = Rework.allOf(f);
        if (!rework.isEmpty()) {
            out.append("    rework:\n");
        }
        for (Rework r : rework) {
            out.append("      - what: ").append(quoted(r.what())).append('\n');
            inRow("time", quoted(r.time()));
            inRow("kind", r.kind());
        }
    }

    private void correct(Entry e, Value.Fields f) {
        begin(e, "correct", f);
        String named = clients.get(f.whole("entry").orElse(0L));
        plain("corrects", named == null ? "" : named);
        text("text", f.text("why"));
        if (f.text("withdrawn").equals("yes")) {
            plain("withdrawn", "yes");
            return;
        }
        Value.Fields with = f.inner("with");
        if (!with.text("at").isEmpty()) {
            plain("to", local(Instant.parse(with.text("at"))));
        }
        work(with);
        text("instead", with.text("text"));
        measured(with);
    }

    private void begin(Entry e, String act, Value.Fields f) {
        Instant at = f.text("at").isEmpty() ? e.taken() : Instant.parse(f.text("at"));
        out.append("  - id: ").append(e.client()).append('\n');
        plain("at", local(at));
        // Of a correction only the mended time counts; when it was made is told for the reader alone.
        Instant counts = f.inner("with").text("at").isEmpty()
                ? at
                : Instant.parse(f.inner("with").text("at"));
        if (isTwice(counts)) {
            text("offset", zone.getRules().getOffset(counts).getId().replace("Z", "+00:00"));
        }
        plain("by", e.by());
        plain("do", act);
        plain("step", f.text("step").substring(f.text("step").indexOf('/') + 1));
    }

    /** Whether the shop's clock shows this time twice, because it is put back. */
    private boolean isTwice(Instant at) {
        return zone.getRules()
                        .getValidOffsets(LocalDateTime.ofInstant(at, zone))
                        .size()
                > 1;
    }

    private String local(Instant at) {
        return LocalDateTime.ofInstant(at, zone).truncatedTo(ChronoUnit.SECONDS).toString();
    }

    private void work(Value.Fields f) {
        list("people", f.texts("people"));
        list("places", f.texts("places"));
        text("which-way", f.text("which-way"));
        plain("signed", f.text("signed"));
        plain("slip", f.text("slip"));
    }

    private void measured(Value.Fields f) {
        plain("of", f.text("of"));
        text("station", f.text("station"));
        text("state", f.text("state"));
        Value.Fields values = f.inner("values");
        HistoryKind.AS_TYPED.forEach(k -> text(k, values.text(k)));
    }

    private void photos(List<Photo> photos) {
        if (!photos.isEmpty()) {
            out.append("    photos:\n");
        }
        for (Photo p : photos) {
            out.append("      - file: ").append(p.sha256()).append('\n');
            inRow("people", p.people() == Photo.People.UNSAID ? "" : p.people().key());
            inRow("original", p.original() ? "yes" : "");
            inRow("location", p.location() ? "yes" : "");
            inRow("sent", p.sent().equals(p.sha256()) ? "" : p.sent());
        }
    }

    private void inRow(String key, String word) {
        if (!word.isEmpty()) {
            out.append("        ").append(key).append(": ").append(word).append('\n');
        }
    }

    private void plain(String key, String word) {
        if (!word.isEmpty()) {
            out.append("    ").append(key).append(": ").append(word).append('\n');
        }
    }

    private void list(String key, List<String> words) {
        if (!words.isEmpty()) {
            out.append("    ")
                    .append(key)
                    .append(": [")
                    .append(String.join(", ", words))
                    .append("]\n");
        }
    }

    private void text(String key, String text) {
        if (!text.isEmpty()) {
            out.append("    ").append(key).append(": ").append(quoted(text)).append('\n');
        }
    }

    /** A text in double quotes as YAML 1.2 reads it back unchanged. */
    static String quoted(String text) {
        StringBuilder b = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> b.append("\\\"");
                case '\\' -> b.append("\\\\");
                case '\n' -> b.append("\\n");
                case '\t' -> b.append("\\t");
                case '\r' -> b.append("\\r");
                default -> {
                    if (c < 0x20
                            || (c >= 0x7f && c < 0xa0)
                            || c == 0x2028
                            || c == 0x2029
                            || c == 0xfeff
                            || c == 0xfffe
                            || c == 0xffff) {
                        b.append(String.format(Locale.ROOT, "\\u%04x", c));
                    } else {
                        b.appendCodePoint(c);
                    }
                }
            }
        });
        return b.append('"').toString();
    }
}
