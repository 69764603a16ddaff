package fayline.flow.record;

import fayline.flow.record.inspect.InspectFold;
import fayline.flow.record.made.MadeFold;
import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import fayline.flow.record.stock.StockFold;
import fayline.flow.record.trouble.TroubleFold;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Folds entries into a {@link RecordState}, one after the other. Not safe for several threads. Of two starts or two finishes
 * of one step the one that stands first has effect, and the other becomes a {@link Conflict}; where the first is withdrawn by
 * a correction, the next one takes effect.
 */
public final class RecordFold {
    private Head head = Head.EMPTY;
    private final List<String> projects = new ArrayList<>();
    private final SortedMap<String, KeptFile> shopFiles = new TreeMap<>();
    private final SortedMap<String, SortedMap<String, KeptFile>> projectFiles = new TreeMap<>();
    private final SortedMap<Long, Happened> happenings = new TreeMap<>();
    /** Parts and joints that were scrapped, with the entry from which on they are made anew. */
    private final Map<String, Long> scrapped = new HashMap<>();

    private final Set<Long> withdrawn = new HashSet<>();
    private final Map<Long, Long> rootOfCorrection = new TreeMap<>();
    private final SortedMap<String, SortedSet<Long>> ofStep = new TreeMap<>();
    private final SortedMap<String, StepRecord> steps = new TreeMap<>();
    private final SortedMap<Long, TakenReading> readings = new TreeMap<>();
    private final List<MendedReading> mended = new ArrayList<>();
    private final SortedMap<String, List<Conflict>> stepConflicts = new TreeMap<>();
    private final List<Conflict> otherConflicts = new ArrayList<>();
    private final MadeFold made = new MadeFold();
    private final TroubleFold trouble = new TroubleFold();
    private final StockFold stock = new StockFold();
    private final InspectFold inspect = new InspectFold();
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
            Map.entry(EntryKind.FINDING_SIGNED, inspect));

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
        Value.Fields f = entry.fields();
        return switch (kind.get()) {
            case FILE_SAVED -> save(entry, f);
            case FILE_REMOVED -> remove(entry, f);
            case PROJECT_ADDED -> addProject(entry.project());
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
                    FINDING_SIGNED -> happen(entry, f);
            case CORRECTED -> correct(entry, f);
            case PLAN_PUBLISHED -> publish(entry, f);
        };
    }

    /** The state of all entries taken so far. */
    public RecordState state() {
        List<Conflict> conflicts = new ArrayList<>(otherConflicts);
        stepConflicts.values().forEach(conflicts::addAll);
        conflicts.sort(java.util.Comparator.comparingLong(Conflict::seq));
        return new RecordState(
                head,
                work,
                projects,
                shopFiles,
                projectFiles,
                steps,
                List.copyOf(readings.values()),
                mended,
                made.state(),
                trouble.state(),
                stock.state(),
                inspect.state(),
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
        SortedMap<String, KeptFile> files = project.isEmpty() ? shopFiles : projectFiles.get(project);
        return files == null ? Optional.empty() : Optional.ofNullable(files.get(path));
    }

    /** What is recorded of a step. */
    public StepRecord step(String id) {
        return steps.getOrDefault(id, StepRecord.none(id));
    }

    /** A reading by its entry. */
    public Optional<TakenReading> reading(long seq) {
        return Optional.ofNullable(readings.get(seq));
    }

    /** The conflicts about a step. */
    public List<Conflict> conflicts(String step) {
        return stepConflicts.getOrDefault(step, List.of());
    }

    /** The conflict that an entry became without belonging to a step. */
    public Optional<Conflict> conflict(long seq) {
        return otherConflicts.stream().filter(c -> c.seq() == seq).findFirst();
    }

    private SortedMap<String, KeptFile> scope(Entry entry, Value.Fields f) {
        return f.text("scope").equals("shop")
                ? shopFiles
                : projectFiles.computeIfAbsent(entry.project(), p -> new TreeMap<>());
    }

    private Touched save(Entry entry, Value.Fields f) {
        boolean binary = f.fields().containsKey("base64");
        KeptFile file =
                new KeptFile(f.text("path"), f.text(binary ? "base64" : "text"), binary, f.text("sha256"), entry.seq());
        scope(entry, f).put(file.path(), file);
        return Touched.file(f.text("scope").equals("shop") ? "" : entry.project(), file.path());
    }

    private Touched remove(Entry entry, Value.Fields f) {
        scope(entry, f).remove(f.text("path"));
        return Touched.file(f.text("scope").equals("shop") ? "" : entry.project(), f.text("path"));
    }

    private Touched addProject(String project) {
        if (!projects.contains(project)) {
            projects.add(project);
            projectFiles.computeIfAbsent(project, p -> new TreeMap<>());
        }
        return Touched.NOTHING;
    }

    private Touched happen(Entry entry, Value.Fields f) {
        Happened h =
                new Happened(entry.seq(), entry.kind(), entry.project(), time(f.text("at"), entry.at()), entry.by(), f);
        happenings.put(h.seq(), h);
        if (isOfStep(h)) {
            ofStep.computeIfAbsent(f.text("step"), s -> new TreeSet<>()).add(h.seq());
        }
        return refresh(h);
    }

    private static boolean isOfStep(Happened h) {
        return EntryKind.of(h.kind()).filter(EntryKind::isOfStep).isPresent();
    }

    private Touched refresh(Happened h) {
        Optional<Room> room = EntryKind.of(h.kind()).flatMap(k -> Optional.ofNullable(rooms.get(k)));
        if (room.isPresent()) {
            if (withdrawn.contains(h.seq())) {
                room.get().drop(h.seq());
            } else {
                room.get().hold(h);
            }
            return scrap(h);
        }
        return isOfStep(h) ? refreshStep(h.fields().text("step")) : refreshReading(h);
    }

    private Touched correct(Entry entry, Value.Fields f) {
        long named = f.whole("entry").orElse(0L);
        long root = rootOfCorrection.getOrDefault(named, named);
        Happened old = happenings.get(root);
        if (old == null) {
            otherConflicts.add(new Conflict(
                    entry.seq(),
                    0,
                    "entry " + named,
                    "The correction names entry " + named + ", which is not one that can be corrected."));
            return Touched.conflict(entry.seq());
        }
        rootOfCorrection.put(entry.seq(), root);
        reading(root)
                .ifPresent(r -> mended.add(new MendedReading(
                        entry.seq(),
                        r,
                        time("", entry.at()),
                        entry.by(),
                        f.text("why"),
                        f.text("withdrawn").equals("yes"))));
        // A correction mends what was said of a step or reading; it never moves it to another one, nor changes a
        // picture.
        Value.Fields mended = old.fields().overlaidBy(f.inner("with"));
        for (String fixed : List.of("step", "kind", "photos", "about", "deviation", "visit", "finding", "number")) {
            Value stays = old.fields().fields().get(fixed);
            if (stays != null) {
                mended = mended.with(fixed, stays);
            }
        }
        Happened now = new Happened(
                root,
                old.kind(),
                old.project(),
                time(mended.text("at"), old.at().toString()),
                old.by(),
                mended);
        happenings.put(root, now);
        if (f.text("withdrawn").equals("yes")) {
            withdrawn.add(root);
        } else {
            withdrawn.remove(root);
        }
        return refresh(now);
    }

    /** Where a decision scrapped a part or no longer does, its steps are what they are since then. */
    private Touched scrap(Happened h) {
        String made = trouble.madeOf(h.seq());
        long from = trouble.scrappedAt(made);
        if (made.isEmpty() || from == scrapped.getOrDefault(made, 0L)) {
            return Touched.NOTHING;
        }
        scrapped.put(made, from);
        this.made.begin(made, from);
        String prefix = made + "/";
        for (String step : List.copyOf(ofStep.tailMap(prefix).keySet())) {
            if (step.startsWith(prefix)) {
                refreshStep(step);
            }
        }
        return new Touched(Touched.What.STEPS, "", prefix);
    }

    /** What is recorded of the steps whose ids begin so. */
    public List<StepRecord> stepsOf(String prefix) {
        return steps.tailMap(prefix).values().stream()
                .takeWhile(s -> s.step().startsWith(prefix))
                .toList();
    }

    private Touched refreshReading(Happened h) {
        if (withdrawn.contains(h.seq())) {
            readings.remove(h.seq());
        } else {
            Value.Fields f = h.fields();
            readings.put(
                    h.seq(),
                    new TakenReading(
                            h.seq(),
                            h.project(),
                            h.at(),
                            h.by(),
                            f.text("kind"),
                            f.text("of"),
                            f.text("station"),
                            f.text("state"),
                            f.inner("values").allTexts()));
        }
        return Touched.reading(h.seq());
    }

    private Touched refreshStep(String step) {
        String[] bits = step.split("/", -1);
        StepBuilder built =
                new StepBuilder(step, bits.length < 2 ? 0 : scrapped.getOrDefault(bits[0] + "/" + bits[1], 0L));
        for (long seq : ofStep.getOrDefault(step, new TreeSet<>())) {
            Happened h = happenings.get(seq);
            if (h != null && !withdrawn.contains(seq)) {
                built.add(h);
            }
        }
        steps.put(step, built.build());
        stepConflicts.put(step, built.conflicts());
        return Touched.step(step);
    }

    private Touched publish(Entry entry, Value.Fields f) {
        List<PublishedPlan.Step> planned = new ArrayList<>();
        for (Value item : f.items("steps")) {
            if (item instanceof Value.Fields s) {
                planned.add(new PublishedPlan.Step(
                        s.text("step"),
                        time(s.text("start"), entry.at()),
                        time(s.text("hands-end"), entry.at()),
                        time(s.text("end"), entry.at()),
                        s.texts("people"),
                        s.texts("places")));
            }
        }
        published = Optional.of(new PublishedPlan(
                entry.seq(), entry.taken(), entry.by(), f.text("definition"), f.text("hash"), planned));
        return Touched.NOTHING;
    }

    /** A time that was said; where it cannot be read, the time at which the entry was taken. */
    private static Instant time(String said, String taken) {
        try {
            return Instant.parse(said.isEmpty() ? taken : said);
        } catch (DateTimeException e) {
            return Instant.parse(taken);
        }
    }

    /**
     * What of the state an entry touches.
     *
     * @param what the sort of thing
     * @param scope the project of a file, empty for the shop's
     * @param key path, step, or sequence number
     */
    public record Touched(What what, String scope, String key) {
        /** Nothing that is kept by key. */
        static final Touched NOTHING = new Touched(What.NOTHING, "", "");

        static Touched file(String scope, String path) {
            return new Touched(What.FILE, scope, path);
        }

        static Touched step(String step) {
            return new Touched(What.STEP, "", step);
        }

        static Touched reading(long seq) {
            return new Touched(What.READING, "", Long.toString(seq));
        }

        static Touched conflict(long seq) {
            return new Touched(What.CONFLICT, "", Long.toString(seq));
        }

        /** Sorts of things. */
        public enum What {
            NOTHING,
            FILE,
            STEP,
            /** All steps whose ids begin with the key. */
            STEPS,
            READING,
            CONFLICT
        }
    }
}
