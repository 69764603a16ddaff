package fayline.method.fitup.frame.spring;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.BeamStrain;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.bond.BondForce;
import fayline.method.fitup.frame.bond.ClearanceLeft;
import java.util.List;
import java.util.Optional;

/**
 * The shapes and forces of a part that is clamped, bonded and let go.
 *
 * @param clampForces one for each clamp, in order
 * @param free the free part less the clamped part: the shape of least energy through the deviations
 * @param clamped the clamped part less nominal: nothing where every clamp pulls to nominal
 * @param part the part after release, less nominal
 * @param structure the structure after release, less nominal
 * @param perDeviation how everything moves for one millimetre of deviation at each clamp
 * @param supportForces what the supports put on the assembly after release
 * @param watched the watched shifts, in order
 * @param sensitivity one row for each watch, one column for each clamp
 * @param covariance of the watched shifts, where that of the deviations is known
 * @param leastRelief the smallest change of the deviations that brings every watch to nominal, or as near as it gets
 * @param bonds what the bond carries
 * @param clearances what is left of the gaps
 * @param bendingClamped the highest bending strain while it is clamped, where a depth is known
 * @param bendingReleased the highest after release
 */
public record SpringBackShape(
        List<ClampForce> clampForces,
        NodalField free,
        NodalField clamped,
        NodalField part,
        NodalField structure,
        List<NodalField> perDeviation,
        NodalField supportForces,
        List<Watched> watched,
        DenseMatrix sensitivity,
        Optional<DenseMatrix> covariance,
        List<Double> leastRelief,
        List<BondForce> bonds,
        List<ClearanceLeft> clearances,
        Optional<BeamStrain> bendingClamped,
        Optional<BeamStrain> bendingReleased) {
    /** Copies the lists. */
    public SpringBackShape {
        clampForces = List.copyOf(clampForces);
        perDeviation = List.copyOf(perDeviation);
        watched = List.copyOf(watched);
        leastRelief = List.copyOf(leastRelief);
        bonds = List.copyOf(bonds);
        clearances = List.copyOf(clearances);
    }
}
