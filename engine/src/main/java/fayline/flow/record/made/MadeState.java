package fayline.flow.record.made;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What went into every step.
 *
 * @param steps steps into which anything went, by id
 */
public record MadeState(SortedMap<String, StepMade> steps) {
    /** Nothing is told. */
    public static final MadeState NONE = new MadeState(new TreeMap<>());

    /** Copies the map. */
    public MadeState {
        steps = Collections.unmodifiableSortedMap(new TreeMap<>(steps));
    }

    /** What went into a step; nothing where nobody told of it. */
    public StepMade step(String id) {
        StepMade known = steps.get(id);
        return known == null ? StepMade.none(id) : known;
    }

    /** The steps of one project, by id. */
    public SortedMap<String, StepMade> ofProject(String project) {
        return steps.subMap(project + "/", project + "0");
    }
}
