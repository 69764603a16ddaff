package fayline.method.cure.reaction;

import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.method.cure.GlassTransition;
import fayline.method.cure.Kinetics;
import fayline.method.cure.TemperatureHistory;
import java.util.List;
import java.util.Optional;

/**
 * The question whether a part may be heated as planned without softening, and what must be supported or unloaded before.
 *
 * @param glass the constants of the resin
 * @param kinetics published rate constants, where they exist; the glass transition then rises during the heat
 * @param measured a measured glass transition of the part, which goes before any computed one
 * @param past temperature since mixing at the coldest probe, which has cured least
 * @param plan temperature of the planned heat at the hottest probe, from its start
 * @param margin least distance by which the glass transition must stay above the part
 * @param loads what loads the part while it is hot
 */
public record HeatPlan(
        GlassTransition glass,
        Optional<Kinetics> kinetics,
        Optional<Temperature> measured,
        TemperatureHistory past,
        TemperatureHistory plan,
        TemperatureDifference margin,
        List<Load> loads) {
    /** Copies the list. */
    public HeatPlan {
        loads = List.copyOf(loads);
    }

    /**
     * Something that loads the part.
     *
     * @param name what it is, in the builder's words
     * @param kind its kind
     */
    public record Load(String name, Kind kind) {}

    /** Kinds of load that deform a soft part. */
    public enum Kind {
        /** A gas or other strut that pushes. */
        STRUT,
        /** A spring or preloaded latch. */
        SPRING,
        /** A compressed seal. */
        SEAL,
        /** The part's own weight between its supports. */
        OWN_WEIGHT,
        /** A clamp, strap or anything else. */
        OTHER
    }
}
