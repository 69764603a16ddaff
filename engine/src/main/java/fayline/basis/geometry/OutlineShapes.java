package fayline.basis.geometry;

import fayline.basis.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Growing an outline outward and asking how two outlines lie to each other; lengths in metres, angles left of x positive. */
public final class OutlineShapes {
    private static final double MITRE_LIMIT = 5;

    private OutlineShapes() {}

    /**
     * The outer edge grown outward by a width, corners mitred; cut-outs are kept.
     *
     * @param outline a simple outline
     * @param width how far; not negative
     * @return empty where the outline crosses itself
     */
    public static Optional<Outline> grown(Outline outline, Length width) {
        Polygon polygon = polygon(outline.outer());
        if (!polygon.isValid()) {
            return Optional.empty();
        }
        if (width.metres() == 0) {
            return Optional.of(outline);
        }
        BufferParameters corners = new BufferParameters(
                BufferParameters.DEFAULT_QUADRANT_SEGMENTS,
                BufferParameters.CAP_FLAT,
                BufferParameters.JOIN_MITRE,
                MITRE_LIMIT);
        Geometry grown = BufferOp.bufferOp(polygon, width.metres(), corners);
        if (!(grown instanceof Polygon whole)) {
            return Optional.empty();
        }
        List<Outline.Point> ring = new ArrayList<>();
        Coordinate[] all = whole.getExteriorRing().reverse().getCoordinates();
        for (int i = 0; i < all.length - 1; i++) {
            ring.add(new Outline.Point(all[i].x, all[i].y));
        }
        return Optional.of(new Outline(ring, outline.cutouts()));
    }

    /** Whether no edge of a ring crosses another of it. */
    public static boolean simple(List<Outline.Point> ring) {
        return polygon(ring).isValid();
    }

    /** Whether one ring lies wholly inside another. */
    public static boolean contains(List<Outline.Point> outer, List<Outline.Point> inner) {
        return polygon(outer).contains(polygon(inner));
    }

    /** Whether two rings share any point. */
    public static boolean touch(List<Outline.Point> one, List<Outline.Point> other) {
        return polygon(one).intersects(polygon(other));
    }

    private static Polygon polygon(List<Outline.Point> ring) {
        Coordinate[] c = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            c[i] = new Coordinate(ring.get(i).xM(), ring.get(i).yM());
        }
        c[ring.size()] = c[0].copy();
        return new GeometryFactory().createPolygon(c);
    }
}
