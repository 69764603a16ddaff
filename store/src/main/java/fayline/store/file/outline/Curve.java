package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/** Curves as points so close that no chord is further from its curve than the tolerance. All lengths in metres. */
final class Curve {
    /** How far a chord may be from its curve. */
    static final double TOLERANCE_M = 0.05e-3;

    private static final int PIECES = 8;
    private static final int MAX_DEPTH = 14;

    private Curve() {}

    /** Points along a curve from one parameter to another, both ends included. */
    static List<Point> flatten(DoubleFunction<Point> curve, double from, double to) {
        List<Point> points = new ArrayList<>();
        points.add(curve.apply(from));
        for (int i = 0; i < PIECES; i++) {
            double a = from + (to - from) * i / PIECES;
            double b = i == PIECES - 1 ? to : from + (to - from) * (i + 1) / PIECES;
            halve(curve, new double[] {a, b}, new Point[] {curve.apply(a), curve.apply(b)}, 0, points);
        }
        return points;
    }

    private static void halve(DoubleFunction<Point> curve, double[] t, Point[] ends, int depth, List<Point> points) {
        Point a = ends[0];
        Point b = ends[1];
        boolean straight = true;
        for (double share : new double[] {0.25, 0.5, 0.75}) {
            straight &= distance(curve.apply(t[0] + share * (t[1] - t[0])), a, b) <= 0.8 * TOLERANCE_M;
        }
        if (straight || depth >= MAX_DEPTH) {
            points.add(b);
            return;
        }
        double mid = (t[0] + t[1]) / 2;
        Point m = curve.apply(mid);
        halve(curve, new double[] {t[0], mid}, new Point[] {a, m}, depth + 1, points);
        halve(curve, new double[] {mid, t[1]}, new Point[] {m, b}, depth + 1, points);
    }

    private static double distance(Point p, Point a, Point b) {
        double dx = b.xM() - a.xM();
        double dy = b.yM() - a.yM();
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((p.xM() - a.xM()) * dx + (p.yM() - a.yM()) * dy) / square;
        double held = Math.max(0, Math.min(1, along));
        return Math.hypot(p.xM() - a.xM() - held * dx, p.yM() - a.yM() - held * dy);
    }

    /** A circular arc; angles in radians, the turn positive anticlockwise. */
    static List<Point> arc(Point centre, double radiusM, double from, double turn) {
        return flatten(
                a -> new Point(centre.xM() + radiusM * Math.cos(a), centre.yM() + radiusM * Math.sin(a)),
                from,
                from + turn);
    }

    /** An arc of a polyline by its bulge: the tangent of a quarter of its turn, positive anticlockwise. */
    static List<Point> bulge(Point a, Point b, double bulge) {
        double dx = b.xM() - a.xM();
        double dy = b.yM() - a.yM();
        double chord = Math.hypot(dx, dy);
        if (Math.abs(bulge) < 1e-12 || chord == 0) {
            return List.of(a, b);
        }
        double turn = 4 * Math.atan(bulge);
        double radius = chord / (2 * Math.sin(turn / 2));
        double height = radius * Math.cos(turn / 2);
        Point centre =
                new Point((a.xM() + b.xM()) / 2 - height * dy / chord, (a.yM() + b.yM()) / 2 + height * dx / chord);
        double start = Math.atan2(a.yM() - centre.yM(), a.xM() - centre.xM());
        List<Point> points = new ArrayList<>(arc(centre, Math.abs(radius), start, turn));
        points.set(0, a);
        points.set(points.size() - 1, b);
        return points;
    }
}
