package fayline.flow.project.recipe;

import fayline.flow.project.catalog.Keyed;
import java.util.List;

/**
 * A way of making, as a parametric list of steps.
 *
 * @param id the id
 * @param name the name
 * @param about when to use it
 * @param parameters what a part must say when it uses the recipe
 * @param steps the steps in order
 * @param holds what stays occupied over several steps
 * @param source where the recipe comes from
 */
public record Recipe(
        String id,
        String name,
        String about,
        List<Parameter> parameters,
        List<RecipeStep> steps,
        List<Hold> holds,
        String source)
        implements Keyed {
    /** Copies the lists. */
    public Recipe {
        parameters = List.copyOf(parameters);
        steps = List.copyOf(steps);
        holds = List.copyOf(holds);
    }

    /**
     * A parameter.
     *
     * @param id its name; fields of steps refer to it as {@code with.NAME}
     * @param about what it is
     * @param usual the value taken where a part says nothing; empty where the part must say it
     */
    public record Parameter(String id, String about, String usual) implements Keyed {}

    /**
     * Something that stays occupied from the start of one step to the end of another.
     *
     * @param what which kind of place
     * @param from key of the first step
     * @param to key of the last step
     * @param count how many; more than one only for ports, as a number or {@code with.NAME}
     */
    public record Hold(Place what, String from, String to, String count) {}

    /** Kinds of places. */
    public enum Place {
        /** The part's mould. */
        MOULD,
        /** A stand that allows the work's air. */
        STAND,
        /** A vacuum port. */
        PORT
    }
}
