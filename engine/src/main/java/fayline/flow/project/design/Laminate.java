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
 * @param loads what it must bear, where an engineer entered it
 */
public record Laminate(
        String id, String name, String system, Fraction fibreMassFraction, List<Ply> plies, List<LaminateLoad> loads)
        implements Keyed {
    /** Copies the lists. */
    public Laminate {
        plies = List.copyOf(plies);
        loads = List.copyOf(loads);
    }

    /** A laminate of which nobody has said what it must bear. */
    public Laminate(String id, String name, String system, Fraction fibreMassFraction, List<Ply> plies) {
        this(id, name, system, fibreMassFraction, plies, List.of());
    }
}
