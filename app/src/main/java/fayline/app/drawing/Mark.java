package fayline.app.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Small marks beside words, six millimetres square. The shape tells it without colour; the reasons stand in the guide's page
 * on marks.
 */
public enum Mark {
    /** Resin that is wet or curing: a drop. */
    WET,
    /** Hands at work: a solid block. */
    HANDS,
    /** A hold point: a diamond with a bar. */
    HOLD,
    /** Trouble: a triangle with a stroke. */
    TROUBLE,
    /** Done: a ring with a dot. */
    DONE,
    /** Waiting: an open square. */
    WAITING,
    /** Ready to begin: an arrow head. */
    READY,
    /** Kept on this phone, not yet in the record: the outline of a phone. */
    KEPT,
    /** In the record: a stack of entries. */
    RECORDED;

    /** The mark as a drawing. */
    public Drawing drawing() {
        return new Drawing(6, 6, name().toLowerCase(java.util.Locale.ROOT), shapes());
    }

    private List<Shape> shapes() {
        List<Shape> s = new ArrayList<>();
        switch (this) {
            case WET -> s.add(drop());
            case HANDS -> s.add(Shape.Polygon.rectangle(1, 1, 4, 4, Ink.HANDS, Ink.INK, 0.3));
            case HOLD -> {
                s.add(ring(Ink.HOLD, new Point(3, 0.4), new Point(5.6, 3), new Point(3, 5.6), new Point(0.4, 3)));
                s.add(Shape.line(1.8, 3, 4.2, 3, Ink.PAPER, 0.9));
            }
            case TROUBLE -> {
                s.add(ring(Ink.TROUBLE, new Point(3, 0.5), new Point(5.7, 5.4), new Point(0.3, 5.4)));
                s.add(Shape.line(3, 2.2, 3, 3.9, Ink.PAPER, 0.7));
                s.add(Shape.line(3, 4.3, 3, 4.9, Ink.PAPER, 0.7));
            }
            case DONE -> {
                s.add(new Shape.Disc(new Point(3, 3), 2.2, Ink.NONE, Ink.DONE, 0.5));
                s.add(new Shape.Disc(new Point(3, 3), 0.9, Ink.DONE, Ink.NONE, 0));
            }
            case WAITING -> s.add(Shape.Polygon.rectangle(1.2, 1.2, 3.6, 3.6, Ink.NONE, Ink.QUIET, 0.4));
            case READY ->
                s.add(new Shape.Polyline(
                        List.of(new Point(2, 1), new Point(4.6, 3), new Point(2, 5)), Ink.HANDS, 0.8, false));
            case KEPT -> {
                s.add(Shape.Polygon.rectangle(1.5, 0.6, 3, 4.8, Ink.NONE, Ink.INK, 0.5));
                s.add(Shape.line(2.4, 4.4, 3.6, 4.4, Ink.INK, 0.5));
            }
            case RECORDED -> {
                for (double y : new double[] {1.3, 3, 4.7}) {
                    s.add(Shape.line(0.8, y, 5.2, y, Ink.INK, 1.1));
                }
            }
        }
        return s;
    }

    private static Shape ring(Ink fill, Point... corners) {
        return new Shape.Polygon(List.of(List.of(corners)), fill, Ink.INK, 0.3);
    }

    private static Shape drop() {
        List<Point> edge = new ArrayList<>();
        edge.add(new Point(3, 0.4));
        // a round body under a tip, flattened to 15 degree steps
        for (int deg = -30; deg <= 210; deg += 15) {
            double a = Math.toRadians(deg);
            edge.add(new Point(3 + 1.9 * Math.cos(a), 3.6 + 1.9 * Math.sin(a)));
        }
        return new Shape.Polygon(List.of(edge), Ink.WET, Ink.INK, 0.3);
    }
}
