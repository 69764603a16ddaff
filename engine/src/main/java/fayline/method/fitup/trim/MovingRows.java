package fayline.method.fitup.trim;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.List;

/** Gaps as a linear function of the move, about a move already known: g(q) = constant − a · q, the turn in units of 1/Λ. */
final class MovingRows {
    private final List<FitRow> rows;
    private final Spot pivot;
    private final double scaleMm;
    private final double[][] a;
    private final double[] constant;

    private MovingRows(List<FitRow> rows, Spot pivot, Move about) {
        this.rows = rows;
        this.pivot = pivot;
        double mean = rows.stream()
                .mapToDouble(r -> Math.pow(r.station().at().distanceMm(pivot), 2))
                .average()
                .orElse(0);
        this.scaleMm = mean > 0 ? Math.sqrt(mean) : 1;
        int n = rows.size();
        a = new double[n][];
        constant = new double[n];
        double c = Math.cos(about.turnRad());
        double s = Math.sin(about.turnRad());
        for (int i = 0; i < n; i++) {
            FitRow row = rows.get(i);
            double rx = row.station().at().xMm() - pivot.xMm();
            double ry = row.station().at().yMm() - pivot.yMm();
            double nx = row.station().nx();
            double ny = row.station().ny();
            double lever = (c * rx - s * ry) * ny - (s * rx + c * ry) * nx;
            a[i] = new double[] {nx, ny, lever / scaleMm};
            constant[i] = exact(row, about) + nx * about.dxMm() + ny * about.dyMm() + lever * about.turnRad();
        }
    }

    static MovingRows about(List<FitRow> rows, Spot pivot, Move move) {
        return new MovingRows(rows, pivot, move);
    }

    MovingRows about(Move move) {
        return new MovingRows(rows, pivot, move);
    }

    double scaleMm() {
        return scaleMm;
    }

    double constant(int row) {
        return constant[row];
    }

    double coefficient(int row, int unknown) {
        return a[row][unknown];
    }

    double linear(int row, Move move) {
        return constant[row] - a[row][0] * move.dxMm() - a[row][1] * move.dyMm() - a[row][2] * scaleMm * move.turnRad();
    }

    double exact(int row, Move move) {
        return exact(rows.get(row), move);
    }

    /** Gap to a locally straight neighbour edge after the whole move. */
    private double exact(FitRow row, Move move) {
        Spot there = move.of(row.station().at(), pivot);
        return row.gapMm()
                - row.station().nx() * (there.xMm() - row.station().at().xMm())
                - row.station().ny() * (there.yMm() - row.station().at().yMm());
    }
}
