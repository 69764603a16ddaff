package fayline.basis.geometry;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import java.util.List;

/**
 * A closed plane outline of straight edges with cut-outs; curves are already flattened by whoever read them.
 *
 * @param outer corners of the outer edge in order, not repeated at the end; at least three
 * @param cutouts corners of each cut-out
 */
public record Outline(List<Point> outer, List<List<Point>> cutouts) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if an edge has fewer than three corners
     */
    public Outline {
        outer = List.copyOf(outer);
        cutouts = cutouts.stream().map(List::copyOf).toList();
        if (outer.size() < 3 || cutouts.stream().anyMatch(c -> c.size() < 3)) {
            throw new IllegalArgumentException("an outline needs at least three corners");
        }
    }

    /** An outline without cut-outs. */
    public static Outline of(List<Point> outer) {
        return new Outline(outer, List.of());
    }

    /** The enclosed area less the cut-outs. */
    public Area area() {
        double a = Math.abs(signedArea(outer));
        for (List<Point> c : cutouts) {
            a -= Math.abs(signedArea(c));
        }
        return new Area(a);
    }

    /** The length of the outer edge. */
    public Length perimeter() {
        return new Length(length(outer));
    }

    /** The length of all edges, cut-outs included. */
    public Length edgeLength() {
        return new Length(
                length(outer) + cutouts.stream().mapToDouble(Outline::length).sum());
    }

    /** The outline seen from the other side: mirrored across the y axis, for the opposite hand. */
    public Outline mirrored() {
        return new Outline(flip(outer), cutouts.stream().map(Outline::flip).toList());
    }

    private static List<Point> flip(List<Point> ring) {
        return ring.stream().map(p -> new Point(-p.xM(), p.yM())).toList();
    }

    private static double signedArea(List<Point> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            twice += a.xM() * b.yM() - b.xM() * a.yM();
        }
        return twice / 2;
    }

    private static double length(List<Point> ring) {
        double sum = 0;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            sum += Math.hypot(b.xM() - a.xM(), b.yM() - a.yM());
        }
        return sum;
    }

    /**
     * A point of the plane.
     *
     * @param xM x in metres
     * @param yM y in metres
     */
    public record Point(double xM, double yM) {}
}
