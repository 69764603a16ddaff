package fayline.app.drawing.forecast;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.util.ArrayList;
import java.util.List;

/**
 * Hours against months: what was booked so far as a line, from there to the end a fan between the soonest and the latest of four in
 * five outcomes, dashed what was planned. The hours in all stand as a level line, once as estimated and once as they turn out.
 */
public final class HoursDrawing {
    /** Width of the drawing. */
    public static final double WIDTH = 150;

    private static final double HEIGHT = 72;
    private static final double LEFT = 16;
    private static final double RIGHT = 146;
    private static final double TOP = 6;
    private static final double BOTTOM = 62;
    private static final double[] STEPS = {1, 2, 3, 6, 12, 24, 60, 120};

    private HoursDrawing() {}

    /**
     * What is drawn.
     *
     * @param bookedH hours booked in each month so far
     * @param estimatedH hours in all as estimated
     * @param totalH hours in all as they turn out
     * @param plannedPerMonthH hours a month as planned
     * @param soonest months in all that one of ten outcomes stays below
     * @param middle months in all of half of them
     * @param latest months in all that one of ten outcomes passes
     * @param title what it shows, for those who cannot see it
     */
    public record Hours(
            List<Double> bookedH,
            double estimatedH,
            double totalH,
            double plannedPerMonthH,
            double soonest,
            double middle,
            double latest,
            String title) {
        /** Copies the list. */
        public Hours {
            bookedH = List.copyOf(bookedH);
        }

        private double months() {
            return Math.max(latest, estimatedH / plannedPerMonthH) * 1.05;
        }

        /** Where a number of months lies. */
        public double x(double month) {
            return LEFT + (RIGHT - LEFT) * month / months();
        }

        /** Where a number of hours lies. */
        public double y(double h) {
            return BOTTOM - (BOTTOM - TOP) * h / (1.1 * Math.max(estimatedH, totalH));
        }
    }

    /** Draws. */
    public static Drawing of(Hours q) {
        List<Shape> shapes = new ArrayList<>();
        axes(q, shapes);
        double now = q.bookedH().size();
        double booked = q.bookedH().stream().mapToDouble(h -> h).sum();
        Point here = new Point(q.x(now), q.y(booked));
        shapes.add(new Shape.Polygon(
                List.of(List.of(
                        here,
                        new Point(q.x(q.soonest()), q.y(q.totalH())),
                        new Point(q.x(q.latest()), q.y(q.totalH())))),
                Ink.NIGHT,
                Ink.QUIET,
                0.2));
        shapes.add(new Shape.Polyline(
                List.of(here, new Point(q.x(q.middle()), q.y(q.totalH()))), Ink.HANDS, 0.5, false));
        shapes.add(new Shape.Polyline(
                List.of(
                        new Point(q.x(0), q.y(0)),
                        new Point(q.x(q.estimatedH() / q.plannedPerMonthH()), q.y(q.estimatedH()))),
                Ink.QUIET,
                0.4,
                true));
        List<Point> line = new ArrayList<>(List.of(new Point(q.x(0), q.y(0))));
        double sum = 0;
        for (int i = 0; i < q.bookedH().size(); i++) {
            sum += q.bookedH().get(i);
            line.add(new Point(q.x(i + 1), q.y(sum)));
        }
        shapes.add(new Shape.Polyline(line, Ink.INK, 0.9, false));
        shapes.add(new Shape.Disc(here, 1.2, Ink.INK, Ink.NONE, 0));
        return new Drawing(WIDTH, HEIGHT, q.title(), shapes);
    }

    private static void axes(Hours q, List<Shape> shapes) {
        shapes.add(Shape.line(LEFT, BOTTOM, RIGHT, BOTTOM, Ink.INK, 0.3));
        shapes.add(Shape.line(LEFT, TOP, LEFT, BOTTOM, Ink.INK, 0.3));
        level(q, q.totalH(), "as it turns out", shapes);
        if (Math.abs(q.totalH() - q.estimatedH()) > 0.08 * q.totalH()) {
            level(q, q.estimatedH(), "as estimated", shapes);
        }
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0; i--) {
            step = q.months() / STEPS[i] <= 12 ? STEPS[i] : step;
        }
        for (double m = step; m <= q.months(); m += step) {
            shapes.add(Shape.line(q.x(m), BOTTOM, q.x(m), BOTTOM + 1.4, Ink.INK, 0.3));
            shapes.add(new Shape.Text(
                    new Point(q.x(m), BOTTOM + 5),
                    Long.toString(Math.round(m)),
                    3,
                    Ink.QUIET,
                    Shape.Anchor.MIDDLE,
                    false));
        }
        shapes.add(new Shape.Text(
                new Point(RIGHT, BOTTOM + 9), "months since the first", 3, Ink.QUIET, Shape.Anchor.END, false));
    }

    private static void level(Hours q, double h, String words, List<Shape> shapes) {
        shapes.add(Shape.line(LEFT, q.y(h), RIGHT, q.y(h), Ink.QUIET, 0.2));
        shapes.add(new Shape.Text(
                new Point(LEFT - 1, q.y(h) + 1), Math.round(h) + " h", 3, Ink.INK, Shape.Anchor.END, false));
        shapes.add(Shape.text(LEFT + 2, q.y(h) - 1, words, 2.8, Ink.QUIET));
    }
}
