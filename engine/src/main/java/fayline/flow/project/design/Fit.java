package fayline.flow.project.design;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.project.catalog.Keyed;
import java.util.List;

/**
 * An edge of a part against its neighbours.
 *
 * @param id the id
 * @param name the name
 * @param part the part that is fitted
 * @param against its neighbours
 * @param gap nominal gap
 * @param gapTolerance allowed deviation of the gap either way
 * @param flush nominal flush, positive where the part stands proud
 * @param flushTolerance allowed deviation of the flush either way
 * @param stations marked places along the edge
 */
public record Fit(
        String id,
        String name,
        String part,
        List<String> against,
        Entered<Length> gap,
        Entered<Length> gapTolerance,
        Entered<Length> flush,
        Entered<Length> flushTolerance,
        List<Station> stations)
        implements Keyed {
    /** Copies the lists. */
    public Fit {
        against = List.copyOf(against);
        stations = List.copyOf(stations);
    }

    /**
     * A marked place.
     *
     * @param id its mark
     * @param where where it is, in words
     */
    public record Station(String id, String where) implements Keyed {}
}
