package fayline.method.fitup.scheme;

import fayline.basis.finding.Finding;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapSpread;
import java.util.List;
import java.util.Optional;

/**
 * What a scheme does.
 *
 * @param name the scheme
 * @param stops its rows: pins are three
 * @param condition how evenly it holds: below 10 good, above 50 poor
 * @param weights how much each gap grows for one millimetre of each stop: a row for each gap
 * @param spread expected gaps and their causes; empty where an uncertainty is missing or the part is not held
 * @param odds empty as well then
 * @param missing what nobody has given
 * @param assumed what was assumed
 * @param improvements what would help, the most helpful first
 * @param findings what must be said
 */
public record SchemeOutcome(
        String name,
        List<Stop> stops,
        double condition,
        List<List<Double>> weights,
        Optional<GapSpread> spread,
        Optional<GapOdds> odds,
        List<Missing> missing,
        List<Assumption> assumed,
        List<Improvement> improvements,
        List<Finding> findings) {
    /** Copies the lists. */
    public SchemeOutcome {
        stops = List.copyOf(stops);
        weights = weights.stream().map(List::copyOf).toList();
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        improvements = List.copyOf(improvements);
        findings = List.copyOf(findings);
    }

    /** Whether small errors of stops become large ones of the part. */
    public boolean isPoor() {
        return condition > Settling.POOR;
    }
}
