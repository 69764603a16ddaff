package fayline.method.joint;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A bonded sheet under heat, in closed form and by beams on the adhesive; the beams decide.
 *
 * @param closed the closed form
 * @param beams two beams on the adhesive: beam 1 the sheet, beam 2 the frame
 * @param shearPa the deciding shear stress, at the unsafe end of its band
 * @param strain the shear strain of the adhesive that belongs to it
 * @param peelPa the deciding peel stress, likewise; 0 where both are held flat
 * @param sheetPa mean stress in the middle of the sheet, by the beams
 * @param outerPa stress on the sheet's free face there
 * @param bondedPa stress on its bonded face there
 * @param leastBondM least bond line that keeps the working strain; empty where that is not known
 * @param straight whether the bow is at most the whole thickness, so that the linear shape may be used
 * @param findings what must be said
 */
public record BondedSheetResult(
        StripHeat closed,
        BeamAnswer beams,
        double shearPa,
        double strain,
        double peelPa,
        double sheetPa,
        double outerPa,
        double bondedPa,
        Optional<Double> leastBondM,
        boolean straight,
        List<Finding> findings) {
    /** Copies the list. */
    public BondedSheetResult {
        findings = List.copyOf(findings);
    }
}
