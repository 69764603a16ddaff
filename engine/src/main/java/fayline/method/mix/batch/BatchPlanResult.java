package fayline.method.mix.batch;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * How a lay-up or bond is mixed.
 *
 * @param batches the scale list, in order; empty where nothing fits
 * @param largest the largest batch that could be used up in time
 * @param applied time from the first mixing until the last batch is applied
 * @param tight time from the first mixing until the bag is tight or the clamps are closed
 * @param resinLife how long after its mixing the first batch on the part can still be worked; empty where the sheet says
 *     nothing
 * @param fitsDay whether it fits what is left of the crew's day
 * @param fitsResin whether the bag is tight within the resin's life
 * @param waysOut where something does not fit, what can be done and what it costs
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record BatchPlanResult(
        List<Batch> batches,
        Optional<Mass> largest,
        TimeSpan applied,
        TimeSpan tight,
        Optional<TimeSpan> resinLife,
        boolean fitsDay,
        boolean fitsResin,
        List<WayOut> waysOut,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public BatchPlanResult {
        batches = List.copyOf(batches);
        waysOut = List.copyOf(waysOut);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /** Whether the work may begin. */
    public boolean fits() {
        return fitsDay && fitsResin && findings.stream().noneMatch(f -> f.severity() == Severity.STOP);
    }
}
