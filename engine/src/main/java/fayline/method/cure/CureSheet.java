package fayline.method.cure;

import fayline.basis.units.MolarEnergy;
import java.util.List;
import java.util.Optional;

/**
 * What is known of how a system cures.
 *
 * @param points data-sheet points; at least one
 * @param activationEnergy the activation energy, where the maker states it; otherwise it is fitted where a state has points
 *     at two temperatures, else the rule of a factor of two per 10 K is assumed
 * @param kinetics published rate constants, where they exist
 * @param glass the glass transition against degree of cure, where constants exist
 */
public record CureSheet(
        List<SheetPoint> points,
        Optional<MolarEnergy> activationEnergy,
        Optional<Kinetics> kinetics,
        Optional<GlassTransition> glass) {
    /** Copies the list. */
    public CureSheet {
        points = List.copyOf(points);
    }
}
