package fayline.method.fitup.chain;

import fayline.basis.finding.Finding;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapSpread;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.Missing;
import java.util.List;
import java.util.Optional;

/**
 * What a chain of bonds does to its gaps.
 *
 * @param spread expected gaps and every cause; empty where an uncertainty is missing or a part is not held
 * @param odds empty as well then
 * @param stations what each link brings to each gap, in order; empty as well then
 * @param spender the link that brings most to the worst station's variance; empty as well then, and where readings or
 *     states to come bring most
 * @param missing what nobody has given
 * @param assumed what was assumed
 * @param dependence which bonds count as one in something, and that all else counts as independent; empty for a single open bond
 * @param findings what must be said
 */
public record ChainResult(
        Optional<GapSpread> spread,
        Optional<GapOdds> odds,
        List<StationShares> stations,
        Optional<String> spender,
        List<Missing> missing,
        List<Assumption> assumed,
        List<Finding> dependence,
        List<Finding> findings) {
    /** Copies the lists. */
    public ChainResult {
        stations = List.copyOf(stations);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        dependence = List.copyOf(dependence);
        findings = List.copyOf(findings);
    }

    /**
     * What makes one gap's variance.
     *
     * @param id the station
     * @param links the part that each link brings, in the order of the chain, marks included
     * @param readings the part that the readings bring
     * @param later the part that states to come bring; all parts sum to one
     */
    public record StationShares(String id, List<Double> links, double readings, double later) {
        /** Copies the list. */
        public StationShares {
            links = List.copyOf(links);
        }
    }
}
