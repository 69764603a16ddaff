package fayline.method.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;

/**
 * What a stack of plies weighs and how thick it is; empty figures where inputs are missing or the question is not covered.
 *
 * @param fibre dry fibre
 * @param resinInPart mixed resin that stays in the part
 * @param mixToWeigh mixed resin to weigh out, waste included
 * @param laminate fibre and resin together
 * @param fibreVolumeFraction fibre volume as a fraction of the laminate, without voids
 * @param thickness thickness of the laminate, without voids
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record LaminateMassResult(
        Optional<Mass> fibre,
        Optional<Mass> resinInPart,
        Optional<Mass> mixToWeigh,
        Optional<Mass> laminate,
        Optional<Fraction> fibreVolumeFraction,
        Optional<Length> thickness,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public LaminateMassResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
