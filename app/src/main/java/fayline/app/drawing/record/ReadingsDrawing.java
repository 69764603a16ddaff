package fayline.app.drawing.record;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Some readings of one kind in their order: a dot for each with what was typed above it, joined by a line, the limits behind
 * where there are any. A reading beyond a limit is a ring with a cross bar, so that it is told without colour.
 */
public final class ReadingsDrawing {
    private static final double PITCH = 24;
    private static final double LEAST_WIDTH = 40;
    private static final double SIDE = 12;
    private static final double TOP = 7;
    private static final double HIGH = 12;
    private static final double BOTTOM = 5;
    private static final double LETTERS = 2.8;
    private static final double DOT = 0.9;
    private static final double SPARE = 0.15;

    private final List<Dot> dots;
    private final OptionalDouble lower;
    private final OptionalDouble upper;
    private final double least;
    private final double most;
    private final List<Shape> shapes = new ArrayList<>();

    private ReadingsDrawing(List<Dot> dots, OptionalDouble lower, OptionalDouble upper) {
        this.dots = dots;
        this.lower = lower;
        this.upper = upper;
        double low = DoubleStream.concat(values(), lower.stream()).min().orElse(0);
        double high = DoubleStream.concat(values(), upper.stream()).max().orElse(1);
        double spare = SPARE * Math.max(high - low, Math.max(1e-9, 0.02 * Math.abs(high)));
        least = low - spare;
        most = high + spare;
    }

    /**
     * One reading.
     *
     * @param label what stands below, as {@code start}
     * @param value the value, in whatever unit all of them are in
     * @param typed the value as typed
     */
    public record Dot(String label, double value, String typed) {}

    /**
     * Draws.
     *
     * @param title what it shows, for those who cannot see it
     * @param dots the readings, at least one
     * @param lower least that is allowed, in the unit of the values
     * @param upper most that is allowed
     * @throws IllegalArgumentException if there is no reading
     */
    public static Drawing of(String title, List<Dot> dots, OptionalDouble lower, OptionalDouble upper) {
        if (dots.isEmpty()) {
            throw new IllegalArgumentException("no readings for \"" + title + "\", expected at least one");
        }
        return new ReadingsDrawing(List.copyOf(dots), lower, upper).draw(title);
    }

    private DoubleStream values() {
        return dots.stream().mapToDouble(Dot::value);
    }

    private Drawing draw(String title) {
        double width = Math.max(LEAST_WIDTH, 2 * SIDE + (dots.size() - 1) * PITCH);
        double top = upper.isPresent() ? y(upper.getAsDouble()) : TOP;
        double bottom = lower.isPresent() ? y(lower.getAsDouble()) : TOP + HIGH;
        if (lower.isPresent() || upper.isPresent()) {
            shapes.add(Shape.Polygon.rectangle(1, top, width - 2, bottom - top, Ink.NIGHT, Ink.NONE, 0));
        }
        upper.ifPresent(u -> shapes.add(Shape.line(1, y(u), width - 1, y(u), Ink.QUIET, 0.25)));
        lower.ifPresent(l -> shapes.add(Shape.line(1, y(l), width - 1, y(l), Ink.QUIET, 0.25)));
        List<Point> line = new ArrayList<>();
        for (int i = 0; i < dots.size(); i++) {
            line.add(new Point(SIDE + i * PITCH, y(dots.get(i).value())));
        }
        if (line.size() > 1) {
            shapes.add(new Shape.Polyline(line, Ink.INK, 0.3, false));
        }
        for (int i = 0; i < dots.size(); i++) {
            dot(dots.get(i), line.get(i));
        }
        return new Drawing(width, TOP + HIGH + BOTTOM, title, shapes);
    }

    private void dot(Dot d, Point at) {
        boolean outside = (lower.isPresent() && d.value() < lower.getAsDouble())
                || (upper.isPresent() && d.value() > upper.getAsDouble());
        if (outside) {
            shapes.add(new Shape.Disc(at, DOT + 0.5, Ink.PAPER, Ink.TROUBLE, 0.5));
            shapes.add(Shape.line(at.xMm() - 2.4, at.yMm(), at.xMm() + 2.4, at.yMm(), Ink.TROUBLE, 0.4));
        } else {
            shapes.add(new Shape.Disc(at, DOT, Ink.INK, Ink.NONE, 0));
        }
        shapes.add(new Shape.Text(
                new Point(at.xMm(), at.yMm() - 2), d.typed(), LETTERS, Ink.INK, Shape.Anchor.MIDDLE, true));
        shapes.add(new Shape.Text(
                new Point(at.xMm(), TOP + HIGH + BOTTOM - 1),
                d.label(),
                LETTERS,
                Ink.QUIET,
                Shape.Anchor.MIDDLE,
                false));
    }

    private double y(double value) {
        return TOP + HIGH * (most - value) / (most - least);
    }
}
