package fayline.method.fitup.after;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.SemidefiniteFactor;
import fayline.method.fitup.Move;
import java.util.ArrayList;
import java.util.List;

/**
 * How well a move is known.
 *
 * @param rows three by three over dx, dy (mm) and turn (rad)
 */
public record MoveCovariance(List<List<Double>> rows) {
    private static final int SIZE = 3;

    /**
     * Copies the rows.
     *
     * @throws IllegalArgumentException if it is not three by three or no covariance
     */
    public MoveCovariance {
        rows = rows.stream().map(List::copyOf).toList();
        if (rows.size() != SIZE || rows.stream().anyMatch(r -> r.size() != SIZE)) {
            throw new IllegalArgumentException("the covariance of a move is three by three");
        }
        // Turns are a thousand times smaller than shifts; on equal footing rounding cannot pass for a negative
        // eigenvalue.
        double[] unit = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            double v = rows.get(i).get(i);
            if (!(v >= 0) || Double.isInfinite(v)) {
                throw new IllegalArgumentException("a variance of a move is " + v);
            }
            unit[i] = v > 0 ? 1 / Math.sqrt(v) : 1;
        }
        DenseMatrix scale = DenseMatrix.diagonal(unit);
        SemidefiniteFactor.of(scale.times(matrix(rows)).times(scale));
    }

    /** Independent parts with these standard deviations. */
    public static MoveCovariance ofDeviations(double dxMm, double dyMm, double turnRad) {
        return of(DenseMatrix.diagonal(dxMm * dxMm, dyMm * dyMm, turnRad * turnRad));
    }

    static MoveCovariance of(DenseMatrix m) {
        List<List<Double>> all = new ArrayList<>();
        for (int i = 0; i < SIZE; i++) {
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < SIZE; j++) {
                row.add((m.get(i, j) + m.get(j, i)) / 2);
            }
            all.add(row);
        }
        return new MoveCovariance(all);
    }

    /** Standard deviations of the three parts, written as a move. */
    public Move deviations() {
        return new Move(
                Math.sqrt(rows.get(0).get(0)),
                Math.sqrt(rows.get(1).get(1)),
                Math.sqrt(rows.get(2).get(2)));
    }

    DenseMatrix matrix() {
        return matrix(rows);
    }

    private static DenseMatrix matrix(List<List<Double>> rows) {
        return DenseMatrix.of(rows.stream()
                .map(r -> r.stream().mapToDouble(Double::doubleValue).toArray())
                .toArray(double[][]::new));
    }
}
