package fayline.flow.project.design;

import fayline.basis.units.Mass;
import fayline.flow.project.catalog.Keyed;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A node of the tree above the parts.
 *
 * @param id the id
 * @param name the name
 * @param in the assembly it belongs to, where there is one
 * @param target its mass budget
 * @param budget what it may cost, in the project's currency
 */
public record Assembly(String id, String name, Optional<String> in, Optional<Mass> target, OptionalDouble budget)
        implements Keyed {}
