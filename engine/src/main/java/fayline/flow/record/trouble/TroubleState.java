package fayline.flow.record.trouble;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All deviations, by the entry that raised them.
 *
 * @param deviations deviations by entry
 */
public record TroubleState(SortedMap<Long, Deviation> deviations) {
    /** Copies the map. */
    public TroubleState {
        deviations = Collections.unmodifiableSortedMap(new TreeMap<>(deviations));
    }

    /** A deviation by its entry. */
    public Optional<Deviation> find(long seq) {
        return Optional.ofNullable(deviations.get(seq));
    }

    /** Those on which what depends on them must wait, oldest first. */
    public List<Deviation> open() {
        return deviations.values().stream().filter(Deviation::isOpen).toList();
    }

    /** Those of one project, oldest first. */
    public List<Deviation> ofProject(String project) {
        return deviations.values().stream()
                .filter(d -> d.project().equals(project))
                .toList();
    }

    /** Those of one part or joint, {@code project/made}, oldest first. */
    public List<Deviation> ofMade(String made) {
        return deviations.values().stream().filter(d -> d.made().equals(made)).toList();
    }
}
