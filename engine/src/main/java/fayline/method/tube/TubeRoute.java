package fayline.method.tube;

import java.util.List;

/**
 * A route to bend.
 *
 * @param points its points in order, at least two, no two neighbours in one place
 * @param radiusM radius of every bend at the centreline; positive
 * @param leastStraightM the shortest straight that the bender can hold between two bends; 0 or more
 */
public record TubeRoute(List<RoutePoint> points, double radiusM, double leastStraightM) {
    /**
     * Copies the points.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public TubeRoute {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a route has at least two points, found " + points.size());
        }
        if (!(radiusM > 0 && Double.isFinite(radiusM))) {
            throw new IllegalArgumentException("a bend has a radius above nought, found " + radiusM + " m");
        }
        if (!(leastStraightM >= 0 && Double.isFinite(leastStraightM))) {
            throw new IllegalArgumentException(
                    "the shortest straight is nought or more, found " + leastStraightM + " m");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).to(points.get(i - 1)) > 0)) {
                throw new IllegalArgumentException("points " + i + " and " + (i + 1) + " are in one place");
            }
        }
    }

    /** The route of the other hand: mirrored in the plane x-z. */
    public TubeRoute mirrored() {
        return new TubeRoute(
                points.stream()
                        .map(p -> new RoutePoint(p.xM(), -p.yM(), p.zM()))
                        .toList(),
                radiusM,
                leastStraightM);
    }
}
