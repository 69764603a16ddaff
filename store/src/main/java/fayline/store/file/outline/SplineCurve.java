package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A rational B-spline by knots, control points and weights; evaluated by de Boor's recurrence on homogeneous coordinates
 * (published: C. de Boor, A Practical Guide to Splines).
 *
 * @param degree its degree, 1 to 12
 * @param knots knots, not falling; as many as control points and degree and one
 * @param control control points
 * @param weights a weight for each, all more than nought
 */
record SplineCurve(int degree, List<Double> knots, List<Point> control, List<Double> weights) {
    SplineCurve {
        knots = List.copyOf(knots);
        control = List.copyOf(control);
        weights = List.copyOf(weights);
    }

    /** What is wrong with it; empty if nothing is. */
    String fault() {
        if (degree < 1 || degree > 12) {
            return "degree " + degree;
        }
        if (control.size() <= degree || knots.size() != control.size() + degree + 1) {
            return control.size() + " control points with " + knots.size() + " knots at degree " + degree;
        }
        if (weights.size() != control.size() || weights.stream().anyMatch(w -> !(w > 0))) {
            return "weights that are not one to each control point and more than nought";
        }
        for (int i = 1; i < knots.size(); i++) {
            if (knots.get(i) < knots.get(i - 1)) {
                return "falling knots";
            }
        }
        return knots.get(degree) < knots.get(control.size()) ? "" : "knots without a span";
    }

    /** Points from its beginning to its end. */
    List<Point> flatten() {
        List<Point> points = new ArrayList<>();
        for (int span = degree; span < control.size(); span++) {
            double from = knots.get(span);
            double to = knots.get(span + 1);
            if (to > from) {
                int k = span;
                List<Point> piece = Curve.flatten(t -> at(k, t), from, to);
                points.addAll(points.isEmpty() ? piece : piece.subList(1, piece.size()));
            }
        }
        return points;
    }

    private Point at(int span, double t) {
        double[][] d = new double[degree + 1][];
        for (int j = 0; j <= degree; j++) {
            int i = span - degree + j;
            double w = weights.get(i);
            d[j] = new double[] {control.get(i).xM() * w, control.get(i).yM() * w, w};
        }
        for (int r = 1; r <= degree; r++) {
            for (int j = degree; j >= r; j--) {
                int i = span - degree + j;
                double low = knots.get(i);
                double wide = knots.get(i + degree - r + 1) - low;
                double share = wide == 0 ? 0 : (t - low) / wide;
                for (int c = 0; c < 3; c++) {
                    d[j][c] = (1 - share) * d[j - 1][c] + share * d[j][c];
                }
            }
        }
        return new Point(d[degree][0] / d[degree][2], d[degree][1] / d[degree][2]);
    }
}
