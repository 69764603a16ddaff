package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.optimum.Equations;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.basis.numeric.optimum.MinimaxFit;
import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;

/** Shift and tilt that bring a flat part flush: f + dz + rx · r_y − ry · r_x at its nominal, three unknowns, no limits. */
public final class FlushPlaneCalculator {
    private FlushPlaneCalculator() {}

    /**
     * Answers the question.
     *
     * @param readings at least one
     * @param pivot the pivot of the moves in the answer
     * @throws IllegalArgumentException if there is no reading or a weight is not positive
     */
    public static FlushPlaneResult calculate(List<FlushReading> readings, Spot pivot) {
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no flush readings");
        }
        double square = 0;
        for (FlushReading r : readings) {
            double d = r.at().distanceMm(pivot);
            square += d * d;
        }
        double root = Math.sqrt(square / readings.size());
        double scale = root > 0 ? root : 1;
        Equations.Builder all = Equations.of(3);
        for (FlushReading r : readings) {
            double x = r.at().xMm() - pivot.xMm();
            double y = r.at().yMm() - pivot.yMm();
            all.row(new double[] {1, y / scale, -x / scale}, r.nominalMm() - r.flushMm(), r.weight());
        }
        Equations e = all.build();
        LeastSquares.Fit squares = LeastSquares.fit(e);
        MinimaxFit.Fit minimax = MinimaxFit.fit(e, LinearRows.free(3).build()).orElseThrow();
        int rank = LeastSquares.fit(e.unweighted()).rank();
        List<Finding> findings = rank == 3
                ? List.of()
                : List.of(new Finding(
                        Severity.CAUTION,
                        "flush",
                        rank == 2
                                ? "The stations lie in one line: the tilt about this line is not measured."
                                : "One place alone says nothing about tilt.",
                        "geometry"));
        return new FlushPlaneResult(
                rank,
                solution(readings, e, squares.point(), e.worst(squares.point()), scale),
                solution(readings, e, minimax.point(), minimax.worst(), scale),
                findings);
    }

    private static FlushPlaneResult.Solution solution(
            List<FlushReading> readings, Equations e, List<Double> x, double worst, double scale) {
        List<Double> after = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            after.add(readings.get(i).nominalMm() - e.deviation(i, x));
        }
        return new FlushPlaneResult.Solution(
                new FlushMove(x.get(0), x.get(1) / scale, x.get(2) / scale), after, worst, e.sumSquares(x));
    }
}
