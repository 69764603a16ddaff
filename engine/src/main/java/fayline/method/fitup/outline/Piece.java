package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.List;

/**
 * A straight or an arc of the outline.
 *
 * @param run the run it belongs to
 * @param start its first point
 * @param tx x component of the unit tangent there
 * @param ty y component
 * @param lengthMm its length
 * @param curvature 1/radius, positive where it turns left (an outward corner), 0 for a straight
 */
record Piece(String run, Spot start, double tx, double ty, double lengthMm, double curvature) {
    static Piece straight(String run, Spot from, Spot to) {
        double length = from.distanceMm(to);
        return new Piece(run, from, (to.xMm() - from.xMm()) / length, (to.yMm() - from.yMm()) / length, length, 0);
    }

    Spot at(double u) {
        if (curvature == 0) {
            return start.plus(u * tx, u * ty);
        }
        double a = curvature * u;
        double ahead = Math.sin(a) / curvature;
        double half = Math.sin(a / 2);
        double aside = 2 * half * half / curvature;
        return start.plus(ahead * tx - aside * ty, ahead * ty + aside * tx);
    }

    double directionXAt(double u) {
        return Math.cos(curvature * u) * tx - Math.sin(curvature * u) * ty;
    }

    double directionYAt(double u) {
        return Math.cos(curvature * u) * ty + Math.sin(curvature * u) * tx;
    }

    /** How far along it the nearest point to a place lies. */
    double nearest(Spot place) {
        double dx = place.xMm() - start.xMm();
        double dy = place.yMm() - start.yMm();
        if (curvature == 0) {
            return Math.max(0, Math.min(lengthMm, dx * tx + dy * ty));
        }
        double radius = 1 / curvature;
        // from the centre: the start lies at (ty, -tx) * radius, the place at (dx, dy) plus that
        double rx = ty * radius;
        double ry = -tx * radius;
        double px = dx + rx;
        double py = dy + ry;
        double angle = Math.atan2(rx * py - ry * px, rx * px + ry * py);
        double u = angle * radius;
        if (u < 0) {
            u += 2 * Math.PI * Math.abs(radius);
        }
        if (u <= lengthMm) {
            return u;
        }
        return place.distanceMm(start) <= place.distanceMm(at(lengthMm)) ? 0 : lengthMm;
    }

    /** Places along it at which to draw so that no chord is farther from the curve than an error; both ends included. */
    List<Double> steps(double chordErrorMm) {
        int n = 1;
        if (curvature != 0) {
            double sweep = Math.abs(curvature) * lengthMm;
            double versine = Math.min(1, chordErrorMm * Math.abs(curvature));
            n = Math.max(1, (int) Math.ceil(sweep / (2 * Math.acos(1 - versine)) - 1e-9));
        }
        List<Double> steps = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            steps.add(lengthMm * i / n);
        }
        return steps;
    }
}
