package fayline.flow.result.quantity;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Area;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;

/**
 * What goes into one part.
 *
 * @param part the part
 * @param area sum of its zones
 * @param edge the edge on which tape, trim and pleats are counted: the size {@code edge} where the part states it, else the sum
 *     of its zones' edges
 * @param zones each zone
 * @param plies every ply and core layer in the order of laying
 * @param needs what is drawn from the stores for it, over all its steps, one entry for each thing
 * @param dry mass of cloth and core in the part
 * @param asMade computed mass as made: cloth, core and all mixes that stay in the part
 * @param target the mass it should have
 * @param weighed the mass it has, where it was weighed
 * @param cost cost of everything drawn; what has no price is named in the findings
 * @param personMinutes hands-on time over all its steps at the least crew
 * @param figures how the amounts came about
 * @param findings what the amounts say about the work
 */
public record PartResult(
        String part,
        Area area,
        Length edge,
        List<ZoneResult> zones,
        List<PlyCut> plies,
        List<Need> needs,
        Mass dry,
        Mass asMade,
        Optional<Entered<Mass>> target,
        Optional<Entered<Mass>> weighed,
        double cost,
        int personMinutes,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public PartResult {
        zones = List.copyOf(zones);
        plies = List.copyOf(plies);
        needs = List.copyOf(needs);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /** What the mass to reckon with rests on. */
    public enum MassBasis {
        /** It was weighed. */
        WEIGHED,
        /** It follows from zones and plies. */
        COMPUTED,
        /** Nothing is known but what it should be: a budget, not a figure of the part. */
        BUDGETED
    }

    /** What {@link #best()} rests on. */
    public MassBasis basis() {
        if (weighed.isPresent()) {
            return MassBasis.WEIGHED;
        }
        return asMade.kilograms() > 0 ? MassBasis.COMPUTED : MassBasis.BUDGETED;
    }

    /** The mass to reckon with: weighed where it was weighed, else as computed, else (nothing computed) the target. */
    public Mass best() {
        return weighed.map(Entered::value)
                .orElseGet(() -> asMade.kilograms() > 0
                        ? asMade
                        : target.map(Entered::value).orElse(asMade));
    }
}
