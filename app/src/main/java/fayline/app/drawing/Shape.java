package fayline.app.drawing;

import java.util.List;

/** One thing on a drawing. A renderer must know every kind. */
public sealed interface Shape {

    /**
     * An open line through points.
     *
     * @param points at least two
     * @param ink colour
     * @param widthMm stroke
     * @param dashed whether it is broken
     */
    record Polyline(List<Point> points, Ink ink, double widthMm, boolean dashed) implements Shape {
        /** Copies the list. */
        public Polyline {
            points = List.copyOf(points);
        }
    }

    /**
     * A closed area; a second ring within is a hole.
     *
     * @param rings corners of each ring
     * @param fill colour inside
     * @param edge colour of the edge
     * @param widthMm stroke of the edge
     */
    record Polygon(List<List<Point>> rings, Ink fill, Ink edge, double widthMm) implements Shape {
        /** Copies the lists. */
        public Polygon {
            rings = rings.stream().map(List::copyOf).toList();
        }

        /** A rectangle. */
        public static Polygon rectangle(
                double xMm, double yMm, double widthMm, double heightMm, Ink fill, Ink edge, double strokeMm) {
            return new Polygon(
                    List.of(List.of(
                            new Point(xMm, yMm),
                            new Point(xMm + widthMm, yMm),
                            new Point(xMm + widthMm, yMm + heightMm),
                            new Point(xMm, yMm + heightMm))),
                    fill,
                    edge,
                    strokeMm);
        }
    }

    /**
     * A round spot or ring.
     *
     * @param centre its centre
     * @param radiusMm its radius
     * @param fill colour inside
     * @param edge colour of the edge
     * @param widthMm stroke of the edge
     */
    record Disc(Point centre, double radiusMm, Ink fill, Ink edge, double widthMm) implements Shape {}

    /**
     * Letters.
     *
     * @param at where the base line begins, centres or ends
     * @param text what is written
     * @param sizeMm height of the letters' body
     * @param ink colour
     * @param anchor which end of the text stands at the point
     * @param bold whether it is bold
     */
    record Text(Point at, String text, double sizeMm, Ink ink, Anchor anchor, boolean bold) implements Shape {}

    /** Which end of a text stands at its point. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    /**
     * Parallel lines inside an area, at a true angle.
     *
     * @param rings the area, holes as further rings
     * @param angleDeg direction of the lines, anticlockwise from x
     * @param spacingMm distance of the lines
     * @param ink colour
     * @param widthMm stroke
     */
    record Hatch(List<List<Point>> rings, double angleDeg, double spacingMm, Ink ink, double widthMm) implements Shape {
        /** Copies the lists. */
        public Hatch {
            rings = rings.stream().map(List::copyOf).toList();
        }

        /** The lines, clipped to the area. */
        public List<Polyline> lines() {
            return HatchLines.of(this);
        }
    }

    /**
     * Dots inside an area, for core.
     *
     * @param rings the area, holes as further rings
     * @param spacingMm distance of the dots
     * @param radiusMm size of a dot
     * @param ink colour
     */
    record Dots(List<List<Point>> rings, double spacingMm, double radiusMm, Ink ink) implements Shape {
        /** Copies the lists. */
        public Dots {
            rings = rings.stream().map(List::copyOf).toList();
        }

        /** The centres of the dots that lie whole inside the area. */
        public List<Point> centres() {
            return HatchLines.dots(this);
        }
    }

    /**
     * Shapes that belong together and lead somewhere.
     *
     * @param label what it is, in words
     * @param link the page it leads to; empty for none
     * @param shapes what is drawn
     */
    record Group(String label, String link, List<Shape> shapes) implements Shape {
        /** Copies the list. */
        public Group {
            shapes = List.copyOf(shapes);
        }
    }

    /** A straight line. */
    static Polyline line(double x1Mm, double y1Mm, double x2Mm, double y2Mm, Ink ink, double widthMm) {
        return new Polyline(List.of(new Point(x1Mm, y1Mm), new Point(x2Mm, y2Mm)), ink, widthMm, false);
    }

    /** Letters that begin at a point. */
    static Text text(double xMm, double yMm, String text, double sizeMm, Ink ink) {
        return new Text(new Point(xMm, yMm), text, sizeMm, ink, Anchor.START, false);
    }

    /** Bold letters that begin at a point. */
    static Text bold(double xMm, double yMm, String text, double sizeMm, Ink ink) {
        return new Text(new Point(xMm, yMm), text, sizeMm, ink, Anchor.START, true);
    }
}
