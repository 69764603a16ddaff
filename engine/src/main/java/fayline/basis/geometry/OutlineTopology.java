package fayline.basis.geometry;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Whether an outline is a shape at all. Works on a JTS polygon. */
public final class OutlineTopology {
    private OutlineTopology() {}

    /**
     * What keeps an outline from being a plane shape.
     *
     * @param place where
     * @param what what is wrong, as {@code its edge crosses itself}
     */
    public record Fault(Point place, String what) {}

    /**
     * Tells whether an outline is a plane shape: its edge crosses nothing, it has an area, and its cut-outs lie within it
     * and apart from each other.
     */
    public static Optional<Fault> fault(Outline outline) {
        for (List<Point> ring : rings(outline)) {
            if (ring.stream().distinct().count() < 3) {
                return Optional.of(new Fault(ring.get(0), "it has no area"));
            }
        }
        TopologyValidationError error = new IsValidOp(polygon(outline)).getValidationError();
        if (error == null) {
            return Optional.empty();
        }
        Coordinate c = error.getCoordinate();
        Point place = c == null ? outline.outer().get(0) : new Point(c.x, c.y);
        return Optional.of(new Fault(place, words(error.getErrorType())));
    }

    private static String words(int type) {
        return switch (type) {
            case TopologyValidationError.SELF_INTERSECTION, TopologyValidationError.RING_SELF_INTERSECTION ->
                "its edge crosses or touches itself";
            case TopologyValidationError.HOLE_OUTSIDE_SHELL -> "a cut-out lies outside it";
            case TopologyValidationError.NESTED_HOLES -> "a cut-out lies within another";
            case TopologyValidationError.DISCONNECTED_INTERIOR -> "cut-outs part it in two";
            default -> "it has no area";
        };
    }

    private static List<List<Point>> rings(Outline outline) {
        List<List<Point>> rings = new ArrayList<>();
        rings.add(outline.outer());
        rings.addAll(outline.cutouts());
        return rings;
    }

    private static Polygon polygon(Outline outline) {
        GeometryFactory factory = new GeometryFactory();
        LinearRing[] holes =
                outline.cutouts().stream().map(c -> ring(factory, c)).toArray(LinearRing[]::new);
        return factory.createPolygon(ring(factory, outline.outer()), holes);
    }

    private static LinearRing ring(GeometryFactory factory, List<Point> points) {
        Coordinate[] c = new Coordinate[points.size() + 1];
        for (int i = 0; i < c.length; i++) {
            Point p = points.get(i % points.size());
            c[i] = new Coordinate(p.xM(), p.yM());
        }
        return factory.createLinearRing(c);
    }
}
