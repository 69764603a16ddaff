package fayline.flow.record;

import fayline.flow.record.erasure.ErasureFold;
import fayline.flow.record.payload.Happened;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds starts, finishes and notes into what is recorded of each step. */
final class StepFold {
    private final ErasureFold erasures;
    private final SortedMap<String, SortedMap<Long, Happened>> ofStep = new TreeMap<>();
    private final SortedMap<String, StepRecord> steps = new TreeMap<>();
    private final SortedMap<String, List<Conflict>> conflicts = new TreeMap<>();
    /** Parts and joints that were scrapped, with the entry from which on they are made anew. */
    private final Map<String, Long> scrapped = new HashMap<>();

    StepFold(ErasureFold erasures) {
        this.erasures = erasures;
    }

    SortedMap<String, StepRecord> steps() {
        return steps;
    }

    /** What is recorded of a step. */
    StepRecord step(String id) {
        return steps.getOrDefault(id, StepRecord.none(id));
    }

    /** What is recorded of the steps whose ids begin so. */
    List<StepRecord> startingWith(String prefix) {
        return steps.tailMap(prefix).values().stream()
                .takeWhile(s -> s.step().startsWith(prefix))
                .toList();
    }

    List<Conflict> conflicts(String step) {
        return conflicts.getOrDefault(step, List.of());
    }

    List<Conflict> conflicts() {
        List<Conflict> all = new ArrayList<>();
        conflicts.values().forEach(all::addAll);
        return all;
    }

    Touched hold(Happened h) {
        ofStep.computeIfAbsent(step(h), s -> new TreeMap<>()).put(h.seq(), h);
        return refresh(step(h));
    }

    Touched drop(Happened h) {
        ofStep.getOrDefault(step(h), new TreeMap<>()).remove(h.seq());
        return refresh(step(h));
    }

    private static String step(Happened h) {
        return h.fields().text("step");
    }

    /** The entry from which on something made is made anew; 0 where it was not scrapped. */
    long scrappedFrom(String made) {
        return scrapped.getOrDefault(made, 0L);
    }

    /** Something made was scrapped or no longer is: its steps are what they are since then. */
    Touched begin(String made, long from) {
        scrapped.put(made, from);
        String prefix = made + "/";
        for (String step : List.copyOf(ofStep.tailMap(prefix).keySet())) {
            if (step.startsWith(prefix)) {
                refresh(step);
            }
        }
        return new Touched(Touched.What.STEPS, "", prefix);
    }

    private Touched refresh(String step) {
        String[] bits = step.split("/", -1);
        StepBuilder built =
                new StepBuilder(step, bits.length < 2 ? 0 : scrappedFrom(bits[0] + "/" + bits[1]), erasures::of);
        ofStep.getOrDefault(step, new TreeMap<>()).values().forEach(built::add);
        steps.put(step, built.build());
        conflicts.put(step, built.conflicts());
        return Touched.step(step);
    }
}
