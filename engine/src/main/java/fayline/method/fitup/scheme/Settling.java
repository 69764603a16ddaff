package fayline.method.fitup.scheme;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.Optional;

/**
 * How a part that rests on stops settles when stops are off, and what that does to gaps: shift = -A+ eps over the rows
 * a = (n, (p - c) x n) of the stops, each weighted by its stiffness; a gap grows by its own row times A+ times eps.
 */
public final class Settling {
    /** Below this share of the largest singular value a motion counts as free. */
    static final double FREE = 1e-6;

    /** Above this condition small errors of stops become large ones of the part. */
    static final double POOR = 50;

    private final DenseMatrix weights;
    private final DenseMatrix motion;
    private final double condition;
    private final Optional<Move> free;

    private Settling(DenseMatrix weights, DenseMatrix motion, double condition, Optional<Move> free) {
        this.weights = weights;
        this.motion = motion;
        this.condition = condition;
        this.free = free;
    }

    /**
     * Works out how a part settles.
     *
     * @param pivot pivot of the motions
     * @param stops what it rests on
     * @param gaps where gaps are watched
     */
    public static Settling of(Spot pivot, List<Stop> stops, List<Station> gaps) {
        double length = length(pivot, stops);
        double[][] rows = new double[stops.size()][];
        double[] roots = new double[stops.size()];
        double[][] plain = new double[stops.size()][];
        for (int j = 0; j < rows.length; j++) {
            Station c = stops.get(j).contact();
            roots[j] = Math.sqrt(stops.get(j).stiffness());
            plain[j] = new double[] {c.nx(), c.ny(), c.leverMm(pivot) / length};
            rows[j] = new double[] {roots[j] * plain[j][0], roots[j] * plain[j][1], roots[j] * plain[j][2]};
        }
        if (rows.length == 0) {
            return new Settling(
                    DenseMatrix.zero(gaps.size(), 0), DenseMatrix.zero(3, 0), 1 / FREE, Optional.of(new Move(1, 0, 0)));
        }
        DenseMatrix a = DenseMatrix.of(rows);
        DenseMatrix.Singular scaled = DenseMatrix.of(plain).svd();
        boolean holds = scaled.rank(FREE) >= 3;
        double condition = holds ? scaled.value(0) / scaled.value(2) : 1 / FREE;
        Optional<Move> free =
                holds ? Optional.empty() : Optional.of(move(scaled.v().col(2), length));
        DenseMatrix motion = DenseMatrix.diagonal(1, 1, 1 / length)
                .times(a.pseudoInverse(FREE))
                .times(DenseMatrix.diagonal(roots));
        double[][] gapRows = new double[gaps.size()][];
        for (int i = 0; i < gapRows.length; i++) {
            Station s = gaps.get(i);
            gapRows[i] = new double[] {s.nx(), s.ny(), s.leverMm(pivot)};
        }
        DenseMatrix weights = gapRows.length == 0
                ? DenseMatrix.zero(0, rows.length)
                : DenseMatrix.of(gapRows).times(motion);
        return new Settling(weights, motion, condition, free);
    }

    private static double length(Spot pivot, List<Stop> stops) {
        double mean = stops.stream()
                .mapToDouble(s -> {
                    double d = s.contact().at().distanceMm(pivot);
                    return d * d;
                })
                .average()
                .orElse(0);
        return mean > 0 ? Math.sqrt(mean) : 1;
    }

    private static Move move(double[] scaled, double length) {
        return new Move(scaled[0], scaled[1], scaled[2] / length);
    }

    /** How much a gap grows for one millimetre of a stop. */
    public double weight(int gap, int stop) {
        return weights.get(gap, stop);
    }

    /** How many gaps are watched. */
    public int gaps() {
        return weights.rows();
    }

    /** How the part moves for one millimetre of a stop: away from it. */
    public Move motion(int stop) {
        return new Move(-motion.get(0, stop), -motion.get(1, stop), -motion.get(2, stop));
    }

    /** Largest over smallest singular value of the stops' rows with turns counted at their mean distance. */
    public double condition() {
        return condition;
    }

    /** A motion that no stop prevents, where there is one. */
    public Optional<Move> free() {
        return free;
    }

    /** Whether small errors of stops become large ones of the part. */
    public boolean isPoor() {
        return condition > POOR;
    }
}
