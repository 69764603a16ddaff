package fayline.app.usecase.act;

import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.TakenReading;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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
            EntryKind.VISIT_HELD,
            EntryKind.FINDING_RAISED,
            EntryKind.FINDING_CORRECTED,
            EntryKind.FINDING_SIGNED,
            EntryKind.CHANGE_RAISED,
            EntryKind.CHANGE_DECIDED,
            EntryKind.CHANGE_SETTLED,
            EntryKind.CHANGE_CLOSED,
            EntryKind.CORRECTED);
    private static final Set<String> TAKEN_BACK_WHOLE = Set.of(
            EntryKind.DEVIATION_SETTLED.key(),
            EntryKind.CHANGE_DECIDED.key(),
            EntryKind.CHANGE_SETTLED.key(),
            EntryKind.CHANGE_CLOSED.key());
    private static final DateTimeFormatter MINUTES = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);
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
        Optional<Entry> found = shop.entry(named)
                .filter(e ->
                        EntryKind.of(e.kind()).filter(CORRECTABLE::contains).isPresent());
        if (found.isEmpty()) {
            return Outcome.refused("Entry " + named + " is not one that can be corrected.");
        }
        Entry wrong = found.get();
        if (wrong.isEmptied()) {
            return Outcome.refused("Entry " + named + " was erased; there is nothing left of it to correct.");
        }
        Optional<String> stays = stays(root(named), mended);
        if (stays.isPresent()) {
            return Outcome.refused(stays.get());
        }
        List<Meanwhile> meanwhile = meanwhile(sent, named);
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
        String kind = shop.entry(root).map(Entry::kind).orElse("");
        if (kind.equals(EntryKind.DEVIATION_RAISED.key()) && mended.isEmpty()) {
            return Optional.of("A deviation is not taken back: the lead decides about it.");
        }
        if (kind.equals(EntryKind.FINDING_RAISED.key()) && mended.isEmpty()) {
            return Optional.of("A finding is not taken back: it is put right, and signed off.");
        }
        if (kind.equals(EntryKind.CHANGE_RAISED.key()) && mended.isPresent()) {
            return Optional.of("A change is not altered once it is raised: take it back, and raise it anew.");
        }
        if (TAKEN_BACK_WHOLE.contains(kind) && mended.isPresent()) {
            return Optional.of("A decision is not changed: take it back, and decide anew.");
        }
        return Optional.empty();
    }

    /**
     * What others corrected of the same entry since the sender had looked; nothing where nobody did, or where this was sent before.
     *
     * @param sent who sends a correction, and how far they had seen the record
     * @param entry the entry it is about, or a correction of it
     */
    public List<Meanwhile> meanwhile(Sent sent, long entry) {
        if (sent.seen() < 1 || shop.knows(sent.client())) {
            return List.of();
        }
        long first = root(entry);
        List<Entry> mends = shop.entries(first + 1).stream()
                .filter(e -> e.kind().equals(EntryKind.CORRECTED.key()) && root(e.seq()) == first)
                .toList();
        if (mends.isEmpty() || mends.get(mends.size() - 1).seq() <= sent.seen()) {
            return List.of();
        }
        Entry last = mends.get(mends.size() - 1);
        Entry was = shop.entry(first).orElseThrow();
        boolean reading = was.kind().equals(EntryKind.READING_TAKEN.key());
        return List.of(new Meanwhile(
                (reading ? "the reading of entry " : "entry ") + first,
                words(was, mends.stream().filter(m -> m.seq() <= sent.seen()).toList()),
                words(was, mends),
                "",
                last.by(),
                last.seq()));
    }

    /** What an entry says with its corrections laid over it, in the words of a form. */
    private String words(Entry was, List<Entry> mends) {
        Value.Fields now = was.fields();
        boolean withdrawn = false;
        for (Entry m : mends) {
            now = now.overlaidBy(m.fields().inner("with"));
            withdrawn = m.fields().text("withdrawn").equals("yes");
        }
        if (withdrawn) {
            return "withdrawn";
        }
        if (was.kind().equals(EntryKind.READING_TAKEN.key())) {
            return words(now.inner("values").allTexts());
        }
        String time = now.text("at").isEmpty() ? "" : atTheShop(was, Instant.parse(now.text("at")));
        return Stream.of(time, now.text("which-way"), now.text("text"))
                .filter(w -> !w.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String atTheShop(Entry was, Instant at) {
        return shop.definition(was.project())
                .map(d -> at.atZone(d.shop().zone()).format(MINUTES))
                .orElseGet(at::toString);
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
                .reading(root(wrong.seq()))
                .map(r -> new Measured(
                        r.kind(),
                        m.of().isEmpty() ? r.of() : m.of(),
                        m.station().isEmpty() ? r.station() : m.station(),
                        m.state().isEmpty() ? r.state() : m.state(),
                        valuesNow(wrong, m),
                        Optional.empty()));
    }

    /** The entry that a row of corrections begins with. */
    private long root(long entry) {
        return shop.entry(entry)
                .filter(e -> e.kind().equals(EntryKind.CORRECTED.key()))
                .flatMap(e -> e.fields().whole("entry"))
                .filter(named -> named < entry)
                .map(this::root)
                .orElse(entry);
    }

    /** All values of the reading, so that the ones that were right stay; one left empty is taken out. */
    private NavigableMap<String, String> valuesNow(Entry wrong, Mended m) {
        NavigableMap<String, String> values = new TreeMap<>();
        shop.state().reading(root(wrong.seq())).map(TakenReading::values).ifPresent(values::putAll);
        values.putAll(m.values());
        values.values().removeIf(String::isEmpty);
        return values;
    }
}
