package fayline.method.tube;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Straights, rotations and angles of a route. With t the unit vectors of its straight centrelines, a bend turns by
 * atan2(|t1 x t2|, t1 . t2) and takes R tan(a/2) off the straight at both its sides; the tube turns before a bend by the angle
 * between the normals of this bend and the last, right hand positive along the feed (vector geometry).
 */
public final class BendTableCalculator {
    /** A way-point that turns the line less than this is passed over: a rotation would mean nothing there. */
    public static final double LEAST_BEND_RAD = Math.toRadians(0.1);

    /** Near a full return the centrelines do not meet. */
    public static final double MOST_BEND_RAD = Math.toRadians(175);

    /** What rounding may leave of a straight. */
    private static final double ROUNDING_M = 1e-9;

    private BendTableCalculator() {}

    /** Reckons a route. */
    public static BentTube calculate(TubeRoute route) {
        List<Finding> findings = new ArrayList<>();
        List<RoutePoint> points = corners(route.points(), findings);
        List<RoutePoint> legs = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            legs.add(points.get(i).minus(points.get(i - 1)).unit());
        }
        List<Double> angles = new ArrayList<>();
        List<Double> rotations = new ArrayList<>();
        for (int i = 1; i < legs.size(); i++) {
            double angle = between(legs.get(i - 1), legs.get(i));
            if (angle > MOST_BEND_RAD) {
                findings.add(stop(String.format(
                        Locale.ROOT,
                        "The line turns back by %.1f deg at point %d: near 180 deg its centrelines do not meet. Make it of two bends.",
                        Math.toDegrees(angle),
                        1 + route.points().indexOf(points.get(i)))));
            }
            angles.add(angle);
            rotations.add(i == 1 ? 0.0 : rotation(legs, i));
        }
        if (findings.stream().anyMatch(f -> f.severity() == Severity.STOP)) {
            return new BentTube(Optional.empty(), 0, findings);
        }
        List<Double> straights = straights(points, angles, route.radiusM());
        double shortM = tooShort(straights, route, points, findings);
        return new BentTube(
                Optional.of(new BendTable(straights, rotations, angles, route.radiusM())), shortM, findings);
    }

    /**
     * The points again from a bender's numbers: from the origin along x, the first bend towards y.
     *
     * @return one point more than there are straights
     */
    public static List<RoutePoint> points(BendTable table) {
        List<RoutePoint> points = new ArrayList<>(List.of(RoutePoint.ORIGIN));
        RoutePoint along = new RoutePoint(1, 0, 0);
        RoutePoint normal = new RoutePoint(0, 0, 1);
        RoutePoint at = RoutePoint.ORIGIN;
        double before = 0;
        for (int i = 0; i <= table.bends(); i++) {
            double after = i < table.bends()
                    ? tangentM(table.radiusM(), table.anglesRad().get(i))
                    : 0;
            at = at.plus(along, before + table.straightsM().get(i) + after);
            points.add(at);
            if (i < table.bends()) {
                normal = normal.turned(along, table.rotationsRad().get(i));
                along = along.turned(normal, table.anglesRad().get(i)).unit();
            }
            before = after;
        }
        return List.copyOf(points);
    }

    /** How much of a straight a bend takes at each of its sides, in metres: the set-back R tan(a/2). */
    public static double tangentM(double radiusM, double angleRad) {
        return radiusM * Math.tan(angleRad / 2);
    }

    /** How much shorter the tube is than the way round the corner, in metres: 2 R tan(a/2) - R a. */
    public static double gainM(double radiusM, double angleRad) {
        return 2 * tangentM(radiusM, angleRad) - radiusM * angleRad;
    }

    private static List<RoutePoint> corners(List<RoutePoint> all, List<Finding> findings) {
        List<RoutePoint> kept = new ArrayList<>(List.of(all.get(0)));
        for (int i = 1; i < all.size() - 1; i++) {
            RoutePoint in = all.get(i).minus(kept.get(kept.size() - 1)).unit();
            if (between(in, all.get(i + 1).minus(all.get(i)).unit()) < LEAST_BEND_RAD) {
                findings.add(new Finding(
                        Severity.NOTE,
                        "points",
                        "Point " + (i + 1) + " lies on a straight and is passed over.",
                        "common practice, no source"));
            } else {
                kept.add(all.get(i));
            }
        }
        kept.add(all.get(all.size() - 1));
        return kept;
    }

    private static double between(RoutePoint a, RoutePoint b) {
        return Math.atan2(a.cross(b).length(), a.dot(b));
    }

    private static double rotation(List<RoutePoint> legs, int i) {
        RoutePoint last = legs.get(i - 2).cross(legs.get(i - 1)).unit();
        RoutePoint next = legs.get(i - 1).cross(legs.get(i)).unit();
        double turn = Math.atan2(last.cross(next).dot(legs.get(i - 1)), last.dot(next));
        return turn <= -Math.PI + 1e-12 ? Math.PI : turn + 0.0;
    }

    private static List<Double> straights(List<RoutePoint> points, List<Double> angles, double radiusM) {
        List<Double> straights = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            double before = i >= 2 ? tangentM(radiusM, angles.get(i - 2)) : 0;
            double after = i - 1 < angles.size() ? tangentM(radiusM, angles.get(i - 1)) : 0;
            straights.add(points.get(i).to(points.get(i - 1)) - before - after);
        }
        return straights;
    }

    private static double tooShort(
            List<Double> straights, TubeRoute route, List<RoutePoint> corners, List<Finding> findings) {
        double worst = 0;
        for (int i = 0; i < straights.size(); i++) {
            boolean between = i > 0 && i < straights.size() - 1;
            double needed = between ? route.leastStraightM() : 0;
            double missing = needed - straights.get(i);
            if (missing > ROUNDING_M) {
                worst = Math.max(worst, missing);
                RoutePoint from = corners.get(i);
                RoutePoint to = corners.get(i + 1);
                double way = from.to(to);
                findings.add(stop(String.format(
                        Locale.ROOT,
                        "From point %d to point %d there are %.1f mm; %s %.1f mm of it%s: %.1f mm are missing.",
                        1 + route.points().indexOf(from),
                        1 + route.points().lastIndexOf(to),
                        1e3 * way,
                        between ? "the bends at both ends take" : "the bend takes",
                        1e3 * (way - straights.get(i)),
                        needed > 0
                                ? String.format(
                                        Locale.ROOT,
                                        ", and the bender needs %.1f mm straight between them",
                                        1e3 * needed)
                                : "",
                        1e3 * missing)));
            }
        }
        return worst;
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "points", sentence, "vector geometry");
    }
}
