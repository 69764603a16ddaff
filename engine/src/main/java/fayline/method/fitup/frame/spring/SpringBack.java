package fayline.method.fitup.frame.spring;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.bond.BondLine;
import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.bond.Clearance;
import java.util.List;
import java.util.Optional;

/**
 * The question what a part does that is clamped to a structure, bonded and let go.
 *
 * @param part the part; shares its list of nodes with the structure
 * @param structure what it is bonded to
 * @param bonds adhesive between different nodes; nodes at which both have beams are tied without it
 * @param partSupports what holds the part in its fixture, let go with the clamps unless it also holds the assembly
 * @param assemblySupports what holds the assembly afterwards
 * @param clamps at least one
 * @param watches where the shift is asked
 * @param deviationCovariance covariance of the deviations at the clamps, in mm², where it is known
 * @param peel the way from structure to part in which the bond is pulled open, where it is one and the same
 * @param clearances gaps that the released shape may close
 * @param limits where to stop pulling
 * @param creeps whether the part is of a material that creeps under load, as acrylic
 */
public record SpringBack(
        Frame part,
        Frame structure,
        List<BondSpring> bonds,
        List<NodeFreedom> partSupports,
        List<NodeFreedom> assemblySupports,
        List<Clamp> clamps,
        List<Watch> watches,
        Optional<DenseMatrix> deviationCovariance,
        Optional<Axis> peel,
        List<Clearance> clearances,
        ClampLimits limits,
        boolean creeps) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException without a clamp, where the covariance is not one row for each clamp, or where something
     *     names a node that is not there
     */
    public SpringBack {
        bonds = List.copyOf(bonds);
        partSupports = List.copyOf(partSupports);
        assemblySupports = List.copyOf(assemblySupports);
        clamps = List.copyOf(clamps);
        watches = List.copyOf(watches);
        clearances = List.copyOf(clearances);
        if (clamps.isEmpty()) {
            throw new IllegalArgumentException("a part is clamped at one place at least");
        }
        int n = clamps.size();
        deviationCovariance.ifPresent(c -> {
            if (c.rows() != n || c.cols() != n) {
                throw new IllegalArgumentException(
                        "the covariance is " + c.rows() + " by " + c.cols() + ", there are " + n + " clamps");
            }
        });
        for (Clamp c : clamps) {
            if (!part.carries(c.at().node())) {
                throw new IllegalArgumentException(
                        "clamp " + c.id() + " is at node " + c.at().node() + ", where the part has no beam");
            }
        }
        for (Watch w : watches) {
            if (!part.carries(w.at().node()) && !structure.carries(w.at().node())) {
                throw new IllegalArgumentException(
                        "watch " + w.id() + " is at node " + w.at().node() + ", where nothing has a beam");
            }
        }
        for (BondSpring b : bonds) {
            BondLine.requirePair(part, structure, b.partNode(), b.structureNode(), "a bond");
        }
        for (Clearance c : clearances) {
            BondLine.requirePair(part, structure, c.partNode(), c.structureNode(), "gap " + c.id());
        }
    }

    /** The question with the usual limits and nothing asked beside clamps and watches. */
    public static SpringBack of(
            Frame part,
            Frame structure,
            List<BondSpring> bonds,
            List<NodeFreedom> partSupports,
            List<NodeFreedom> assemblySupports,
            List<Clamp> clamps,
            List<Watch> watches) {
        return new SpringBack(
                part,
                structure,
                bonds,
                partSupports,
                assemblySupports,
                clamps,
                watches,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                ClampLimits.USUAL,
                false);
    }

    /** This question with the covariance of the deviations. */
    public SpringBack withCovariance(DenseMatrix covariance) {
        return new SpringBack(
                part,
                structure,
                bonds,
                partSupports,
                assemblySupports,
                clamps,
                watches,
                Optional.of(covariance),
                peel,
                clearances,
                limits,
                creeps);
    }

    /** This question with a way in which the bond is pulled open, gaps beside it, and whether the part creeps. */
    public SpringBack withBondLine(Axis opening, List<Clearance> gaps, boolean partCreeps) {
        return new SpringBack(
                part,
                structure,
                bonds,
                partSupports,
                assemblySupports,
                clamps,
                watches,
                deviationCovariance,
                Optional.of(opening),
                gaps,
                limits,
                partCreeps);
    }

    /** This question with other clamps. */
    public SpringBack withClamps(List<Clamp> others) {
        return new SpringBack(
                part,
                structure,
                bonds,
                partSupports,
                assemblySupports,
                others,
                watches,
                deviationCovariance,
                peel,
                clearances,
                limits,
                creeps);
    }

    /** The bond between the two. */
    public BondLine bondLine() {
        return new BondLine(part, structure, bonds, peel);
    }
}
