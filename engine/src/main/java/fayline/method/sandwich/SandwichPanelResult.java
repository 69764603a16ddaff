package fayline.method.sandwich;

import fayline.basis.finding.Finding;
import java.util.List;

/**
 * A sandwich panel under pressure.
 *
 * @param bending1Nm bending stiffness per width along 1
 * @param shear1NPerM shear stiffness per width along 1
 * @param bentM deflection of the centre by bending alone
 * @param deflectionM deflection of the centre
 * @param stress1Pa stress along 1 in the middle of a face, at the centre
 * @param stress2Pa the same along 2
 * @param twistPa shear stress in a face, a quarter of each side from a corner
 * @param coreShear1Pa shear stress in the core at the middle of the edges that 1 ends at
 * @param coreShear2Pa the same where 2 ends
 * @param findings what must be said
 */
public record SandwichPanelResult(
        double bending1Nm,
        double shear1NPerM,
        double bentM,
        double deflectionM,
        double stress1Pa,
        double stress2Pa,
        double twistPa,
        double coreShear1Pa,
        double coreShear2Pa,
        List<Finding> findings) {
    /** Copies the list. */
    public SandwichPanelResult {
        findings = List.copyOf(findings);
    }

    /** Deflection of the centre by shear of the core, in metres. */
    public double shearedM() {
        return deflectionM - bentM;
    }
}
