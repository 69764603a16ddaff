package fayline.basis.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.optim.linear.LinearConstraint;
import org.hipparchus.optim.linear.Relationship;

/** The same program with unknowns at or above zero, rows and columns of like size. */
final class StandardForm {
    private final double[] shift;
    private final double[] sign;
    private final double[] scale;
    private final int[] column;
    private final int columns;
    private final double[] cost;
    private final List<LinearConstraint> constraints = new ArrayList<>();

    StandardForm(LinearProgram p, double[] wanted) {
        int n = p.low.length;
        shift = new double[n];
        sign = new double[n];
        scale = new double[n];
        column = new int[n];
        int next = 0;
        for (int j = 0; j < n; j++) {
            boolean fromLow = Double.isFinite(p.low[j]);
            boolean fromHigh = !fromLow && Double.isFinite(p.high[j]);
            shift[j] = fromLow ? p.low[j] : fromHigh ? p.high[j] : 0;
            sign[j] = fromHigh ? -1 : 1;
            scale[j] = 1 / powerOfTwo(largest(p.rows, j, wanted[j]));
            column[j] = next;
            next += fromLow || fromHigh ? 1 : 2;
        }
        columns = next;
        for (int i = 0; i < p.rows.length; i++) {
            add(p, p.rows[i], p.rowLow[i], p.rowHigh[i]);
        }
        for (int j = 0; j < n; j++) {
            if (Double.isFinite(p.low[j]) && Double.isFinite(p.high[j])) {
                double[] unit = new double[n];
                unit[j] = 1;
                add(p, unit, Double.NEGATIVE_INFINITY, p.high[j]);
            }
        }
        double[] spread = spread(p, wanted);
        double size = powerOfTwo(Arrays.stream(spread).map(Math::abs).max().orElse(1));
        cost = Arrays.stream(spread).map(c -> c / size).toArray();
    }

    private void add(LinearProgram p, double[] row, double from, double to) {
        double[] spread = spread(p, row);
        double moved = LinearProgram.dot(row, shift);
        double size = powerOfTwo(Arrays.stream(spread).map(Math::abs).max().orElse(1));
        double[] scaled = Arrays.stream(spread).map(c -> c / size).toArray();
        if (from == to) {
            constraints.add(new LinearConstraint(scaled, Relationship.EQ, (from - moved) / size));
            return;
        }
        if (Double.isFinite(from)) {
            constraints.add(new LinearConstraint(scaled, Relationship.GEQ, (from - moved) / size));
        }
        if (Double.isFinite(to)) {
            constraints.add(new LinearConstraint(scaled, Relationship.LEQ, (to - moved) / size));
        }
    }

    double[] cost() {
        return cost.clone();
    }

    List<LinearConstraint> constraints() {
        return List.copyOf(constraints);
    }

    private double[] spread(LinearProgram p, double[] row) {
        double[] all = new double[columns];
        for (int j = 0; j < row.length; j++) {
            double c = row[j] * sign[j] * scale[j];
            all[column[j]] = c;
            if (Double.isInfinite(p.low[j]) && Double.isInfinite(p.high[j])) {
                all[column[j] + 1] = -c;
            }
        }
        return all;
    }

    double[] back(double[] y) {
        double[] x = new double[shift.length];
        for (int j = 0; j < x.length; j++) {
            int end = j + 1 < x.length ? column[j + 1] : columns;
            double v = end - column[j] == 2 ? y[column[j]] - y[column[j] + 1] : y[column[j]];
            x[j] = shift[j] + sign[j] * scale[j] * v;
        }
        return x;
    }

    private static double largest(double[][] rows, int j, double otherwise) {
        double most = 0;
        for (double[] r : rows) {
            most = Math.max(most, Math.abs(r[j]));
        }
        return most > 0 ? most : Math.abs(otherwise);
    }

    private static double powerOfTwo(double size) {
        return size > 0 ? Math.scalb(1.0, Math.getExponent(size)) : 1;
    }
}
