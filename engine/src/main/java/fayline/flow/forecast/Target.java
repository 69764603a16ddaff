package fayline.flow.forecast;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;

/**
 * Something whose end is forecast: an assembly, or a dated goal.
 *
 * @param id its id
 * @param name its name
 * @param made the parts and joints that must be done, each as {@code project/made}
 * @param due the day by which, where one is set
 */
public record Target(String id, String name, Set<String> made, Optional<LocalDate> due) {
    /** Copies the set. */
    public Target {
        made = Set.copyOf(made);
    }
}
