package fayline.app.drawing.fit;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.fit.SprungPicture.Bar;
import fayline.app.drawing.fit.SprungPicture.State;
import fayline.method.fitup.frame.FramePoint;
import java.util.ArrayList;
import java.util.List;

/**
 * A frame drawn to scale where it belongs, with its part free (broken), under the clamps (thin) and after release (thick), shifts a
 * stated number of times as large; clamp forces as arrows from their places, as long as they are strong. What lies out of the
 * plane is drawn slanted.
 */
public final class SprungDrawing {
    static final double WIDTH_MM = 94;
    /** By how much a place goes right and up for each mm that it lies out of the plane. */
    static final double SLANT = 0.35;
    /** Length of the arrow of the largest force. */
    static final double ARROW_MM = 12;

    private static final double LEAST_ARROW_MM = 3.2;
    private static final double SIDE_MM = 17;
    private static final double ABOVE_MM = 17;
    private static final double MOST_HEIGHT_MM = 62;
    private static final double REACH_MM = 7;
    private static final double LETTERS_MM = 3;
    private static final double ROW_MM = 4.4;

    private final SprungPicture picture;
    private final List<Shape> shapes = new ArrayList<>();
    private final double scale;
    private final double left;
    private final double top;
    private final double factor;
    private final double footOfFrameMm;
    private double footMm;

    private SprungDrawing(SprungPicture picture) {
        this.picture = picture;
        double lowX = Double.POSITIVE_INFINITY;
        double highX = Double.NEGATIVE_INFINITY;
        double lowY = Double.POSITIVE_INFINITY;
        double highY = Double.NEGATIVE_INFINITY;
        for (Bar b : picture.bars()) {
            for (FramePoint p : b.places()) {
                lowX = Math.min(lowX, slantedX(p));
                highX = Math.max(highX, slantedX(p));
                lowY = Math.min(lowY, slantedY(p));
                highY = Math.max(highY, slantedY(p));
            }
        }
        double wide = Math.max(highX - lowX, 1e-3);
        double high = Math.max(highY - lowY, 1e-3);
        this.scale = Math.min((WIDTH_MM - 2 * SIDE_MM) / wide, MOST_HEIGHT_MM / high);
        this.left = (WIDTH_MM - wide * scale) / 2 - lowX * scale;
        this.top = ABOVE_MM + highY * scale;
        this.factor = GapFrame.factor(REACH_MM / scale, picture.farthestMm());
        this.footOfFrameMm = ABOVE_MM + high * scale;
        this.footMm = footOfFrameMm + ABOVE_MM;
    }

    /** Draws; there must be a beam. */
    public static Drawing of(SprungPicture picture) {
        return new SprungDrawing(picture).draw();
    }

    /** How many times as large shifts are drawn. */
    static double factor(SprungPicture picture) {
        return new SprungDrawing(picture).factor;
    }

    private static double slantedX(FramePoint p) {
        return p.xMm() + SLANT * p.zMm();
    }

    private static double slantedY(FramePoint p) {
        return p.yMm() + SLANT * p.zMm();
    }

    private Point on(FramePoint p) {
        return new Point(left + slantedX(p) * scale, top - slantedY(p) * scale);
    }

    private Point shifted(FramePoint p, FramePoint shift) {
        return on(new FramePoint(
                p.xMm() + factor * shift.xMm(), p.yMm() + factor * shift.yMm(), p.zMm() + factor * shift.zMm()));
    }

    private Drawing draw() {
        for (State s : List.of(State.CARRIER, State.FREE, State.CLAMPED, State.PART_AFTER, State.CARRIER_AFTER)) {
            picture.bars().stream().filter(b -> b.state() == s).forEach(b -> shapes.add(line(b)));
        }
        picture.joints()
                .forEach(j -> shapes.add(new Shape.Disc(
                        on(j.at()),
                        j.open() ? 1.3 : 0.8,
                        Ink.PAPER,
                        j.open() ? Ink.TROUBLE : Ink.INK,
                        j.open() ? 0.6 : 0.3)));
        picture.pins().forEach(this::pin);
        picture.forces().forEach(this::force);
        key();
        return new Drawing(WIDTH_MM, footMm + 2, spoken(), shapes);
    }

