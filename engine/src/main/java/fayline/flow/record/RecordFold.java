package fayline.flow.record;

import fayline.flow.record.change.ChangeFold;
import fayline.flow.record.erasure.Erasure;
import fayline.flow.record.erasure.ErasureFold;
import fayline.flow.record.inspect.InspectFold;
import fayline.flow.record.made.MadeFold;
import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import fayline.flow.record.stock.StockFold;
import fayline.flow.record.trouble.TroubleFold;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Folds entries into a {@link RecordState}, one after the other. Not safe for several threads. Of two starts or two finishes
 * of one step the one that stands first has effect, and the other becomes a {@link Conflict}; where the first is withdrawn by
 * a correction, the next one takes effect.
 */
public final class RecordFold {
    private Head head = Head.EMPTY;
    private final SortedMap<Long, Happened> happenings = new TreeMap<>();
    private final Set<Long> withdrawn = new HashSet<>();
    private final Map<Long, Long> rootOfCorrection = new TreeMap<>();
    private final List<Conflict> otherConflicts = new ArrayList<>();
    /** Entries whose payload was emptied, until the entry comes that says what stayed of them. */
    private final Map<Long, Entry> emptied = new HashMap<>();

    private final FileFold files = new FileFold();
    private final ErasureFold erasures = new ErasureFold();
    private final StepFold steps = new StepFold(erasures);
    private final ReadingFold readings = new ReadingFold();
    private final MadeFold made = new MadeFold();
    private final TroubleFold trouble = new TroubleFold();
    private final StockFold stock = new StockFold();
    private final InspectFold inspect = new InspectFold();
    private final ChangeFold change = new ChangeFold();
    /** Rooms that fold entries of their own kinds by themselves. */
    private final Map<EntryKind, Room> rooms = Map.ofEntries(
            Map.entry(EntryKind.LOT_DRAWN, made),
            Map.entry(EntryKind.MIX_MADE, made),
            Map.entry(EntryKind.PLY_LAID, made),
            Map.entry(EntryKind.DEVIATION_RAISED, trouble),
            Map.entry(EntryKind.DEVIATION_SETTLED, trouble),
            Map.entry(EntryKind.LOT_RECEIVED, stock),
            Map.entry(EntryKind.LOT_MOVED, stock),
            Map.entry(EntryKind.STOCK_TAKEN, stock),
            Map.entry(EntryKind.ORDER_PLACED, stock),
            Map.entry(EntryKind.ORDER_RECEIVED, stock),
            Map.entry(EntryKind.VISIT_HELD, inspect),
            Map.entry(EntryKind.FINDING_RAISED, inspect),
            Map.entry(EntryKind.FINDING_CORRECTED, inspect),
            Map.entry(EntryKind.FINDING_SIGNED, inspect),
            Map.entry(EntryKind.CHANGE_RAISED, change),
            Map.entry(EntryKind.CHANGE_DECIDED, change),
            Map.entry(EntryKind.CHANGE_SETTLED, change),
            Map.entry(EntryKind.CHANGE_CLOSED, change));

    private Optional<PublishedPlan> published = Optional.empty();
    private long unknown;
    private long work;

    /** An empty fold. */
    public RecordFold() {}

    /**
     * Takes the next entry.
     *
     * @return what of the state it touches
     * @throws IllegalArgumentException if it is not the next one
     */
    public Touched take(Entry entry) {
        if (entry.seq() != head.seq() + 1) {
            throw new IllegalArgumentException("entry " + entry.seq() + " after entry " + head.seq());
        }
        head = entry.head();
        Optional<EntryKind> kind = EntryKind.of(entry.kind());
        if (kind.isEmpty()) {
            unknown++;
            return Touched.NOTHING;
        }
        if (kind.get().bearsOnNoWork()) {
            return Touched.NOTHING;
        }
        work = entry.seq();
        if (entry.isEmptied()) {
            emptied.put(entry.seq(), entry);
            return Touched.NOTHING;
        }
        Value.Fields f = entry.fields();
        return switch (kind.get()) {
            case FILE_SAVED -> files.save(entry, f);
            case FILE_REMOVED -> files.remove(entry, f);
            case PROJECT_ADDED -> files.addProject(entry.project());
            case FOLDER_IMPORTED,
                    SHEET_PRINTED,
                    PERSON_ADMITTED,
                    PERSON_CHANGED,
                    DEVICE_PAIRED,
                    DEVICE_ENDED,
                    SIGNED_IN,
                    SIGNED_OUT,
                    SIGN_IN_BARRED,
                    ACT_REFUSED,
                    WEEK_TOLD -> Touched.NOTHING;
            case STEP_STARTED,
                    STEP_FINISHED,
                    STEP_NOTED,
                    READING_TAKEN,
                    LOT_DRAWN,
                    MIX_MADE,
                    PLY_LAID,
                    DEVIATION_RAISED,
                    DEVIATION_SETTLED,
                    LOT_RECEIVED,
                    LOT_MOVED,
                    STOCK_TAKEN,
                    ORDER_PLACED,
                    ORDER_RECEIVED,
                    VISIT_HELD,
                    FINDING_RAISED,
                    FINDING_CORRECTED,
                    FINDING_SIGNED,
                    CHANGE_RAISED,
                    CHANGE_DECIDED,
                    CHANGE_SETTLED,
                    CHANGE_CLOSED -> happen(entry, f);
            case CORRECTED -> correct(entry, f);
            case ERASED -> erase(entry, f);
            case PLAN_PUBLISHED -> {
                published = Optional.of(PublishedPlan.of(entry));
                yield Touched.NOTHING;
            }
        };
    }

