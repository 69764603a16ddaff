package fayline.flow.result.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.method.mix.batch.Batch;
import fayline.method.mix.batch.WayOut;
import java.util.List;
import java.util.Optional;

/**
 * The scale list of one mix: equal batches, each used up within its life. Where nothing fits there are no batches, and a
 * finding says why.
 *
 * @param system the system
 * @param purpose what for
 * @param total mass to mix
 * @param batches how many, each of the same mass
 * @param batch mass of one batch
 * @param resin resin on the scale for one batch
 * @param hardener hardener on the scale for one batch
 * @param hardenerTolerance allowed deviation of the hardener either way, on the scale
 * @param largest most mass that may be mixed in one container here and now
 * @param potLife expected life of one batch in the container
 * @param usable the part of that life on which is relied, mixing included
 * @param every time from the mixing of one batch to the mixing of the next
 * @param container what to mix in
 * @param temperature the temperature for which it holds
 * @param people how many apply it
 * @param thickener thickener for one batch, on the scale
 * @param thickenerFraction thickener by mass of the mix
 * @param tight time from the first mixing until the bag is tight or the clamps are closed
 * @param resinLife how long the first batch can be worked on the part; empty where the sheet does not say
 * @param fits whether it fits the crew's day and the resin's life
 * @param scale each batch with its times from the first mixing
 * @param waysOut what can be done where it does not fit, each with its price
 * @param figures how it came about
 * @param findings what it says about the work
 */
public record MixList(
        String system,
        String purpose,
        Mass total,
        int batches,
        Mass batch,
        Mass resin,
        Mass hardener,
        Mass hardenerTolerance,
        Mass largest,
        TimeSpan potLife,
        TimeSpan usable,
        TimeSpan every,
        String container,
        Temperature temperature,
        int people,
        Mass thickener,
        Fraction thickenerFraction,
        TimeSpan tight,
        Optional<TimeSpan> resinLife,
        boolean fits,
        List<Batch> scale,
        List<WayOut> waysOut,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public MixList {
        scale = List.copyOf(scale);
        waysOut = List.copyOf(waysOut);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