    private Shape line(Bar b) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < b.places().size(); i++) {
            points.add(shifted(b.places().get(i), b.shifts().get(i)));
        }
        return sample(b.state(), points);
    }

    private static Shape sample(State state, List<Point> points) {
        return switch (state) {
            case CARRIER -> new Shape.Polyline(points, Ink.NIGHT, 1.6, false);
            case FREE -> new Shape.Polyline(points, Ink.QUIET, 0.4, true);
            case CLAMPED -> new Shape.Polyline(points, Ink.INK, 0.25, false);
            case PART_AFTER -> new Shape.Polyline(points, Ink.HANDS, 0.45, false);
            case CARRIER_AFTER -> new Shape.Polyline(points, Ink.INK, 0.75, false);
        };
    }

    private void pin(SprungPicture.Pin p) {
        Point at = on(p.at());
        Ink ink = p.binds() ? Ink.TROUBLE : Ink.INK;
        shapes.add(Shape.line(at.xMm() - 1.2, at.yMm() - 1.2, at.xMm() + 1.2, at.yMm() + 1.2, ink, 0.4));
        shapes.add(Shape.line(at.xMm() - 1.2, at.yMm() + 1.2, at.xMm() + 1.2, at.yMm() - 1.2, ink, 0.4));
        boolean right = at.xMm() > WIDTH_MM / 2;
        shapes.add(new Shape.Text(
                at.plus(right ? 2 : -2, 1),
                p.label() + (p.binds() ? " binds" : ""),
                LETTERS_MM,
                ink,
                right ? Shape.Anchor.START : Shape.Anchor.END,
                p.binds()));
    }

    /** An arrow at the clamp's place that points the way the part is forced, on the side away from the middle. */
    private void force(SprungPicture.Force f) {
        double most = picture.largestN();
        Point at = on(f.at());
        if (!(most > 0) || f.newtons() == 0) {
            return;
        }
        double sign = Math.signum(f.newtons());
        double dx = sign * slantedX(f.way());
        double dy = -sign * slantedY(f.way());
        double size = Math.hypot(dx, dy);
        dx /= size;
        dy /= size;
        double length = Math.max(LEAST_ARROW_MM, ARROW_MM * Math.abs(f.newtons()) / most);
        boolean outwards = (at.xMm() - middle().xMm()) * dx + (at.yMm() - middle().yMm()) * dy > 0;
        Point head = outwards ? at.plus(dx * length, dy * length) : at;
        Point tail = outwards ? at : at.plus(-dx * length, -dy * length);
        shapes.add(Shape.line(tail.xMm(), tail.yMm(), head.xMm(), head.yMm(), Ink.HOLD, 0.5));
        shapes.add(new Shape.Polygon(
                List.of(List.of(
                        head,
                        head.plus(-1.9 * dx - 0.9 * dy, -1.9 * dy + 0.9 * dx),
                        head.plus(-1.9 * dx + 0.9 * dy, -1.9 * dy - 0.9 * dx))),
                Ink.HOLD,
                Ink.NONE,
                0));
        double way = outwards ? 1 : -1;
        words(f.label(), outwards ? head : tail, way * dx, way * dy);
    }

    private void words(String label, Point end, double dx, double dy) {
        boolean across = Math.abs(dx) > Math.abs(dy);
        Shape.Anchor anchor = !across ? Shape.Anchor.MIDDLE : dx > 0 ? Shape.Anchor.START : Shape.Anchor.END;
        Point at = across ? end.plus(dx > 0 ? 1 : -1, 1) : end.plus(0, dy > 0 ? 3.4 : -1.2);
        shapes.add(new Shape.Text(at, label, LETTERS_MM, Ink.HOLD, anchor, true));
    }

    private Point middle() {
        return new Point(WIDTH_MM / 2, (footOfFrameMm + ABOVE_MM) / 2);
    }

    private void key() {
        row("Shifts drawn " + SvgRenderer.number(factor) + " times as large as they are.");
        if (picture.deep()) {
            row("What lies out of the plane is drawn slanted.");
        }
        sample(State.CARRIER, "what carries it, before");
        sample(State.FREE, "the part, free");
        sample(State.CLAMPED, "the part, clamped");
        sample(State.PART_AFTER, "the part, after release");
        sample(State.CARRIER_AFTER, "what carries it, after release");
        if (!picture.forces().isEmpty()) {
            row("Arrows: what each clamp does to the part.");
        }
    }

    private void row(String words) {
        footMm += ROW_MM;
        shapes.add(Shape.text(2, footMm, words, LETTERS_MM, Ink.INK));
    }

    private void sample(State state, String words) {
        if (picture.bars().stream().anyMatch(b -> b.state() == state)) {
            double at = footMm + ROW_MM - 1;
            shapes.add(sample(state, List.of(new Point(2, at), new Point(10, at))));
            footMm += ROW_MM;
            shapes.add(Shape.text(12, footMm, words, LETTERS_MM, Ink.INK));
        }
    }

    private String spoken() {
        StringBuilder s = new StringBuilder(picture.name()).append(": the frame clamped and let go.");
        picture.forces().forEach(f -> s.append(" Clamp ").append(f.label()).append('.'));
        picture.pins().stream()
                .filter(SprungPicture.Pin::binds)
                .forEach(p -> s.append(' ').append(p.label()).append(" binds."));
        return s.toString();
    }
}