    /** The state of all entries taken so far. */
    public RecordState state() {
        List<Conflict> conflicts = new ArrayList<>(otherConflicts);
        conflicts.addAll(steps.conflicts());
        conflicts.sort(Comparator.comparingLong(Conflict::seq));
        return new RecordState(
                head,
                work,
                files.projects(),
                files.ofShop(),
                files.ofProjects(),
                steps.steps(),
                readings.readings(),
                readings.mended(),
                made.state(),
                trouble.state(),
                stock.state(),
                inspect.state(),
                erasures.state(),
                change.state(),
                published,
                conflicts,
                unknown);
    }

    /** Where the entries taken so far end. */
    public Head head() {
        return head;
    }

    /** A file of a project, or of the shop where the project is empty. */
    public Optional<KeptFile> file(String project, String path) {
        return files.file(project, path);
    }

    /** What is recorded of a step. */
    public StepRecord step(String id) {
        return steps.step(id);
    }

    /** What is recorded of the steps whose ids begin so. */
    public List<StepRecord> stepsOf(String prefix) {
        return steps.startingWith(prefix);
    }

    /** A reading by its entry. */
    public Optional<TakenReading> reading(long seq) {
        return readings.reading(seq);
    }

    /** The conflicts about a step. */
    public List<Conflict> conflicts(String step) {
        return steps.conflicts(step);
    }

    /** The conflict that an entry became without belonging to a step. */
    public Optional<Conflict> conflict(long seq) {
        return otherConflicts.stream().filter(c -> c.seq() == seq).findFirst();
    }

    private Touched happen(Entry entry, Value.Fields f) {
        Happened h = new Happened(
                entry.seq(), entry.kind(), entry.project(), Entry.time(f.text("at"), entry.at()), entry.by(), f);
        happenings.put(h.seq(), h);
        return refresh(h);
    }

    private Touched refresh(Happened h) {
        boolean gone = withdrawn.contains(h.seq());
        Optional<EntryKind> kind = EntryKind.of(h.kind());
        Optional<Room> room = kind.flatMap(k -> Optional.ofNullable(rooms.get(k)));
        if (room.isPresent()) {
            if (gone) {
                room.get().drop(h.seq());
            } else {
                room.get().hold(h);
            }
            return scrap(h);
        }
        if (kind.filter(EntryKind::isOfStep).isPresent()) {
            return gone ? steps.drop(h) : steps.hold(h);
        }
        return gone ? readings.drop(h.seq()) : readings.hold(h);
    }

    private Touched correct(Entry entry, Value.Fields f) {
        long named = f.whole("entry").orElse(0L);
        long root = rootOfCorrection.getOrDefault(named, named);
        Happened old = happenings.get(root);
        boolean late = erasures.of(root).filter(e -> entry.seq() > e.seq()).isPresent();
        if (old == null || late) {
            otherConflicts.add(new Conflict(
                    entry.seq(),
                    0,
                    "entry " + named,
                    "The correction names entry " + named
                            + (late ? ", which was erased before." : ", which is not one that can be corrected.")));
            return Touched.conflict(entry.seq());
        }
        rootOfCorrection.put(entry.seq(), root);
        readings.mend(entry, root, f);
        return lay(root, f);
    }

    /** Lays a correction over what it corrects, which is there. */
    private Touched lay(long root, Value.Fields f) {
        Happened old = Objects.requireNonNull(happenings.get(root));
        // A correction mends what was said of a step or reading; it never moves it to another one, nor changes a
        // picture.
        Value.Fields mended = old.fields().overlaidBy(f.inner("with"));
        for (String fixed : List.of(
                "step", "kind", "photos", "about", "deviation", "visit", "finding", "number", "change", "item")) {
            Value stays = old.fields().fields().get(fixed);
            if (stays != null) {
                mended = mended.with(fixed, stays);
            }
        }
        if (f.text("withdrawn").equals("yes")) {
            withdrawn.add(root);
        } else {
            withdrawn.remove(root);
        }
        return held(old, mended);
    }

    private Touched held(Happened old, Value.Fields f) {
        Instant at = Entry.time(f.text("at"), old.at().toString());
        Happened now = new Happened(old.seq(), old.kind(), old.project(), at, old.by(), f);
        happenings.put(now.seq(), now);
        return refresh(now);
    }

    /**
     * What was erased is from now on what the erasing entry kept of it, whether it was seen whole before or comes emptied from the
     * store. The corrections of an entry are erased after it, in their order, and lie over it again as far as they were kept.
     */
    private Touched erase(Entry entry, Value.Fields f) {
        long named = f.whole("entry").orElse(0L);
        Erasure erasure =
                new Erasure(named, entry.seq(), Entry.time(f.text("at"), entry.at()), entry.by(), f.text("why"));
        erasures.hold(erasure);
        Value.Fields kept = f.inner("kept");
        Optional<Entry> whole = Optional.ofNullable(emptied.remove(named));
        Happened before = happenings.get(named);
        if (before != null) {
            withdrawn.remove(named);
            return held(before, kept);
        }
        Long root = rootOfCorrection.get(named);
        if (root != null) {
            return lay(root, kept);
        }
        return whole.map(e -> isCorrection(e) ? correct(e, kept) : happen(e, kept))
                .orElse(Touched.NOTHING);
    }

    private static boolean isCorrection(Entry e) {
        return e.kind().equals(EntryKind.CORRECTED.key());
    }

    /** Where a decision scrapped a part or no longer does, its steps are what they are since then. */
    private Touched scrap(Happened h) {
        String of = trouble.madeOf(h.seq());
        long from = trouble.scrappedAt(of);
        if (of.isEmpty() || from == steps.scrappedFrom(of)) {
            return Touched.NOTHING;
        }
        made.begin(of, from);
        return steps.begin(of, from);
    }
}
