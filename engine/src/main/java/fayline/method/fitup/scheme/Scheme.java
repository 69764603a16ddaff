package fayline.method.fitup.scheme;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * A way to locate the part: any locators together.
 *
 * @param name what it is called
 * @param locators what locates
 * @param creepMm how far a stop may give while the adhesive cures, either way, where that is to be counted
 */
public record Scheme(String name, List<Locator> locators, OptionalDouble creepMm) {
    /** Copies the list. */
    public Scheme {
        locators = List.copyOf(locators);
    }

    /** A scheme whose stops hold still while the adhesive cures. */
    public static Scheme of(String name, List<Locator> locators) {
        return new Scheme(name, locators, OptionalDouble.empty());
    }

    /** The same with every stop made another. */
    public Scheme withStops(UnaryOperator<Stop> other) {
        return new Scheme(name, locators.stream().map(l -> l.withStops(other)).toList(), creepMm);
    }
}
