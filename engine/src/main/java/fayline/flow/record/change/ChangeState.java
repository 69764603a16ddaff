package fayline.flow.record.change;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * All changes, by the entry that raised them.
 *
 * @param changes changes by entry
 */
public record ChangeState(SortedMap<Long, Change> changes) {
    /** Copies the map. */
    public ChangeState {
        changes = Collections.unmodifiableSortedMap(new TreeMap<>(changes));
    }

    /** A change by its entry. */
    public Optional<Change> find(long seq) {
        return Optional.ofNullable(changes.get(seq));
    }

    /** A change of a project by its name; of two of one name the first. */
    public Optional<Change> find(String project, String name) {
        return ofProject(project).stream().filter(c -> c.name().equals(name)).findFirst();
    }

    /** Those of one project, oldest first. */
    public List<Change> ofProject(String project) {
        return changes.values().stream()
                .filter(c -> c.project().equals(project))
                .toList();
    }

    /** The next free name in a project: {@code C-} and a number beyond every one in use, of at least two digits. */
    public String nextName(String project) {
        int last = ofProject(project).stream()
                .map(Change::name)
                .filter(n -> n.matches("C-\\d{1,6}"))
                .mapToInt(n -> Integer.parseInt(n.substring(2)))
                .max()
                .orElse(0);
        return "C-" + (last < 9 ? "0" : "") + (last + 1);
    }
}
