package fayline.method.joint;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.joint.BondedBeams.Beam;
import fayline.method.joint.BondedBeams.Overhang;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Shear and peel of a lap joint: shear lag [volkersen1938], with bending [goland-reissner1944], elastic-plastic
 * [hart-smith1973], and by two beams on a layer of adhesive, which decide. Linear elastic adhesive with square ends, load-dependent
 * bending, plates (no growth across the width).
 */
public final class LapJointCalculator {
    /** Room for what the beams were found to miss against plane finite elements on the unsafe side. */
    static final double SHEAR_LOW = 0.10;

    static final double PEEL_LOW = 0.10;
    /** Bond over adherend from which the bending-corrected formula is unsafe by more than 10 percent. */
    private static final double THICK_BOND = 0.375;

    private static final int ELEMENTS = 240;
    private static final int BESIDE = 60;

    private LapJointCalculator() {}

    /** Answers the question. */
    public static LapJointResult calculate(LapJoint j) {
        return calculate(j, ELEMENTS);
    }

    static LapJointResult calculate(LapJoint j, int elements) {
        Adherend one = j.oneAsSeen();
        ShearLag lag = ShearLag.of(
                j.perBondNPerM(), j.overlapM(), one.stretchNPerM(), j.two().stretchNPerM(), j.bond());
        boolean single = j.kind() == LapJoint.Kind.SINGLE;
        Optional<DoubleLapStrength> strength = !single && j.bond().yieldPa().isPresent()
                ? Optional.of(DoubleLapStrength.of(j.one(), j.two(), j.bond(), 0))
                : Optional.empty();
        BeamAnswer beams = beams(j, elements).solve(j.perBondNPerM(), 0);
        return new LapJointResult(
                lag,
                bending(j),
                strength,
                single ? Optional.empty() : Optional.of(outerPeel(j, lag)),
                beams,
                beams.highestShearPa() * (1 + SHEAR_LOW),
                beams.highestPeelPa() * (1 + PEEL_LOW),
                surface(j, beams),
                findings(j));
    }

    /** The bending-corrected closed form, for a single lap of equal adherends; empty otherwise. */
    public static Optional<BendingLap> bending(LapJoint j) {
        return j.kind() == LapJoint.Kind.SINGLE && j.isBalanced()
                ? Optional.of(BendingLap.of(j.loadNPerM(), j.overlapM(), j.one(), j.bond()))
                : Optional.empty();
    }

    private static BondedBeams beams(LapJoint j, int elements) {
        boolean twofold = j.kind().isTwofold();
        return new BondedBeams(
                new Beam(j.oneAsSeen(), twofold, true),
                new Beam(j.two(), false, true),
                j.bond(),
                j.overlapM(),
                elements,
                List.of(new Overhang(0, true, j.freeM(), BESIDE), new Overhang(1, false, j.freeM(), BESIDE)));
    }

    /** tau (3 Ea to / (Eo ta))^(1/4) ([hart-smith1973], from memory). */
    private static double outerPeel(LapJoint j, ShearLag lag) {
        Adherend outer = j.two();
        return lag.end1Pa()
                * Math.pow(
                        3
                                * j.bond().modulusPa()
                                * outer.thicknessM()
                                / (outer.modulusPa() * j.bond().thicknessM()),
                        0.25);
    }

    private static double surface(LapJoint j, BeamAnswer b) {
        double t = Math.min(j.oneAsSeen().thicknessM(), j.two().thicknessM());
        return j.perBondNPerM() / t + 6 * b.endMomentN() / (t * t);
    }

    private static List<Finding> findings(LapJoint j) {
        List<Finding> all = new ArrayList<>();
        if (j.kind() == LapJoint.Kind.SINGLE) {
            all.add(caution(
                    "Shear lag alone misses the bending of a single lap: its peak is 12 to 51 percent too low.",
                    "volkersen1938"));
            if (!j.isBalanced()) {
                all.add(caution(
                        "The bending-corrected formula is for equal adherends and is not given here.",
                        "goland-reissner1944"));
            } else if (j.bond().thicknessM() >= THICK_BOND * j.one().thicknessM()) {
                all.add(caution(
                        "The bond line is thick against the adherend: the bending-corrected formula is 13 to 18 percent low in"
                                + " shear and 10 to 21 percent low in peel. The beams decide.",
                        "goland-reissner1944"));
            }
        } else {
            all.add(caution(
                    "Shear lag of a double lap is 20 to 40 percent high for thin stiff bonds and right for soft thick ones.",
                    "volkersen1938"));
        }
        return all;
    }

    private static Finding caution(String sentence, String source) {
        return new Finding(Severity.CAUTION, "joint", sentence, source);
    }
}
