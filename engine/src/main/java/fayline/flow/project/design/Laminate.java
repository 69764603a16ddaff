package fayline.flow.project.design;

import fayline.basis.units.Fraction;
import fayline.flow.project.catalog.Keyed;
import java.util.List;

/**
 * Ordered plies, the first against the mould.
 *
 * @param id the id
 * @param name the name
 * @param system the resin
 * @param fibreMassFraction mass of fibre over mass of fibre and resin, core apart
 * @param plies the plies, mould face first
 */
public record Laminate(String id, String name, String system, Fraction fibreMassFraction, List<Ply> plies)
        implements Keyed {
    /** Copies the list. */
    public Laminate {
        plies = List.copyOf(plies);
    }
}
