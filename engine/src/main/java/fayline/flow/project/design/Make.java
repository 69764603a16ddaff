package fayline.flow.project.design;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One recipe applied to a part or joint.
 *
 * @param recipe the recipe
 * @param with the recipe's parameters as written, checked against the recipe
 * @param after parts, joints or steps ({@code part} or {@code part/step}) that must be done first
 * @param notBefore the earliest day, where one is set
 */
public record Make(String recipe, Map<String, String> with, List<String> after, Optional<LocalDate> notBefore) {
    /** Copies the collections. */
    public Make {
        with = Map.copyOf(with);
        after = List.copyOf(after);
    }
}
