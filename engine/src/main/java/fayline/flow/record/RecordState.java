package fayline.flow.record;

import fayline.flow.record.change.ChangeState;
import fayline.flow.record.erasure.ErasureState;
import fayline.flow.record.inspect.InspectState;
import fayline.flow.record.made.MadeState;
import fayline.flow.record.stock.StockState;
import fayline.flow.record.trouble.TroubleState;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the entries amount to: a pure function of them, so that it can be rebuilt at any time.
 *
 * @param head the last entry that is in it
 * @param work the last entry that bears on the work; entries of people alone bear on none
 * @param projects projects in the order in which they joined
 * @param shopFiles the shop's definition files by path
 * @param projectFiles each project's own definition files by path
 * @param steps what is recorded of each step, by id
 * @param readings readings in the order of their entries
 * @param mended what readings were before they were corrected or withdrawn, in the order of the corrections
 * @param made what went into steps: lots, mixes, plies
 * @param trouble what came out other than drawn
 * @param stock what moved the stores beside the work
 * @param inspect visits and what they found
 * @param erasures personal text that was taken out
 * @param change alterations of the design
 * @param published the plan published last
 * @param conflicts entries without effect, in order
 * @param unknown number of entries whose kind this version does not know
 */
public record RecordState(
        Head head,
        long work,
        List<String> projects,
        SortedMap<String, KeptFile> shopFiles,
        SortedMap<String, SortedMap<String, KeptFile>> projectFiles,
        SortedMap<String, StepRecord> steps,
        List<TakenReading> readings,
        List<MendedReading> mended,
        MadeState made,
        TroubleState trouble,
        StockState stock,
        InspectState inspect,
        ErasureState erasures,
        ChangeState change,
        Optional<PublishedPlan> published,
        List<Conflict> conflicts,
        long unknown) {
    /** The state of an empty record. */
    public static final RecordState EMPTY = new RecordFold().state();

    /** Copies the collections. */
    public RecordState {
        projects = List.copyOf(projects);
        shopFiles = Collections.unmodifiableSortedMap(new TreeMap<>(shopFiles));
        SortedMap<String, SortedMap<String, KeptFile>> files = new TreeMap<>();
        projectFiles.forEach((p, f) -> files.put(p, Collections.unmodifiableSortedMap(new TreeMap<>(f))));
        projectFiles = Collections.unmodifiableSortedMap(files);
        steps = Collections.unmodifiableSortedMap(new TreeMap<>(steps));
        readings = List.copyOf(readings);
        mended = List.copyOf(mended);
        conflicts = List.copyOf(conflicts);
    }

    /** The state that entries amount to. */
    public static RecordState of(Iterable<Entry> entries) {
        RecordFold fold = new RecordFold();
        entries.forEach(fold::take);
        return fold.state();
    }

    /** What is recorded of a step; nothing where it was never touched. */
    public StepRecord step(String id) {
        StepRecord known = steps.get(id);
        return known == null ? StepRecord.none(id) : known;
    }

    /** The definition files of a project: the shop's and its own, by path. */
    public SortedMap<String, KeptFile> files(String project) {
        SortedMap<String, KeptFile> files = new TreeMap<>(shopFiles);
        files.putAll(projectFiles.getOrDefault(project, Collections.emptySortedMap()));
        return files;
    }

    /** The readings of one project and of the shop. */
    public List<TakenReading> readings(String project) {
        List<TakenReading> mine = new ArrayList<>();
        for (TakenReading r : readings) {
            if (r.project().isEmpty() || r.project().equals(project)) {
                mine.add(r);
            }
        }
        return List.copyOf(mine);
    }

    /** A reading by its entry as it holds now, or as it stood before it was withdrawn. */
    public Optional<TakenReading> reading(long seq) {
        Optional<TakenReading> now =
                readings.stream().filter(r -> r.seq() == seq).findFirst();
        return now.isPresent()
                ? now
                : mended.stream()
                        .map(MendedReading::before)
                        .filter(r -> r.seq() == seq)
                        .reduce((a, b) -> b);
    }

    /** What is recorded of each step of one project, by id. */
    public Map<String, StepRecord> steps(String project) {
        return steps.subMap(project + "/", project + "0");
    }
}
