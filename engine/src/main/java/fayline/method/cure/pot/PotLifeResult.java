package fayline.method.cure.pot;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How long a mixed mass can be used.
 *
 * @param potLife the pot life; empty where the data sheet makes no claim, and then a finding says so
 * @param exponent the mass exponent used, where the sheet or a person gives one
 * @param mostMass the largest mass for which a claim is made; empty where the exponent was stated or masses do not count
 * @param estimated whether more than data-sheet points went into the figure
 * @param figure how it comes about; empty where there is no claim
 * @param findings what must be said
 */
public record PotLifeResult(
        Optional<TimeSpan> potLife,
        OptionalDouble exponent,
        Optional<Mass> mostMass,
        boolean estimated,
        Optional<Figure> figure,
        List<Finding> findings) {
    /** Copies the list. */
    public PotLifeResult {
        findings = List.copyOf(findings);
    }
}
