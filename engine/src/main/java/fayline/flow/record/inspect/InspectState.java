package fayline.flow.record.inspect;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All visits and what they found.
 *
 * @param visits visits by entry
 * @param faults what was found, by entry
 */
public record InspectState(SortedMap<Long, HeldVisit> visits, SortedMap<Long, FoundFault> faults) {
    /** Copies the maps. */
    public InspectState {
        visits = Collections.unmodifiableSortedMap(new TreeMap<>(visits));
        faults = Collections.unmodifiableSortedMap(new TreeMap<>(faults));
    }

    /** A visit by its entry. */
    public Optional<HeldVisit> visit(long seq) {
        return Optional.ofNullable(visits.get(seq));
    }

    /** Something found, by its entry. */
    public Optional<FoundFault> fault(long seq) {
        return Optional.ofNullable(faults.get(seq));
    }

    /** The visits of one project, oldest first. */
    public List<HeldVisit> visitsOf(String project) {
        return visits.values().stream().filter(v -> v.project().equals(project)).toList();
    }

    /** What was found in one project, oldest first. */
    public List<FoundFault> faultsOf(String project) {
        return faults.values().stream().filter(f -> f.project().equals(project)).toList();
    }

    /** What one visit found, in the order of numbers. */
    public List<FoundFault> of(HeldVisit visit) {
        return faults.values().stream().filter(f -> f.visit() == visit.seq()).toList();
    }
}
