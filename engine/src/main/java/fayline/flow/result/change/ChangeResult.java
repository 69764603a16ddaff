package fayline.flow.result.change;

import java.util.List;

/**
 * All that a change touches.
 *
 * @param reached what it touches, by group and in the definition's order within one
 */
public record ChangeResult(List<Reached> reached) {
    /** Copies the list. */
    public ChangeResult {
        reached = List.copyOf(reached);
    }

    /** What is of one group. */
    public List<Reached> of(Reached.Group group) {
        return reached.stream().filter(r -> r.group() == group).toList();
    }

    /** The parts and joints that are made otherwise, by id. */
    public List<String> made() {
        return of(Reached.Group.MADE).stream().map(Reached::id).toList();
    }

    /** What must be settled before the change can be closed. */
    public List<String> items() {
        return reached.stream()
                .filter(r -> r.group().isSettled())
                .map(Reached::item)
                .toList();
    }

    /** How many of a group stand so. */
    public long count(Reached.Group group, Reached.Standing standing) {
        return of(group).stream().filter(r -> r.standing() == standing).count();
    }
}
