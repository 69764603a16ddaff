package fayline.flow.project.local;

import fayline.basis.units.Fraction;
import fayline.flow.project.catalog.Keyed;
import fayline.flow.project.recipe.StepKind;
import java.util.List;

/**
 * One line of the list by which the builder's share is counted.
 *
 * @param id its id
 * @param name what it is called in the list
 * @param of assemblies, parts and joints whose steps belong to it
 * @param kinds sorts of steps that belong to it; empty for all
 * @param points what it counts in the list, above nought
 * @param bought share of it that was bought finished
 */
public record LocalTask(String id, String name, List<String> of, List<StepKind> kinds, double points, Fraction bought)
        implements Keyed {
    /** Copies the lists. */
    public LocalTask {
        of = List.copyOf(of);
        kinds = List.copyOf(kinds);
    }

    /** Whether steps of a sort belong to it. */
    public boolean takes(StepKind kind) {
        return kinds.isEmpty() || kinds.contains(kind);
    }
}
