package fayline.app.drawing.fit;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A part as it is set: its edge to scale with the stations, an arrow the way it goes and a bow the way it turns, a wedge at every
 * place where a shim goes and a clamp sits. Arrow and bow show the way only, not how far.
 */
public final class HoldDrawing {
    private static final double WIDTH_MM = 94;
    private static final double SIDE_MM = 17;
    private static final double ABOVE_MM = 11;
    private static final double MOST_HEIGHT_MM = 42;
    private static final double LETTERS_MM = 2.9;
    private static final double CHORD_MM = 0.5;
    private static final double ARROW_MM = 11;
    private static final double HEAD_MM = 2.4;
    private static final double BOW_MM = 7.5;
    private static final double LEAST_SHIFT_MM = 0.05;
    private static final double LEAST_TURN_RAD = Math.toRadians(0.005);
    private static final double BOW_RAD = Math.toRadians(70);

    private final HoldPicture picture;
    private final double scale;
    private final double originX;
    private final double originY;
    private final double footMm;
    private final List<Shape> shapes = new ArrayList<>();

    private HoldDrawing(HoldPicture picture) {
        this.picture = picture;
        List<Spot> all = spots(picture);
        double left = all.stream().mapToDouble(Spot::xMm).min().orElse(0);
        double right = all.stream().mapToDouble(Spot::xMm).max().orElse(1);
        double low = all.stream().mapToDouble(Spot::yMm).min().orElse(0);
        double high = all.stream().mapToDouble(Spot::yMm).max().orElse(1);
        scale = Math.min(
                (WIDTH_MM - 2 * SIDE_MM) / Math.max(right - left, 1e-3), MOST_HEIGHT_MM / Math.max(high - low, 1e-3));
        originX = (WIDTH_MM - (right - left) * scale) / 2 - left * scale;
        originY = ABOVE_MM + high * scale;
        footMm = ABOVE_MM + (high - low) * scale;
    }

    private static List<Spot> spots(HoldPicture p) {
        return Stream.of(
                        p.outline().map(o -> o.drawn(CHORD_MM)).orElse(List.of()).stream(),
                        p.stations().stream().map(Station::at),
                        p.holds().stream().map(h -> h.at().at()))
                .flatMap(s -> s)
                .toList();
    }

    /** Draws. */
    public static Drawing of(HoldPicture picture) {
        return new HoldDrawing(picture).draw();
    }

    private Drawing draw() {
        picture.outline()
                .ifPresent(o -> shapes.add(new Shape.Polygon(
                        List.of(o.drawn(CHORD_MM).stream().map(this::on).toList()), Ink.NONE, Ink.INK, 0.5)));
        picture.stations().forEach(this::station);
        picture.holds().forEach(this::hold);
        picture.move().ifPresent(this::move);
        double y = key();
        return new Drawing(WIDTH_MM, y + 2, picture.title() + ": how it is set and where it is held.", shapes);
    }

    private Point on(Spot p) {
        return new Point(originX + p.xMm() * scale, originY - p.yMm() * scale);
    }

    private void station(Station s) {
        Point at = on(s.at());
        shapes.add(new Shape.Disc(at, 0.7, Ink.INK, Ink.NONE, 0));
        // inside the edge, for shims are told outside it
        shapes.add(new Shape.Text(
                new Point(at.xMm() - 3.6 * s.nx(), at.yMm() + 3.6 * s.ny() + 1),
                s.id(),
                LETTERS_MM,
                Ink.QUIET,
                Shape.Anchor.MIDDLE,
                false));
    }

    /** A wedge whose point touches the edge where the shim goes and the clamp sits, with its name and what goes in. */
    private void hold(HoldPicture.Hold h) {
        Station s = h.at();
        Point tip = on(s.at());
        double nx = s.nx();
        double ny = -s.ny();
        shapes.add(new Shape.Polygon(
                List.of(List.of(
                        tip,
                        tip.plus(4 * nx - 1.5 * ny, 4 * ny + 1.5 * nx),
                        tip.plus(4 * nx + 1.5 * ny, 4 * ny - 1.5 * nx))),
                Ink.HANDS,
                Ink.INK,
                0.25));
        Shape.Anchor anchor = nx > 0.5 ? Shape.Anchor.START : nx < -0.5 ? Shape.Anchor.END : Shape.Anchor.MIDDLE;
        double away = 5 + (Math.abs(ny) > 0.5 ? ny > 0 ? 2.4 : h.words().isEmpty() ? 0 : 3.4 : 0);
        Point words = tip.plus(away * nx, away * ny + (Math.abs(ny) > 0.5 ? 0 : 0.5));
        shapes.add(new Shape.Text(words, s.id(), LETTERS_MM, Ink.INK, anchor, true));
        if (!h.words().isEmpty()) {
            shapes.add(new Shape.Text(words.plus(0, 3.4), h.words(), LETTERS_MM, Ink.INK, anchor, false));
        }
    }

    private void move(Move m) {
        Point from = on(picture.pivot());
        if (m.shiftMm() >= LEAST_SHIFT_MM) {
            double ux = m.dxMm() / m.shiftMm();
            double uy = -m.dyMm() / m.shiftMm();
            Point to = from.plus(ARROW_MM * ux, ARROW_MM * uy);
            shapes.add(Shape.line(from.xMm(), from.yMm(), to.xMm(), to.yMm(), Ink.HANDS, 0.9));
            head(to, ux, uy);
        }
        if (Math.abs(m.turnRad()) >= LEAST_TURN_RAD) {
            bow(from, m.turnRad() > 0);
        }
    }

    /** An arc over the pivot; counter-clockwise as seen, where the part turns so. */
    private void bow(Point centre, boolean counterClockwise) {
        List<Point> arc = new ArrayList<>();
        double from = Math.PI / 2 + (counterClockwise ? -BOW_RAD : BOW_RAD) / 2;
        double sweep = counterClockwise ? BOW_RAD : -BOW_RAD;
        int steps = 12;
        for (int k = 0; k <= steps; k++) {
            double a = from + sweep * k / steps;
            arc.add(centre.plus(BOW_MM * Math.cos(a), -BOW_MM * Math.sin(a)));
        }
        shapes.add(new Shape.Polyline(arc, Ink.HANDS, 0.7, false));
        double end = from + sweep;
        double way = counterClockwise ? 1 : -1;
        head(arc.get(steps), -way * Math.sin(end), -way * Math.cos(end));
    }

    private void head(Point at, double ux, double uy) {
        shapes.add(new Shape.Polygon(
                List.of(List.of(
                        at.plus(HEAD_MM * ux, HEAD_MM * uy),
                        at.plus(-0.55 * HEAD_MM * uy, 0.55 * HEAD_MM * ux),
                        at.plus(0.55 * HEAD_MM * uy, -0.55 * HEAD_MM * ux))),
                Ink.HANDS,
                Ink.NONE,
                0));
    }

    private double key() {
        double y = footMm + ABOVE_MM + 3;
        List<String> says = new ArrayList<>();
        says.add("Right is " + picture.side().along(1) + ", up is up.");
        if (picture.move().isPresent()) {
            says.add("Arrow and bow: which way, not how far.");
        }
        if (!picture.holds().isEmpty()) {
            says.add("Wedge: shim and clamp.");
        }
        for (String line : says) {
            shapes.add(new Shape.Text(
                    new Point(WIDTH_MM / 2, y), line, LETTERS_MM, Ink.QUIET, Shape.Anchor.MIDDLE, false));
            y += 3.8;
        }
        return y - 3.8;
    }
}
