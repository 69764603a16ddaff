package fayline.app.drawing.fit;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How each gap went through the states: a small field for every station, all to one scale, the tolerance behind, what was read
 * joined solid, what is foretold joined dashed. States stand under each field by number; a key names them.
 */
public final class StatesDrawing {
    /** Size of the words. */
    static final double LETTERS_MM = 3;

    private static final double COLUMN_MM = 46;
    private static final double LEFT_MM = 2.5;
    private static final double FIELD_MM = 30;
    private static final double INSIDE_MM = 3;
    private static final double HIGH_MM = 14;
    private static final double ROW_MM = 26;
    private static final double HEAD_MM = 4.5;
    private static final double KEY_MM = 4.4;
    private static final double DOT_MM = 0.85;
    private static final double SPARE = 0.06;

    private final StatesPicture picture;
    private final double leastMm;
    private final double mostMm;
    private final List<Shape> shapes = new ArrayList<>();

    private StatesDrawing(StatesPicture picture) {
        this.picture = picture;
        double low = picture.stations().stream()
                .flatMapToDouble(r -> DoubleStream.concat(DoubleStream.of(r.lowerMm()), gaps(r)))
                .min()
                .orElse(0);
        double high = picture.stations().stream()
                .flatMapToDouble(r -> DoubleStream.concat(DoubleStream.of(r.upperMm()), gaps(r)))
                .max()
                .orElse(1);
        double spare = SPARE * Math.max(high - low, 1e-3);
        leastMm = low - spare;
        mostMm = high + spare;
    }

