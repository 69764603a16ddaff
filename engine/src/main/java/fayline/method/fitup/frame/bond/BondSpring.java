package fayline.method.fitup.frame.bond;

import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodeSpring;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Adhesive at one place, as springs along the axes of the frame. It is free of stress in the state in which it sets.
 *
 * @param partNode node of the part
 * @param structureNode node of the structure
 * @param kxNPerMm against a difference along x; not negative
 * @param kyNPerMm along y
 * @param kzNPerMm along z; 0 in a plane frame
 * @param krNMmPerRad against a difference of turn about z, in space about every axis
 * @param thicknessMm thickness of the adhesive, where it is known: closing farther is overlap
 * @param runMm length of bond line that the place stands for; half the part's beams there where empty
 */
public record BondSpring(
        int partNode,
        int structureNode,
        double kxNPerMm,
        double kyNPerMm,
        double kzNPerMm,
        double krNMmPerRad,
        OptionalDouble thicknessMm,
        OptionalDouble runMm) {
    /** A bond that stands for half the part's beams at its place. */
    public BondSpring(
            int partNode,
            int structureNode,
            double kxNPerMm,
            double kyNPerMm,
            double kzNPerMm,
            double krNMmPerRad,
            OptionalDouble thicknessMm) {
        this(partNode, structureNode, kxNPerMm, kyNPerMm, kzNPerMm, krNMmPerRad, thicknessMm, OptionalDouble.empty());
    }

    /** Springs in a plane frame. */
    public static BondSpring inPlane(int partNode, int structureNode, double kx, double ky, double kr) {
        return new BondSpring(partNode, structureNode, kx, ky, 0, kr, OptionalDouble.empty());
    }

    /**
     * The springs of a film: G · area/thickness in shear, E' · area/thickness in peel.
     *
     * @param partNode node of the part
     * @param structureNode node of the structure
     * @param areaMm2 bonded area that the node stands for; positive
     * @param thicknessMm thickness of the film; positive
     * @param shearMpa shear modulus of the adhesive; not negative
     * @param peelMpa modulus square to a thin film, above the plain modulus since the film cannot contract; not negative
     * @param peel the way the film is pulled open: x, y or z
     * @throws IllegalArgumentException if the film has no thickness or area, or the peel axis is none of the frame's
     */
    public static BondSpring ofFilm(
            int partNode,
            int structureNode,
            double areaMm2,
            double thicknessMm,
            double shearMpa,
            double peelMpa,
            Axis peel) {
        if (!(areaMm2 > 0) || !(thicknessMm > 0)) {
            throw new IllegalArgumentException(
                    "a film has area and thickness, found " + areaMm2 + " mm2 and " + thicknessMm + " mm");
        }
        double square = Math.max(Math.abs(peel.x()), Math.max(Math.abs(peel.y()), Math.abs(peel.z())));
        if (square < 1) {
            throw new IllegalArgumentException("a film is pulled open along x, y or z of the frame, found " + peel);
        }
        double shear = shearMpa * areaMm2 / thicknessMm;
        double open = peelMpa * areaMm2 / thicknessMm;
        return new BondSpring(
                partNode,
                structureNode,
                peel.x() != 0 ? open : shear,
                peel.y() != 0 ? open : shear,
                peel.z() != 0 ? open : shear,
                0,
                OptionalDouble.of(thicknessMm));
    }

    /** This bond, standing for a length of bond line in mm. */
    public BondSpring over(double run) {
        return new BondSpring(
                partNode,
                structureNode,
                kxNPerMm,
                kyNPerMm,
                kzNPerMm,
                krNMmPerRad,
                thicknessMm,
                OptionalDouble.of(run));
    }

    /** As springs between nodes; those without stiffness are left out. */
    public List<NodeSpring> springs(boolean plane) {
        return List.of(Freedom.values()).stream()
                .filter(f -> !plane || f.isInPlane())
                .filter(f -> stiffness(f) != 0)
                .map(f -> new NodeSpring(partNode, structureNode, f, stiffness(f)))
                .toList();
    }

    /** The stiffness against one freedom, N/mm or N mm/rad. */
    public double stiffness(Freedom f) {
        return switch (f) {
            case UX -> kxNPerMm;
            case UY -> kyNPerMm;
            case UZ -> kzNPerMm;
            case RX, RY, RZ -> krNMmPerRad;
        };
    }
}
