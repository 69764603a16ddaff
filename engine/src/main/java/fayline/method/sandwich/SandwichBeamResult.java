package fayline.method.sandwich;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A sandwich beam under load.
 *
 * @param bendingNm2 bending stiffness of the faces
 * @param bendingWithCoreNm2 the same with the core's own
 * @param shearN shear stiffness of the core
 * @param bentM deflection of the middle by bending
 * @param shearedM deflection of the middle by shear of the core
 * @param coreShearPa shear stress in the core
 * @param faceStressPa stress in a face, middle of its thickness
 * @param wrinklingPa stress at which a face wrinkles
 * @param soft N = S^2 U / (2 Ef If): large where the faces' own bending does not matter
 * @param thinFaces whether the formulas of thin faces hold
 * @param band how far the deflection may be off, as a fraction, by the finite elements it was held against; nothing where they
 *     do not hold
 * @param thickFaces the same beam with the faces' own bending, for one load in the middle; empty otherwise
 * @param findings what must be said; a stop where the formulas of thin faces do not hold
 */
public record SandwichBeamResult(
        double bendingNm2,
        double bendingWithCoreNm2,
        double shearN,
        double bentM,
        double shearedM,
        double coreShearPa,
        double faceStressPa,
        double wrinklingPa,
        double soft,
        boolean thinFaces,
        OptionalDouble band,
        java.util.Optional<ThickFaces> thickFaces,
        List<Finding> findings) {
    /** Copies the list. */
    public SandwichBeamResult {
        findings = List.copyOf(findings);
    }

    /** Deflection of the middle, in metres. */
    public double deflectionM() {
        return bentM + shearedM;
    }

    /**
     * A beam whose faces bend by themselves too.
     *
     * @param deflectionM deflection of the middle
     * @param faceStressPa stress in the middle of a face's thickness, at the load
     * @param outerStressPa stress on the outer side of the face under the load
     */
    public record ThickFaces(double deflectionM, double faceStressPa, double outerStressPa) {}
}
