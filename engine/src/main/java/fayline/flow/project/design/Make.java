package fayline.flow.project.design;

import fayline.flow.project.recipe.RecipeStep;
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
 * @param extra steps beyond the recipe: work that puts right what came out other than drawn
 */
public record Make(
        String recipe,
        Map<String, String> with,
        List<String> after,
        Optional<LocalDate> notBefore,
        List<RecipeStep> extra) {
    /** Copies the collections. */
    public Make {
        with = Map.copyOf(with);
        after = List.copyOf(after);
        extra = List.copyOf(extra);
    }

    /** A recipe as it is. */
    public Make(String recipe, Map<String, String> with, List<String> after, Optional<LocalDate> notBefore) {
        this(recipe, with, after, notBefore, List.of());
    }

    /** The same with steps beyond the recipe. */
    public Make withExtra(List<RecipeStep> more) {
        return new Make(recipe, with, after, notBefore, more);
    }
}
