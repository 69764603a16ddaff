package fayline.app.usecase.shop;

import fayline.basis.finding.InputProblem;
import fayline.flow.project.Definition;
import fayline.flow.project.piece.Divided;
import fayline.flow.project.piece.ReworkSteps;
import fayline.flow.project.shop.LeadWish;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryFiles;
import fayline.flow.record.EntryLog;
import fayline.flow.record.EntryLog.Answer;
import fayline.flow.record.KeptFile;
import fayline.flow.record.MemoryFiles;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordFold;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.payload.Value;
import fayline.flow.result.stock.Orders;
import fayline.store.file.DefinitionFolder;
import fayline.store.file.DefinitionRead;
import fayline.store.file.DefinitionReader;
import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The record with what it amounts to now, kept up to date as entries come. Safe for several threads: whoever decides on the
 * state and then appends does both inside {@link #deciding}.
 */
public final class ShopRecord {
    private final EntryLog log;
    private final EntryFiles files;
    private final Clock clock;
    private final Judge judge;
    private final Map<String, Version> definitions = new HashMap<>();
    private final Map<String, Known> known = new HashMap<>();
    private final Map<String, List<String>> plannedSets = new HashMap<>();
    private final RecordFold fold = new RecordFold();
    private RecordState state = RecordState.EMPTY;
    private String origin = "";

    /**
     * A record without files, seen at a clock.
     *
     * @param log the entries
     * @param clock the shop's clock
     */
    public ShopRecord(EntryLog log, Clock clock) {
        this(log, new MemoryFiles(), clock);
    }

    /**
     * A record seen at a clock.
     *
     * @param log the entries
     * @param files the files that entries name
     * @param clock the shop's clock
     */
    public ShopRecord(EntryLog log, EntryFiles files, Clock clock) {
        this(log, files, clock, Judge.NONE);
    }

    private ShopRecord(EntryLog log, EntryFiles files, Clock clock, Judge judge) {
        this.log = log;
        this.files = files;
        this.clock = clock;
        this.judge = judge;
    }

    /** The same record at another clock. */
    public ShopRecord at(Clock other) {
        return new ShopRecord(log, files, other, judge);
    }

    /** The same record, with every entry judged before it is made. */
    public ShopRecord judgedBy(Judge one) {
        return new ShopRecord(log, files, clock, one);
    }

    /** Whether every entry is judged by who makes it; otherwise names are picked and nobody's role is known. */
    public boolean isJudged() {
        return judge != Judge.NONE;
    }

    /** The files that entries name. */
    public EntryFiles files() {
        return files;
    }

    /** The shop's clock. */
    public Clock clock() {
        return clock;
    }

    /** The moment now, to the second as entries are stamped. */
    public Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.SECONDS);
    }

    /** The present minute, as what happens is noted. */
    public Instant minute() {
        return clock.instant().truncatedTo(ChronoUnit.MINUTES);
    }

    /** What the entries amount to now. */
    public synchronized RecordState state() {
        if (log.head().seq() != state.head().seq()) {
            for (Entry e : log.read(state.head().seq() + 1)) {
                origin = origin.isEmpty() ? e.hash() : origin;
                fold.take(e);
                known.put(e.client(), new Known(e.seq(), happened(e)));
                e.erases()
                        .ifPresent(erased -> known.replaceAll((client, k) -> k.seq() == erased
                                ? new Known(erased, happened(e.fields().inner("kept"), k.happened()))
                                : k));
            }
            state = fold.state();
        }
        return state;
    }

    private static Instant happened(Entry e) {
        return happened(e.fields(), e.taken());
    }

    private static Instant happened(Value.Fields f, Instant otherwise) {
        try {
            return Instant.parse(f.text("at"));
        } catch (DateTimeParseException e) {
            return otherwise;
        }
    }

    /** What tells this record from any other: the hash of its first entry; empty while there is none. */
    public synchronized String origin() {
        state();
        return origin;
    }

    /** Whether an entry stands under an id. */
    public synchronized boolean knows(String client) {
        state();
        return known.containsKey(client);
    }

    /** The place of the entry that stands under an id. */
    public synchronized Optional<Long> seqOf(String client) {
        state();
        return Optional.ofNullable(known.get(client)).map(Known::seq);
    }

    private record Known(long seq, Instant happened) {}

    /**
     * The time at which something happens for which no time is given: the present minute, or what was taken for it when the
     * same thing was sent before, so that it says the same again.
     */
    public synchronized Instant timeOf(Sent sent) {
        state();
        Known before = known.get(sent.client());
        return before == null ? minute() : before.happened();
    }

    /** The entries from one on. */
    public List<Entry> entries(long fromSeq) {
        return log.read(fromSeq);
    }

    /** The entry at a place; empty where there is none. */
    public Optional<Entry> entry(long seq) {
        return log.entry(seq);
    }

    /** A decision that reads the state and may append. */
    @FunctionalInterface
    public interface Decision<T> {
        /** Decides. */
        T decide();
    }

    /** Keeps others from appending while something is decided. */
    public synchronized <T> T deciding(Decision<T> decision) {
        return decision.decide();
    }

    /** Adds one entry; where it is not known what became of it, it is sent once more under its id. */
    public synchronized Outcome append(NewEntry fresh) {
        Optional<String> refused = judge.refuses(fresh);
        if (refused.isPresent()) {
            return Outcome.refused(refused.get());
        }
        Answer answer = log.append(fresh);
        if (answer instanceof Answer.Unknown) {
            answer = log.append(fresh);
        }
        return outcome(answer);
    }

    /** Adds entries in one transaction; where one may not be made, none is. */
    public synchronized List<Outcome> append(List<NewEntry> fresh) {
        for (NewEntry one : fresh) {
            Optional<String> refused = judge.refuses(one);
            if (refused.isPresent()) {
                return fresh.stream().map(f -> Outcome.refused(refused.get())).toList();
            }
        }
        List<Answer> answers = log.append(fresh);
        if (answers.stream().anyMatch(Answer.Unknown.class::isInstance)) {
            answers = log.append(fresh);
        }
        return answers.stream().map(ShopRecord::outcome).toList();
    }

    private static Outcome outcome(Answer answer) {
        if (answer instanceof Answer.Taken t) {
            return new Outcome(
                    Outcome.Kind.RECORDED, t.seq(), "Recorded as entry " + t.seq() + ".", List.of(), List.of());
        }
        if (answer instanceof Answer.AlreadyThere t) {
            return Outcome.already(t.seq());
        }
        if (answer instanceof Answer.Refused r) {
            return Outcome.refused(r.reason());
        }
        if (answer instanceof Answer.Unknown u) {
            return new Outcome(Outcome.Kind.UNKNOWN, 0, u.reason(), List.of(), List.of());
        }
        throw new IllegalStateException("no outcome for " + answer.getClass());
    }

    /** The files of a project now, the shop's included. */
    public DefinitionFolder folder(String project) {
        return folder(state().files(project));
    }

    private static DefinitionFolder folder(SortedMap<String, KeptFile> files) {
        SortedMap<String, byte[]> bytes = new TreeMap<>();
        files.forEach((path, file) -> bytes.put(path, file.bytes()));
        return DefinitionFolder.ofBytes(bytes);
    }

    /** The definition of a project now, with its pieces in their sets, where it can be read. */
    public Optional<Definition> definition(String project) {
        return version(project).read().definition().map(this::ordered).map(d -> worked(divided(d, List.of())));
    }

    /**
     * The same where a set is to begin that may be otherwise in the plan.
     *
     * @param project the project
     * @param made the part or joint that somebody has in hand
     */
    public Optional<Definition> definitionWith(String project, String made) {
        return version(project).read().definition().map(this::ordered).map(d -> worked(divided(d, List.of(made))));
    }

    /** With the work that puts deviations right. */
    private Definition worked(Definition d) {
        return ReworkSteps.on(d, Troubles.rework(state(), d.facts().id(), now()));
    }

    /** With what the record says is on order. */
    private Definition ordered(Definition d) {
        return Orders.over(d, state().stock().orders(), now());
    }

    /** In the sets that have begun or that the lead has decided about, then those in hand, then those planned. */
    private Definition divided(Definition d, List<String> inHand) {
        if (!Divided.isWhole(d)) {
            return d;
        }
        String project = d.facts().id();
        Stream<String> begun = state().steps(project).values().stream()
                .filter(s -> s.started().isPresent() || s.finished().isPresent())
                .map(StepRecord::step);
        Stream<String> wished = d.shop().wishes().stream().map(LeadWish::step).filter(s -> s.startsWith(project + "/"));
        List<String> settled = Stream.concat(begun, wished)
                .map(s -> s.split("/", -1)[1])
                .distinct()
                .toList();
        Set<String> wanted = new LinkedHashSet<>(inHand);
        wanted.addAll(plannedSets(project));
        return Divided.of(d, settled, wanted);
    }

    /** The sets in which pieces of a project are planned, as ids of what is made. */
    public synchronized List<String> plannedSets(String project) {
        return List.copyOf(plannedSets.getOrDefault(project, List.of()));
    }

    /** Notes the sets of the plan that is followed. */
    public synchronized void planSets(String project, List<String> made) {
        plannedSets.put(project, List.copyOf(made));
    }

    /**
     * The definition of a project now.
     *
     * @throws UnreadableDefinitionException if it cannot be read
     */
    public Definition readDefinition(String project) {
        Version version = version(project);
        return version.read()
                .definition()
                .map(this::ordered)
                .map(d -> worked(divided(d, List.of())))
                .orElseThrow(() -> new UnreadableDefinitionException(
                        "The definition of " + project, version.read().problems()));
    }

    /** What is to be said about the definition of a project now. */
    public List<InputProblem> problems(String project) {
        return version(project).read().problems();
    }

    private synchronized Version version(String project) {
        SortedMap<String, KeptFile> files = state().files(project);
        // Between two saves files can only be removed, so both numbers together name one state of the files.
        String key = files.size() + " "
                + files.values().stream().mapToLong(KeptFile::seq).max().orElse(0);
        Version last = definitions.get(project);
        if (last == null || !last.key().equals(key)) {
            last = new Version(key, DefinitionReader.read(folder(files)));
            definitions.put(project, last);
        }
        return last;
    }

    private record Version(String key, DefinitionRead read) {}

    /** The definitions of all projects that can be read as they were read, pieces undivided, the first project first. */
    public List<Definition> wholeDefinitions() {
        return state().projects().stream()
                .flatMap(p -> version(p).read().definition().stream())
                .map(this::ordered)
                .toList();
    }

    /** The definitions of all projects that can be read, the first project first. */
    public List<Definition> definitions() {
        List<Definition> all = new ArrayList<>();
        state().projects().forEach(p -> definition(p).ifPresent(all::add));
        return List.copyOf(all);
    }
}
