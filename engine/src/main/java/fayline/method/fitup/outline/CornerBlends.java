package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Tangent arcs at the corners of a polygon that runs counter-clockwise. At a corner with interior angle φ and radius r the
 * tangent length is r/|tan(φ/2)| and the arc turns by π − φ: to the left at an outward corner, to the right at a reflex one.
 */
final class CornerBlends {
    private static final double SLACK_MM = 1e-9;

    private final List<Spot> corners;
    private final List<Double> radii;
    private final double[] turns;
    private final double[] tangents;

    CornerBlends(RoundedPolygon polygon) {
        corners = polygon.corners();
        radii = polygon.radiiMm();
        int n = corners.size();
        turns = new double[n];
        tangents = new double[n];
        for (int i = 0; i < n; i++) {
            Spot a = corners.get((i + n - 1) % n);
            Spot b = corners.get(i);
            Spot c = corners.get((i + 1) % n);
            double ux = b.xMm() - a.xMm();
            double uy = b.yMm() - a.yMm();
            double vx = c.xMm() - b.xMm();
            double vy = c.yMm() - b.yMm();
            turns[i] = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
            tangents[i] = radii.get(i) * Math.abs(Math.tan(turns[i] / 2));
        }
    }

    /** The place in the list of the first corner whose blend does not fit; of two on one side the one that takes more. */
    OptionalInt tooLarge() {
        int n = corners.size();
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            if (tangents[i] + tangents[j] > sideMm(i) + SLACK_MM) {
                return OptionalInt.of(tangents[i] >= tangents[j] ? i : j);
            }
        }
        return OptionalInt.empty();
    }

    double sideMm(int i) {
        return corners.get(i).distanceMm(corners.get((i + 1) % corners.size()));
    }

    double tangentMm(int i) {
        return tangents[i];
    }

    List<Piece> pieces() {
        int n = corners.size();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            Spot a = corners.get(i);
            Spot b = corners.get(j);
            double side = sideMm(i);
            double tx = (b.xMm() - a.xMm()) / side;
            double ty = (b.yMm() - a.yMm()) / side;
            Spot from = a.plus(tangents[i] * tx, tangents[i] * ty);
            double length = side - tangents[i] - tangents[j];
            if (length > SLACK_MM) {
                pieces.add(new Piece("E" + (i + 1), from, tx, ty, length, 0));
            }
            double arc = radii.get(j) * Math.abs(turns[j]);
            if (arc > SLACK_MM) {
                Spot to = b.plus(-tangents[j] * tx, -tangents[j] * ty);
                pieces.add(new Piece("C" + (j + 1), to, tx, ty, arc, Math.signum(turns[j]) / radii.get(j)));
            }
        }
        return pieces;
    }
}
