package fayline.method.joint;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * A lap joint by closed forms and by beams on the adhesive. The beams decide; each figure of theirs is also given at the unsafe
 * end of its band.
 *
 * @param lag shear lag alone
 * @param bending with bending, for a single lap of equal adherends; empty otherwise
 * @param strength what a double lap of elastic-plastic adhesive bears; empty otherwise
 * @param outerPeelPa peel where the outer adherends of a double lap stop, by its closed form; empty for a single lap
 * @param beams two beams on the adhesive
 * @param shearPa the deciding shear stress, at the unsafe end of its band
 * @param peelPa the deciding peel stress, likewise
 * @param surfacePa largest stress on an adherend's surface at the end of the overlap, by the beams
 * @param findings what must be said
 */
public record LapJointResult(
        ShearLag lag,
        Optional<BendingLap> bending,
        Optional<DoubleLapStrength> strength,
        Optional<Double> outerPeelPa,
        BeamAnswer beams,
        double shearPa,
        double peelPa,
        double surfacePa,
        List<Finding> findings) {
    /** Copies the list. */
    public LapJointResult {
        findings = List.copyOf(findings);
    }
}
