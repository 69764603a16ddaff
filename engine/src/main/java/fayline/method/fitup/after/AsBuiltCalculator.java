package fayline.method.fitup.after;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.ChiSquare;
import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.Move;
import fayline.method.fitup.Station;
import fayline.method.fitup.after.AsBuiltResult.Deviation;
import fayline.method.fitup.after.AsBuiltResult.Motion;
import fayline.method.fitup.after.AsBuiltResult.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Holds measured gaps against predicted ones: residuals r in their uncertainties, r' C^-1 r with the full covariance of
 * prediction and reading, and the unintended move by weighted least squares from r = -A move (first order [jcgm100]).
 */
public final class AsBuiltCalculator {
    private static final double UNLIKELY = 0.05;
    private static final double TOO_LIKELY = 0.975;
    private static final double FREE = 1e-6;
    private static final int UNKNOWNS = 3;

    private AsBuiltCalculator() {}

    /**
     * Compares.
     *
     * @throws IllegalArgumentException if a station has no uncertainty at all, or the covariance is none
     */
    public static AsBuiltResult calculate(AsBuilt built) {
        int n = built.gaps().size();
        double[] r = built.gaps().stream().mapToDouble(BuiltGap::residualMm).toArray();
        double[] u = uncertainties(built);
        DenseMatrix a = rows(built);
        DenseMatrix both = whitened(built, u, a, r);
        double[] white = both.col(UNKNOWNS);
        double chiSquare = squares(white);
        double p = ChiSquare.above(chiSquare, n);
        List<Deviation> stations = IntStream.range(0, n)
                .mapToObj(i -> new Deviation(built.gaps().get(i).station().id(), r[i], u[i], r[i] / u[i]))
                .toList();
        Optional<Motion> motion = motion(built, both, white, a, r);
        Reading reading = reading(p, motion);
        return new AsBuiltResult(stations, chiSquare, n, p, motion, reading, findings(reading, motion));
    }

    private static double[] uncertainties(AsBuilt built) {
        double[] u = new double[built.gaps().size()];
        for (int i = 0; i < u.length; i++) {
            BuiltGap g = built.gaps().get(i);
            double predicted = built.predictedCovarianceMm2().isEmpty()
                    ? g.predictedUncertaintyMm() * g.predictedUncertaintyMm()
                    : built.predictedCovarianceMm2().get(i).get(i);
            u[i] = Math.sqrt(predicted + g.measuredUncertaintyMm() * g.measuredUncertaintyMm());
            if (!(u[i] > 0)) {
                throw new IllegalArgumentException("station " + g.station().id() + " has no uncertainty");
            }
        }
        return u;
    }

    private static DenseMatrix rows(AsBuilt built) {
        double[][] a = new double[built.gaps().size()][];
        for (int i = 0; i < a.length; i++) {
            Station s = built.gaps().get(i).station();
            a[i] = new double[] {s.nx(), s.ny(), s.leverMm(built.pivot())};
        }
        return DenseMatrix.of(a);
    }

    /** Rows and residuals in units in which they are independent and of variance one: three columns and one. */
    private static DenseMatrix whitened(AsBuilt built, double[] u, DenseMatrix a, double[] r) {
        double[][] both = new double[u.length][];
        for (int i = 0; i < u.length; i++) {
            both[i] = new double[] {a.get(i, 0), a.get(i, 1), a.get(i, 2), r[i]};
        }
        if (built.predictedCovarianceMm2().isEmpty()) {
            for (int i = 0; i < u.length; i++) {
                double by = u[i];
                both[i] = Arrays.stream(both[i]).map(v -> v / by).toArray();
            }
            return DenseMatrix.of(both);
        }
        double[][] c = new double[u.length][u.length];
        for (int i = 0; i < u.length; i++) {
            double own = built.gaps().get(i).measuredUncertaintyMm();
            for (int j = 0; j < u.length; j++) {
                c[i][j] = built.predictedCovarianceMm2().get(i).get(j) + (i == j ? own * own : 0);
                if (Math.abs(c[i][j] - built.predictedCovarianceMm2().get(j).get(i) - (i == j ? own * own : 0))
                        > 1e-9 * u[i] * u[j]) {
                    throw new IllegalArgumentException("the covariance of the predicted gaps is not symmetric");
                }
            }
        }
        return DenseMatrix.of(c)
                .cholesky()
                .flatMap(l -> l.solve(DenseMatrix.of(both)))
                .orElseThrow(() -> new IllegalArgumentException(
                        "the covariance of prediction and reading is none, or leaves a combination of gaps without"
                                + " uncertainty"));
    }

    private static Optional<Motion> motion(AsBuilt built, DenseMatrix both, double[] white, DenseMatrix a, double[] r) {
        int n = white.length;
        double length = Math.max(1, lengthMm(built));
        double[][] scaled = new double[n][];
        double[][] plain = new double[n][];
        for (int i = 0; i < n; i++) {
            scaled[i] = new double[] {both.get(i, 0), both.get(i, 1), both.get(i, 2) / length};
            plain[i] = new double[] {a.get(i, 0), a.get(i, 1), a.get(i, 2) / length};
        }
        if (n < UNKNOWNS || DenseMatrix.of(plain).svd().rank(FREE) < UNKNOWNS) {
            return Optional.empty();
        }
        DenseMatrix back = DenseMatrix.diagonal(1, 1, 1 / length);
        DenseMatrix inverse = DenseMatrix.of(scaled).pseudoInverse(FREE);
        double[] q = back.times(inverse).times(white);
        DenseMatrix covariance = back.times(inverse).times(inverse.transposed()).times(back);
        Move move = new Move(-q[0], -q[1], -q[2]);
        double left = 0;
        List<Double> residuals = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double w = white[i];
            double plainLeft = r[i];
            for (int k = 0; k < UNKNOWNS; k++) {
                w -= both.get(i, k) * q[k];
                plainLeft -= a.get(i, k) * q[k];
            }
            left += w * w;
            residuals.add(plainLeft);
        }
        int degrees = n - UNKNOWNS;
        return Optional.of(new Motion(
                new FittedMove(move, MoveCovariance.of(covariance)),
                residuals,
                left,
                degrees,
                degrees > 0 ? ChiSquare.above(left, degrees) : 1));
    }

    private static double lengthMm(AsBuilt built) {
        return Math.sqrt(built.gaps().stream()
                .mapToDouble(g -> {
                    double d = g.station().at().distanceMm(built.pivot());
                    return d * d;
                })
                .average()
                .orElse(1));
    }

    private static double squares(double[] v) {
        return Arrays.stream(v).map(x -> x * x).sum();
    }

    private static Reading reading(double p, Optional<Motion> motion) {
        if (p >= UNLIKELY) {
            return p > TOO_LIKELY ? Reading.TOO_GOOD : Reading.AS_PREDICTED;
        }
        if (motion.isEmpty() || motion.get().degrees() == 0) {
            return Reading.UNTOLD;
        }
        return motion.get().pValue() >= UNLIKELY ? Reading.MOVED : Reading.LOCAL;
    }

    private static List<Finding> findings(Reading reading, Optional<Motion> motion) {
        List<Finding> all = new ArrayList<>();
        if (motion.isEmpty()) {
            all.add(new Finding(
                    Severity.NOTE,
                    "motion",
                    "The stations leave a motion of the part untold: read one on another edge.",
                    "rigid-body geometry"));
        }
        boolean calm = reading == Reading.AS_PREDICTED;
        all.add(new Finding(calm ? Severity.NOTE : Severity.CAUTION, "as built", reading.words(), "[jcgm100]"));
        return all;
    }
}
