package fayline.method.plate;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import java.util.List;

/**
 * Deflection and surface stress of a flat rectangular plate under even pressure: Navier's series where the edges may turn,
 * Ritz's method where they are clamped [timoshenko1959]. It is linear: past half a thickness of deflection the plate carries
 * as a membrane too, and the figures are 1.6 to 2.8 times too high; they are then given with a stop.
 */
public final class FlatPlateCalculator {
    /** Deflection over thickness up to which small-deflection theory holds ([roark7], 11.11). */
    private static final double SMALL = 0.5;

    private FlatPlateCalculator() {}

    /** Answers the question. */
    public static FlatPlateResult calculate(FlatPlate p) {
        double section = 6 / (p.thicknessM() * p.thicknessM());
        double w = 0;
        double s1 = 0;
        double s2 = 0;
        double edge = 0;
        if (p.edges() != Edges.CLAMPED) {
            BentPlate b = NavierSeries.bent(p.stiffness(), p.aM(), p.bM(), p.pressurePa());
            w = b.centreM();
            s1 = b.moment1N() * section;
            s2 = b.moment2N() * section;
        }
        if (p.edges() != Edges.SUPPORTED) {
            BentPlate b = new ClampedRitz(p.stiffness(), p.aM(), p.bM()).underPressure(p.pressurePa());
            w = worse(w, b.centreM());
            s1 = worse(s1, b.moment1N() * section);
            s2 = worse(s2, b.moment2N() * section);
            edge = worse(b.edgeMoment1N(), b.edgeMoment2N()) * section;
        }
        boolean small = Math.abs(w) <= SMALL * p.thicknessM();
        return new FlatPlateResult(w, s1, s2, Math.abs(edge), small, findings(p, w, small));
    }

    private static double worse(double a, double b) {
        return Math.abs(b) > Math.abs(a) ? b : a;
    }

    private static List<Finding> findings(FlatPlate p, double w, boolean small) {
        if (small) {
            return List.of();
        }
        return List.of(new Finding(
                Severity.STOP,
                "plate",
                Phrase.of(
                        "Small-deflection theory gives %s, more than half the thickness of %s: the sheet then carries as a"
                                + " membrane too, deflection and stress are overstated, and the figures must not be used.",
                        Amount.mm(Math.abs(w) * 1000, 1), Amount.mm(p.thicknessM() * 1000, 1)),
                "roark7"));
    }
}