    private static DoubleStream gaps(StatesPicture.Row r) {
        return r.gapsMm().stream().filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble);
    }

    /** Draws. */
    public static Drawing of(StatesPicture picture) {
        return new StatesDrawing(picture).draw();
    }

    private Drawing draw() {
        for (int i = 0; i < picture.stations().size(); i++) {
            int row = i / 2;
            station(picture.stations().get(i), LEFT_MM + i % 2 * COLUMN_MM, 1 + row * ROW_MM);
        }
        int rows = (picture.stations().size() + 1) / 2;
        double y = 1 + rows * ROW_MM;
        for (int k = 0; k < picture.states().size(); k++) {
            StatesPicture.State s = picture.states().get(k);
            y += KEY_MM;
            shapes.add(Shape.text(
                    LEFT_MM, y, (k + 1) + "  " + s.name() + (s.foretold() ? " (foretold)" : ""), LETTERS_MM, Ink.INK));
        }
        y = legend(y + 2);
        return new Drawing(GapFrame.WIDTH_MM, y + 2, title(), shapes);
    }

    private void station(StatesPicture.Row row, double left, double top) {
        List<Shape> all = new ArrayList<>();
        double field = top + HEAD_MM;
        all.add(Shape.bold(left, top + 3.4, row.id(), LETTERS_MM, Ink.INK));
        double upper = y(row.upperMm(), field);
        all.add(Shape.Polygon.rectangle(
                left, upper, FIELD_MM, y(row.lowerMm(), field) - upper, Ink.NIGHT, Ink.NONE, 0));
        double wanted = y(row.nominalMm(), field);
        all.add(Shape.line(left, wanted, left + FIELD_MM, wanted, Ink.PAPER, 0.3));
        lines(row, left, field, all);
        int read = last(row, false);
        int foretold = last(row, true);
        dots(row, left, field, all);
        if (read >= 0) {
            all.add(Shape.text(left + FIELD_MM + 1, label(row, read, field), row.lastRead(), LETTERS_MM, Ink.INK));
        }
        if (foretold >= 0 && !row.last().isEmpty()) {
            double at = label(row, foretold, field);
            double other = read >= 0 ? label(row, read, field) : Double.NaN;
            double clear = Math.abs(at - other) < LETTERS_MM ? other + (at < other ? -LETTERS_MM : LETTERS_MM) : at;
            all.add(Shape.text(left + FIELD_MM + 1, clear, row.last(), LETTERS_MM, Ink.QUIET));
        }
        for (int k = 0; k < picture.states().size(); k++) {
            all.add(new Shape.Text(
                    new Point(x(k, left), field + HIGH_MM + 3.4),
                    String.valueOf(k + 1),
                    LETTERS_MM,
                    picture.states().get(k).foretold() ? Ink.QUIET : Ink.INK,
                    Shape.Anchor.MIDDLE,
                    false));
        }
        shapes.add(new Shape.Group(spoken(row), "", all));
    }

    private void lines(StatesPicture.Row row, double left, double field, List<Shape> all) {
        int before = -1;
        for (int k = 0; k < row.gapsMm().size(); k++) {
            if (row.gapsMm().get(k).isEmpty()) {
                continue;
            }
            if (before >= 0) {
                boolean foretold = picture.states().get(k).foretold();
                all.add(new Shape.Polyline(
                        List.of(point(row, before, left, field), point(row, k, left, field)),
                        foretold ? Ink.QUIET : Ink.INK,
                        foretold ? 0.4 : 0.5,
                        foretold));
            }
            before = k;
        }
    }

    private void dots(StatesPicture.Row row, double left, double field, List<Shape> all) {
        for (int k = 0; k < row.gapsMm().size(); k++) {
            if (row.gapsMm().get(k).isEmpty()) {
                continue;
            }
            Point p = point(row, k, left, field);
            boolean foretold = picture.states().get(k).foretold();
            all.add(
                    foretold
                            ? new Shape.Disc(p, DOT_MM, Ink.PAPER, Ink.QUIET, 0.35)
                            : new Shape.Disc(p, DOT_MM, row.isOutside(k) ? Ink.TROUBLE : Ink.INK, Ink.PAPER, 0.2));
            if (row.isOutside(k)) {
                all.addAll(
                        PinShapes.trouble(p.xMm() - 1.2, p.yMm() - (p.yMm() > field + HIGH_MM / 2 ? 3.6 : -1.2), 2.4));
            }
        }
    }

    private double legend(double from) {
        double y = from + KEY_MM;
        shapes.add(Shape.Polygon.rectangle(LEFT_MM, y - 2.4, 7, 2.4, Ink.NIGHT, Ink.NONE, 0));
        shapes.add(Shape.text(LEFT_MM + 9, y, "in tolerance when all is done", LETTERS_MM, Ink.INK));
        y += KEY_MM;
        shapes.add(Shape.line(LEFT_MM, y - 1, LEFT_MM + 7, y - 1, Ink.INK, 0.5));
        shapes.add(Shape.text(LEFT_MM + 9, y, "as read", LETTERS_MM, Ink.INK));
        if (picture.states().stream().anyMatch(StatesPicture.State::foretold)) {
            y += KEY_MM;
            shapes.add(new Shape.Polyline(
                    List.of(new Point(LEFT_MM, y - 1), new Point(LEFT_MM + 7, y - 1)), Ink.QUIET, 0.4, true));
            shapes.add(Shape.text(LEFT_MM + 9, y, "foretold, if the part is left as it lies", LETTERS_MM, Ink.INK));
        }
        return y;
    }

    private double label(StatesPicture.Row row, int state, double field) {
        return y(row.gapsMm().get(state).orElse(row.nominalMm()), field) + 1;
    }

    private int last(StatesPicture.Row row, boolean foretold) {
        for (int k = row.gapsMm().size() - 1; k >= 0; k--) {
            if (picture.states().get(k).foretold() == foretold
                    && row.gapsMm().get(k).isPresent()) {
                return k;
            }
        }
        return -1;
    }

    private Point point(StatesPicture.Row row, int state, double left, double field) {
        return new Point(x(state, left), y(row.gapsMm().get(state).orElseThrow(), field));
    }

    private double x(int state, double left) {
        int steps = Math.max(1, picture.states().size() - 1);
        return left + INSIDE_MM + state * (FIELD_MM - 2 * INSIDE_MM) / steps;
    }

    private double y(double gapMm, double field) {
        return field + (mostMm - gapMm) / (mostMm - leastMm) * HIGH_MM;
    }

    private String spoken(StatesPicture.Row row) {
        return "Station " + row.id() + ": " + (row.lastRead().isEmpty() ? "no reading" : row.lastRead() + " read last")
                + (row.last().isEmpty() ? "" : ", " + row.last() + " foretold");
    }

    private String title() {
        return String.format(
                Locale.ROOT,
                "%s: gaps at %d stations over %d states.",
                picture.title(),
                picture.stations().size(),
                picture.states().size());
    }
}
