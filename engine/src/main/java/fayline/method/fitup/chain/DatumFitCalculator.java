package fayline.method.fitup.chain;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.ChiSquare;
import fayline.basis.units.Amount;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.after.MoveCovariance;
import java.util.ArrayList;
import java.util.List;

/**
 * Lays the bench onto the final frame by marks: the rigid motion, without stretch, of least weighted squares. In the plane it
 * has a closed form: the weighted middles are laid upon each other and the turn is the angle of the sum of products
 * (Procrustes problem [schonemann1966]).
 */
public final class DatumFitCalculator {
    private static final double UNLIKELY = 0.01;

    private DatumFitCalculator() {}

    /**
     * Fits.
     *
     * @param marks two at least, not in one place
     * @throws IllegalArgumentException if they are fewer or in one place
     */
    public static DatumFit calculate(List<DatumMark> marks) {
        double weight = 0;
        double[] bench = new double[2];
        double[] place = new double[2];
        for (DatumMark m : marks) {
            double w = 1 / m.variance();
            weight += w;
            bench[0] += w * m.onBench().xMm();
            bench[1] += w * m.onBench().yMm();
            place[0] += w * m.inPlace().xMm();
            place[1] += w * m.inPlace().yMm();
        }
        Spot middleBench = new Spot(bench[0] / weight, bench[1] / weight);
        Spot middle = new Spot(place[0] / weight, place[1] / weight);
        double along = 0;
        double across = 0;
        double inertia = 0;
        for (DatumMark m : marks) {
            double w = 1 / m.variance();
            double bx = m.onBench().xMm() - middleBench.xMm();
            double by = m.onBench().yMm() - middleBench.yMm();
            double px = m.inPlace().xMm() - middle.xMm();
            double py = m.inPlace().yMm() - middle.yMm();
            along += w * (bx * px + by * py);
            across += w * (bx * py - by * px);
            inertia += w * (bx * bx + by * by);
        }
        if (marks.size() < 2 || !(inertia * marks.get(0).variance() > 1)) {
            throw new IllegalArgumentException("two marks apart are needed, not " + marks.size() + " in one place");
        }
        double turn = Math.atan2(across, along);
        Spot turned = new Placement(0, 0, turn).toFinal(middleBench);
        Placement placement = new Placement(middle.xMm() - turned.xMm(), middle.yMm() - turned.yMm(), turn);
        double u = Math.sqrt(1 / weight);
        return judged(
                marks,
                placement,
                middle,
                MoveCovariance.ofDeviations(u, u, Math.sqrt(1 / inertia)),
                pulls(marks, middle, weight, inertia));
    }

    /** A mark found e off shifts the weighted middle by its share of e, and turns about it by its share of b x e. */
    private static List<MarkPull> pulls(List<DatumMark> marks, Spot middle, double weight, double inertia) {
        List<MarkPull> all = new ArrayList<>();
        for (DatumMark m : marks) {
            double w = 1 / m.variance();
            double bx = m.inPlace().xMm() - middle.xMm();
            double by = m.inPlace().yMm() - middle.yMm();
            all.add(new MarkPull(
                    m, new Move(w / weight, 0, -w * by / inertia), new Move(0, w / weight, w * bx / inertia)));
        }
        return all;
    }

    private static DatumFit judged(
            List<DatumMark> marks, Placement placement, Spot middle, MoveCovariance how, List<MarkPull> pulls) {
        List<Double> off = new ArrayList<>();
        double chiSquare = 0;
        int worst = 0;
        for (DatumMark m : marks) {
            double d = placement.toFinal(m.onBench()).distanceMm(m.inPlace());
            chiSquare += d * d / m.variance();
            off.add(d);
            worst = d > off.get(worst) ? off.size() - 1 : worst;
        }
        // Two numbers from each mark, three spent on the motion.
        double p = ChiSquare.above(chiSquare, 2 * marks.size() - 3);
        List<Finding> findings = p < UNLIKELY
                ? List.of(new Finding(
                        Severity.CAUTION,
                        marks.get(worst).id(),
                        Phrase.of(
                                "Mark %s lies %s from where the others put it: measure the marks again.",
                                marks.get(worst).id(), Amount.mm(off.get(worst), 2)),
                        "[schonemann1966]"))
                : List.of();
        return new DatumFit(placement, middle, how, pulls, off, chiSquare, p, findings);
    }
}
