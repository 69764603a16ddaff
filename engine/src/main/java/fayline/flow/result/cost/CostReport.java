package fayline.flow.result.cost;

import java.util.List;
import java.util.Optional;

/**
 * Costs of a project.
 *
 * @param whole the project, with what belongs to no part
 * @param assemblies assemblies with all that is in them, in the order of the definition
 * @param made parts and joints, in the order of the definition
 * @param rework of it, steps that put deviations right
 * @param hourly what an hour to come is reckoned at: the mean of those of the crew who have a rate; 0 where nobody has
 * @param unpriced materials and systems without a price that are drawn, each once
 * @param orders orders without a price, by name
 */
public record CostReport(
        CostRow whole,
        List<CostRow> assemblies,
        List<CostRow> made,
        CostRow rework,
        double hourly,
        List<String> unpriced,
        List<String> orders) {
    /** Copies the lists. */
    public CostReport {
        assemblies = List.copyOf(assemblies);
        made = List.copyOf(made);
        unpriced = List.copyOf(unpriced);
        orders = List.copyOf(orders);
    }

    /** A part, joint or assembly. */
    public Optional<CostRow> row(String id) {
        return java.util.stream.Stream.concat(made.stream(), assemblies.stream())
                .filter(r -> r.id().equals(id))
                .findFirst();
    }
}
