package fayline.method.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Answers on the ratio of two parts; empty where not asked or not covered.
 *
 * @param resin resin for the total
 * @param hardener hardener for the total
 * @param hardenerTolerance how far the hardener on the scale may be off
 * @param hardenerPer100ByVolume hardener per 100 volumes of resin
 * @param deviation hardener of the weighed mix against the nominal; negative where there is too little
 * @param inTolerance whether the weighed mix is within tolerance; empty where no tolerance is given
 * @param hardenerToAdd hardener that brings the weighed mix to the nominal ratio, zero where there is enough
 * @param resinToAdd resin that brings the weighed mix to the nominal ratio, zero where there is enough
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record MixRatioResult(
        Optional<Mass> resin,
        Optional<Mass> hardener,
        Optional<Mass> hardenerTolerance,
        OptionalDouble hardenerPer100ByVolume,
        Optional<Fraction> deviation,
        Optional<Boolean> inTolerance,
        Optional<Mass> hardenerToAdd,
        Optional<Mass> resinToAdd,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public MixRatioResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
