package fayline.app.web.kept;

import fayline.app.web.frame.Refusal;
import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * What a phone sends at once: the narrow JSON of the record, read strictly. Format 1: {@code format}, {@code record} (the record
 * for which they were kept, empty where the phone never heard of one) and {@code entries}, each with {@code id}, {@code path},
 * {@code project}, {@code by}, {@code at} and {@code fields}, a list of name and value in turn.
 *
 * @param record the record they were kept for; empty where the phone does not know
 * @param forms the forms in the order of their making
 */
record KeptBatch(String record, List<KeptForm> forms) {
    /** The format this program speaks. Phones that hold an older one are still understood. */
    static final long FORMAT = 1;

    private static final int MOST = 100;
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");

    KeptBatch {
        forms = List.copyOf(forms);
    }

    static KeptBatch read(String json) {
        try {
            if (!(Value.parse(json) instanceof Value.Fields all)) {
                throw bad("the batch", "fields");
            }
            long format = all.whole("format").orElse(0L);
            if (format != FORMAT) {
                throw bad("format " + format, "format " + FORMAT);
            }
            List<Value> entries = all.items("entries");
            if (entries.size() > MOST) {
                throw bad(entries.size() + " entries", "at most " + MOST + " at once");
            }
            List<KeptForm> forms = new ArrayList<>();
            for (Value one : entries) {
                forms.add(form(one));
            }
            return new KeptBatch(all.text("record"), forms);
        } catch (NotCanonicalException e) {
            throw bad("text that is not in the form of the record (" + e.getMessage() + ")", "canonical JSON");
        }
    }

    private static KeptForm form(Value one) {
        if (!(one instanceof Value.Fields f)) {
            throw bad("an entry without fields", "id, path, project, by, at and fields");
        }
        if (!ID.matcher(f.text("id")).matches()) {
            throw bad("id \"" + f.text("id") + '"', "a random number of 128 bits, as a UUID");
        }
        List<String> flat = f.texts("fields");
        if (flat.size() != f.items("fields").size() || flat.size() % 2 != 0) {
            throw bad("fields of " + f.text("id"), "name and value in turn, as texts");
        }
        List<KeptForm.Pair> typed = new ArrayList<>();
        for (int i = 0; i < flat.size(); i += 2) {
            typed.add(new KeptForm.Pair(flat.get(i), flat.get(i + 1)));
        }
        String path = f.text("path");
        int cut = path.indexOf('?');
        String address = cut < 0 ? path : path.substring(0, cut);
        return new KeptForm(f.text("id"), address, f.text("project"), f.text("by"), moment(f), typed);
    }

    private static Instant moment(Value.Fields f) {
        try {
            return Instant.parse(f.text("at")).truncatedTo(ChronoUnit.MINUTES);
        } catch (DateTimeParseException e) {
            throw bad("at \"" + f.text("at") + '"', "a moment such as 2026-03-02T07:30:00Z");
        }
    }

    private static Refusal bad(String found, String expected) {
        return new Refusal(
                400,
                "What the phone sent cannot be read: found " + found + ", expected " + expected + ".",
                List.of("Nothing was taken. Everything stays on the phone."));
    }
}
