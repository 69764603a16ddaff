package fayline.method.joint;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.RootFinder;
import fayline.basis.units.Amount;
import fayline.method.joint.BondedBeams.Beam;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What heat does to a sheet bonded to a frame that grows otherwise: closed form [chen-nelson1979] beside two beams on the
 * adhesive by finite elements, which decide. Linear, a strip without growth across. The least bond line is that of the closed form held flat,
 * which is within 1 percent for soft adhesives and safe for stiff ones; it never exceeds the one by geometry alone, half the
 * length times the difference of growth over the working strain.
 */
public final class BondedSheetCalculator {
    private static final String SOURCE = "chen-nelson1979";
    private static final int ELEMENTS = 240;
    private static final double LEAST_BOND_M = 1e-5;
    private static final double ACCURACY_M = 1e-9;

    /** Room for what the beams were found to miss against plane finite elements on the unsafe side. */
    private static final double LOW = 0.05;

    private BondedSheetCalculator() {}

    /** Answers the question. */
    public static BondedSheetResult calculate(BondedSheet b) {
        return calculate(b, ELEMENTS);
    }

    static BondedSheetResult calculate(BondedSheet b, int elements) {
        StripHeat closed = StripHeat.of(b);
        Adherend sheet = b.asHeld();
        BeamAnswer beams = new BondedBeams(
                        new Beam(sheet, b.heldFlat(), false),
                        new Beam(b.frame(), b.heldFlat(), false),
                        b.bond(),
                        b.lengthM(),
                        elements,
                        List.of())
                .solve(0, b.heatK());
        int middle = elements / 2;
        double mean = beams.pullNPerM().get(0).get(middle) / sheet.thicknessM();
        double face = 6 * beams.momentN().get(0).get(middle) / (sheet.thicknessM() * sheet.thicknessM());
        double shear = beams.highestShearPa() * (1 + LOW);
        boolean straight = Math.abs(beams.bowM())
                <= sheet.thicknessM() + b.frame().thicknessM() + b.bond().thicknessM();
        Optional<Double> least = leastBond(b);
        return new BondedSheetResult(
                closed,
                beams,
                shear,
                shear / b.bond().shearPa(),
                b.heldFlat() ? 0 : beams.highestPeelPa() * (1 + LapJointCalculator.PEEL_LOW),
                mean,
                mean - face,
                mean + face,
                least,
                straight,
                findings(b, closed, straight, least));
    }

    private static Optional<Double> leastBond(BondedSheet b) {
        if (b.workingStrain().isEmpty()) {
            return Optional.empty();
        }
        double allowed = b.workingStrain().getAsDouble();
        BondedSheet flat = new BondedSheet(
                b.sheet(), b.frame(), b.bond(), b.lengthM(), b.heatK(), true, b.allRound(), b.workingStrain());
        double geometry = StripHeat.of(flat).freeM() / allowed;
        if (strain(flat, LEAST_BOND_M) <= allowed || geometry <= LEAST_BOND_M) {
            return Optional.of(LEAST_BOND_M);
        }
        return Optional.of(RootFinder.bracketed(t -> strain(flat, t) - allowed, LEAST_BOND_M, geometry, ACCURACY_M)
                .orElse(geometry));
    }

    private static double strain(BondedSheet flat, double bondM) {
        return StripHeat.of(flat.withBond(bondM)).shearPa() / flat.bond().shearPa();
    }

    private static List<Finding> findings(BondedSheet b, StripHeat closed, boolean straight, Optional<Double> least) {
        List<Finding> all = new ArrayList<>();
        if (!straight) {
            all.add(caution(Phrase.of(
                    "It bows by %s, more than it is thick: the shape must not be used, and stresses only as what they tend to.",
                    Amount.mm(closed.bowM() * 1000, 1))));
        }
        if (closed.tensionPa() > 0) {
            all.add(caution(Phrase.plain(
                    "The sheet is in tension. Acrylic in tension crazes, sooner under solvents, resin vapour"
                            + " and sealant: ask its maker for the stress it bears for years.")));
        }
        if (least.isPresent() && least.get() > b.bond().thicknessM()) {
            all.add(new Finding(
                    Severity.STOP,
                    "bond",
                    Phrase.of(
                            "The adhesive works past its strain: make the bond line at least %s thick instead of %s.",
                            Amount.mm(Math.ceil(least.get() * 1e4) / 10, 1),
                            Amount.mm(b.bond().thicknessM() * 1000, 1)),
                    SOURCE));
        }
        return all;
    }

    private static Finding caution(Phrase phrase) {
        return new Finding(Severity.CAUTION, "bond", phrase, SOURCE);
    }
}
