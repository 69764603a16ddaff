package fayline.method.cure.reaction;

import fayline.basis.units.Temperature;
import fayline.method.cure.GlassTransition;
import java.util.List;

/**
 * Questions on the glass transition of a resin.
 *
 * @param glass the constants
 * @param degrees degrees of cure whose glass transition is asked for
 * @param transitions glass transitions whose degree of cure is asked for
 * @param cures cure temperatures for which the points of vitrification and stall are asked for
 */
public record GlassState(
        GlassTransition glass, List<Double> degrees, List<Temperature> transitions, List<Temperature> cures) {
    /** Copies the lists. */
    public GlassState {
        degrees = List.copyOf(degrees);
        transitions = List.copyOf(transitions);
        cures = List.copyOf(cures);
    }
}
