package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.MendedReading;
import fayline.flow.record.RecordState;
import fayline.flow.record.TakenReading;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** An earlier entry about a step or reading was wrong: a new entry names it and says what holds instead. */
public final class CorrectStep {
    private static final List<EntryKind> CORRECTABLE = List.of(
            EntryKind.STEP_STARTED,
            EntryKind.STEP_FINISHED,
            EntryKind.STEP_NOTED,
            EntryKind.READING_TAKEN,
            EntryKind.LOT_DRAWN,
            EntryKind.MIX_MADE,
            EntryKind.PLY_LAID,
            EntryKind.DEVIATION_RAISED,
            EntryKind.DEVIATION_SETTLED,
            EntryKind.CORRECTED);
    private final ShopRecord shop;

    /** On a shop's record. */
    public CorrectStep(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Puts something else in the place of what was recorded.
     *
     * @param sent who sends it under which id
     * @param entry sequence number of the entry that was wrong
     * @param mended what holds instead
     * @param why why, in words
     */
    public Outcome correct(Sent sent, long entry, Mended mended, String why) {
        return shop.deciding(() -> decide(sent, entry, Optional.of(mended), why));
    }

    /**
     * Takes back what was recorded.
     *
     * @param sent who sends it under which id
     * @param entry sequence number of the entry that was wrong
     * @param why why, in words
     */
    public Outcome withdraw(Sent sent, long entry, String why) {
        return shop.deciding(() -> decide(sent, entry, Optional.empty(), why));
    }

    private Outcome decide(Sent sent, long named, Optional<Mended> mended, String why) {
        List<Entry> found = named < 1 ? List.of() : shop.entries(named);
        Optional<EntryKind> kind =
                found.isEmpty() ? Optional.empty() : EntryKind.of(found.get(0).kind());
        if (kind.filter(CORRECTABLE::contains).isEmpty()) {
            return Outcome.refused("Entry " + named + " is not one that can be corrected.");
        }
        Entry wrong = found.get(0);
        Optional<String> stays = stays(root(wrong), mended);
        if (stays.isPresent()) {
            return Outcome.refused(stays.get());
        }
        List<Meanwhile> meanwhile = meanwhile(sent, root(wrong));
        if (!meanwhile.isEmpty()) {
            return Outcome.overtaken(meanwhile);
        }
        List<Definition> definitions = wrong.project().isEmpty()
                ? shop.definitions()
                : shop.definition(wrong.project()).stream().toList();
        if (definitions.isEmpty()) {
            return Outcome.refused("The project of entry " + named + " is not in this shop.");
        }
        Checks checks = new Checks(definitions.get(0));
        checks.person("by", sent.by());
        checks.text("why", why, sent.live());
        mended.ifPresent(m -> check(checks, sent, m));
        mended.flatMap(m -> measured(wrong, m)).ifPresent(m -> TakeReading.check(checks, definitions.get(0), m));
        Value.Fields with = mended.map(m -> fields(wrong, m)).orElse(Value.Fields.NONE);
        if (mended.isPresent() && with.fields().isEmpty()) {
            checks.stop("correction", "nothing", "what holds instead", "give the right time, people, text or value");
        }
        if (!checks.problems().isEmpty()) {
            return Outcome.refused("The correction was not recorded.", checks.problems());
        }
        Value.Fields payload = Value.Fields.NONE.with("entry", named).withUnlessEmpty("why", why);
        return shop.append(Checks.entry(
                shop,
                sent,
                wrong.project(),
                EntryKind.CORRECTED,
                mended.isPresent() ? payload.with("with", with) : payload.with("withdrawn", "yes")));
    }

    /** Why an entry may not be corrected so; empty where it may. */
    private Optional<String> stays(long root, Optional<Mended> mended) {
        List<Entry> entry = root < 1 ? List.of() : shop.entries(root);
        String kind = entry.isEmpty() ? "" : entry.get(0).kind();
        if (kind.equals(EntryKind.DEVIATION_RAISED.key()) && mended.isEmpty()) {
            return Optional.of("A deviation is not taken back: the lead decides about it.");
        }
        if (kind.equals(EntryKind.DEVIATION_SETTLED.key()) && mended.isPresent()) {
            return Optional.of("A decision is not changed: take it back, and decide anew.");
        }
        return Optional.empty();
    }

    /** What others corrected of the same reading since the sender had looked. */
    private List<Meanwhile> meanwhile(Sent sent, long reading) {
        if (sent.seen() < 1 || shop.knows(sent.client())) {
            return List.of();
        }
        RecordState state = shop.state();
        List<MendedReading> since = state.mended().stream()
                .filter(m -> m.before().seq() == reading && m.seq() > sent.seen())
                .toList();
        if (since.isEmpty()) {
            return List.of();
        }
        MendedReading last = since.get(since.size() - 1);
        String now = last.withdrawn()
                ? "withdrawn"
                : state.reading(reading)
                        .map(TakenReading::values)
                        .map(CorrectStep::words)
                        .orElse("");
        return List.of(new Meanwhile(
                "the reading of entry " + reading,
                words(since.get(0).before().values()),
                now,
                "",
                last.by(),
                last.seq()));
    }

    private static String words(Map<String, String> values) {
        return values.entrySet().stream()
                .map(v -> v.getKey() + " " + v.getValue())
                .sorted()
                .collect(Collectors.joining(", "));
    }

    private void check(Checks checks, Sent sent, Mended m) {
        m.people().forEach(p -> checks.person("people", p));
        checks.places(m.places());
        m.at().ifPresent(t -> checks.time(sent, t, shop.now()));
        if (!m.signed().isEmpty()) {
            checks.person("signed", m.signed());
        }
        List<String> texts = new ArrayList<>(List.of(m.whichWay(), m.note(), m.of(), m.station(), m.state()));
        texts.addAll(m.values().values());
        texts.forEach(t -> checks.text("correction", t, false));
    }

    private Value.Fields fields(Entry wrong, Mended m) {
        Value.Fields with = Value.Fields.NONE
                .withUnlessEmpty("at", m.at().map(Object::toString).orElse(""))
                .withUnlessEmpty("which-way", m.whichWay())
                .withUnlessEmpty("signed", m.signed())
                .withUnlessEmpty("text", m.note())
                .withUnlessEmpty("of", m.of())
                .withUnlessEmpty("station", m.station())
                .withUnlessEmpty("state", m.state());
        with = m.people().isEmpty() ? with : with.with("people", m.people());
        with = m.places().isEmpty() ? with : with.with("places", m.places());
        if (!m.values().isEmpty()) {
            Value.Fields values = Value.Fields.NONE;
            for (var v : valuesNow(wrong, m).entrySet()) {
                values = values.with(v.getKey(), v.getValue());
            }
            with = with.with("values", values);
        }
        return with;
    }

    /** The reading as it will hold, where the correction changes what is said of one. */
    private Optional<Measured> measured(Entry wrong, Mended m) {
        if (m.of().isEmpty()
                && m.station().isEmpty()
                && m.state().isEmpty()
                && m.values().isEmpty()) {
            return Optional.empty();
        }
        return shop.state()
                .reading(root(wrong))
                .map(r -> new Measured(
                        r.kind(),
                        m.of().isEmpty() ? r.of() : m.of(),
                        m.station().isEmpty() ? r.station() : m.station(),
                        m.state().isEmpty() ? r.state() : m.state(),
                        valuesNow(wrong, m),
                        Optional.empty()));
    }

    private static long root(Entry wrong) {
        return wrong.kind().equals(EntryKind.CORRECTED.key())
                ? wrong.fields().whole("entry").orElse(0L)
                : wrong.seq();
    }

    /** All values of the reading, so that the ones that were right stay; one left empty is taken out. */
    private NavigableMap<String, String> valuesNow(Entry wrong, Mended m) {
        NavigableMap<String, String> values = new TreeMap<>();
        shop.state().reading(root(wrong)).map(TakenReading::values).ifPresent(values::putAll);
        values.putAll(m.values());
        values.values().removeIf(String::isEmpty);
        return values;
    }
}
