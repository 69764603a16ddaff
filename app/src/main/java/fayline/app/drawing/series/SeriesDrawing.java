package fayline.app.drawing.series;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Values in the order in which they were measured: joined dots, the mean as a line, limits dashed; a value beyond one is a large open
 * square, so that it is seen in grey as well. Below, each step from the value before, with its limit.
 */
public final class SeriesDrawing {
    /** Width of the drawing. */
    public static final double WIDTH = 150;

    private static final double LEFT = 4;
    private static final double RIGHT = 118;
    private static final double TOP = 5;
    private static final double VALUES = 40;
    private static final double GAP = 8;
    private static final double STEPS = 14;
    private static final double LETTERS = 3;
    private static final double DOT = 0.9;
    private static final double SQUARE = 1.7;
    private static final double SPARE = 0.08;
    private static final double CLEAR = 3.4;

    private final Values q;
    private final double low;
    private final double high;
    private final double mostStep;

    private SeriesDrawing(Values q) {
        this.q = q;
        double least = q.values().stream().mapToDouble(v -> v).min().orElse(0);
        double most = q.values().stream().mapToDouble(v -> v).max().orElse(1);
        if (q.limits().isPresent()) {
            least = Math.min(least, q.limits().get().lower().value());
            most = Math.max(most, q.limits().get().upper().value());
        }
        double spare = Math.max(SPARE * (most - least), 1e-12);
        this.low = least - spare;
        this.high = most + spare;
        this.mostStep = Math.max(
                q.steps().stream().mapToDouble(v -> v).max().orElse(0),
                q.limits().map(l -> l.step().value()).orElse(1e-12));
    }

    /**
     * A line across, with its value in words.
     *
     * @param value where it lies
     * @param words what stands beside it
     */
    public record Level(double value, String words) {}

    /**
     * What the values are held against.
     *
     * @param mean their mean
     * @param lower the lower limit
     * @param upper the upper limit
     * @param step the limit of steps
     */
    public record Limits(Level mean, Level lower, Level upper, Level step) {}

    /**
     * What is drawn.
     *
     * @param values the values in order, at least one
     * @param steps the distance of each from the one before, one fewer
     * @param limits mean and limits; empty where there are too few values
     * @param title what it shows, for those who cannot see it
     */
    public record Values(List<Double> values, List<Double> steps, Optional<Limits> limits, String title) {
        /** Copies the lists. */
        public Values {
            values = List.copyOf(values);
            steps = List.copyOf(steps);
        }
    }

    /** Draws. */
    public static Drawing of(Values q) {
        return new SeriesDrawing(q).draw();
    }

    private Drawing draw() {
        List<Shape> all = new ArrayList<>();
        q.limits().ifPresent(l -> {
            across(y(l.mean().value()), l.mean().words(), false, all);
            across(
                    apart(y(l.upper().value()), y(l.mean().value()), -1),
                    y(l.upper().value()),
                    l.upper().words(),
                    all);
            across(
                    apart(y(l.lower().value()), y(l.mean().value()), 1),
                    y(l.lower().value()),
                    l.lower().words(),
                    all);
            double at = step(l.step().value());
            across(at + 1, at, l.step().words(), all);
        });
        line(q.values().stream().map(this::y).toList(), 0, all);
        for (int i = 0; i < q.values().size(); i++) {
            dot(new Point(x(i), y(q.values().get(i))), beyond(i), all);
        }
        double ground = step(0);
        all.add(Shape.line(LEFT, ground, RIGHT, ground, Ink.QUIET, 0.2));
        line(q.steps().stream().map(this::step).toList(), 1, all);
        all.add(Shape.text(RIGHT + 2, ground + 1, "steps", LETTERS, Ink.QUIET));
        return new Drawing(WIDTH, TOP + VALUES + GAP + STEPS + 4, q.title(), all);
    }

    private boolean beyond(int i) {
        double v = q.values().get(i);
        return q.limits()
                .filter(l -> v < l.lower().value() || v > l.upper().value())
                .isPresent();
    }

    /** Where words beside a line stand so that they stay clear of those beside another one. */
    private static double apart(double line, double other, int way) {
        double at = way < 0 ? Math.min(line, other - CLEAR) : Math.max(line, other + CLEAR);
        return at + 1;
    }

    private static void across(double y, String words, boolean dashed, List<Shape> all) {
        all.add(new Shape.Polyline(List.of(new Point(LEFT, y), new Point(RIGHT, y)), Ink.QUIET, 0.3, dashed));
        all.add(Shape.text(RIGHT + 2, y + 1, words, LETTERS, Ink.INK));
    }

    private static void across(double words, double y, String said, List<Shape> all) {
        all.add(new Shape.Polyline(List.of(new Point(LEFT, y), new Point(RIGHT, y)), Ink.INK, 0.35, true));
        all.add(Shape.text(RIGHT + 2, words, said, LETTERS, Ink.INK));
    }

    private void line(List<Double> ys, int from, List<Shape> all) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < ys.size(); i++) {
            points.add(new Point(x(i + from), ys.get(i)));
        }
        if (points.size() > 1) {
            all.add(new Shape.Polyline(points, Ink.INK, 0.4, false));
        }
    }

    private static void dot(Point at, boolean beyond, List<Shape> all) {
        all.add(
                beyond
                        ? Shape.Polygon.rectangle(
                                at.xMm() - SQUARE,
                                at.yMm() - SQUARE,
                                2 * SQUARE,
                                2 * SQUARE,
                                Ink.PAPER,
                                Ink.TROUBLE,
                                0.6)
                        : new Shape.Disc(at, DOT, Ink.INK, Ink.NONE, 0));
    }

    private double x(int i) {
        int n = q.values().size();
        return n < 2 ? (LEFT + RIGHT) / 2 : LEFT + 2 + (RIGHT - LEFT - 4) * i / (n - 1);
    }

    private double y(double value) {
        return TOP + VALUES * (high - value) / (high - low);
    }

    private double step(double value) {
        return TOP + VALUES + GAP + STEPS * (1 - value / mostStep);
    }
}
