package fayline.method.tube;

/**
 * A point of a route: where two straight centrelines meet, or an end.
 *
 * @param xM metres
 * @param yM metres
 * @param zM metres
 */
public record RoutePoint(double xM, double yM, double zM) {
    /** Where every route drawn from a bend table begins. */
    public static final RoutePoint ORIGIN = new RoutePoint(0, 0, 0);

    /**
     * Refuses what is no place.
     *
     * @throws IllegalArgumentException if a coordinate is not finite
     */
    public RoutePoint {
        if (!Double.isFinite(xM + yM + zM)) {
            throw new IllegalArgumentException(
                    "a point has three finite coordinates, found " + xM + ", " + yM + ", " + zM);
        }
    }

    /** How far another point is, in metres. */
    public double to(RoutePoint other) {
        return minus(other).length();
    }

    RoutePoint minus(RoutePoint o) {
        return new RoutePoint(xM - o.xM, yM - o.yM, zM - o.zM);
    }

    RoutePoint plus(RoutePoint o, double times) {
        return new RoutePoint(xM + times * o.xM, yM + times * o.yM, zM + times * o.zM);
    }

    RoutePoint times(double factor) {
        return new RoutePoint(factor * xM, factor * yM, factor * zM);
    }

    double dot(RoutePoint o) {
        return xM * o.xM + yM * o.yM + zM * o.zM;
    }

    RoutePoint cross(RoutePoint o) {
        return new RoutePoint(yM * o.zM - zM * o.yM, zM * o.xM - xM * o.zM, xM * o.yM - yM * o.xM);
    }

    double length() {
        return Math.sqrt(dot(this));
    }

    RoutePoint unit() {
        return times(1 / length());
    }

    /** Turned about a unit axis by the right hand (Rodrigues). */
    RoutePoint turned(RoutePoint axis, double angleRad) {
        return times(Math.cos(angleRad))
                .plus(axis.cross(this), Math.sin(angleRad))
                .plus(axis, axis.dot(this) * (1 - Math.cos(angleRad)));
    }
}
