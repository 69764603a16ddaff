package fayline.method.plate;

import fayline.basis.finding.Finding;
import java.util.List;

/**
 * A flat plate under pressure by small-deflection theory.
 *
 * @param deflectionM deflection of the centre
 * @param stress1Pa surface stress at the centre along a
 * @param stress2Pa surface stress at the centre along b
 * @param edgeStressPa largest surface stress at the edges; 0 where they may turn
 * @param smallDeflection whether the deflection is at most half the thickness, so that the figures may be used
 * @param findings what must be said; a stop where they may not
 */
public record FlatPlateResult(
        double deflectionM,
        double stress1Pa,
        double stress2Pa,
        double edgeStressPa,
        boolean smallDeflection,
        List<Finding> findings) {
    /** Copies the list. */
    public FlatPlateResult {
        findings = List.copyOf(findings);
    }

    /** The largest surface stress anywhere. */
    public double highestStressPa() {
        return Math.max(Math.abs(edgeStressPa), Math.max(Math.abs(stress1Pa), Math.abs(stress2Pa)));
    }
}
