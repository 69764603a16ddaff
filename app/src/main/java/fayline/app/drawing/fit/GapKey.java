package fayline.app.drawing.fit;

import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.SvgRenderer;
import java.util.ArrayList;
import java.util.List;

/** What the lines of a gap drawing mean, which way is which, and how many times as wide gaps are drawn. */
final class GapKey {
    private static final double LETTERS_MM = 3;
    private static final double ROW_MM = 4.6;
    private static final double LEFT_MM = 25;

    private final List<Shape> shapes = new ArrayList<>();
    private double y;

    private GapKey(double topMm) {
        y = topMm;
    }

    static double draw(GapPicture picture, GapFrame frame, int leftOut, double topMm, List<Shape> into) {
        GapKey key = new GapKey(topMm + 1);
        if (!GapFrame.isStrip(picture)) {
            key.directions(picture, topMm + 14);
        }
        key.scale(picture, frame);
        key.samples(picture);
        if (!GapFrame.isStrip(picture) && !GapFrame.isTrue(picture)) {
            key.line("No outline: straight from station to station.");
        }
        if (leftOut > 0) {
            key.line(
                    leftOut == 1
                            ? "1 station's words left out for room."
                            : leftOut + " stations' words left out for room.");
        }
        into.addAll(key.shapes);
        return Math.max(key.y + 2, topMm + 20);
    }

    /** How many times as wide gaps are drawn, in the blank strip at the foot of the drawing; its height stays. */
    static double scaleOnly(GapPicture picture, GapFrame frame, double topMm, List<Shape> into) {
        if (GapFrame.isStrip(picture)) {
            return topMm;
        }
        into.add(Shape.text(2, topMm - 1.5, scaleWords(frame), LETTERS_MM, Ink.QUIET));
        return topMm;
    }

    private static String scaleWords(GapFrame frame) {
        return "Gaps drawn " + SvgRenderer.number(frame.factor()) + " times as wide as they are.";
    }

    private void scale(GapPicture picture, GapFrame frame) {
        if (GapFrame.isStrip(picture)) {
            line("Places not known: stations evenly spaced,");
            line("gaps not to the same scale.");
        } else {
            line(scaleWords(frame));
        }
    }

    private void line(String words) {
        y += ROW_MM;
        shapes.add(Shape.text(LEFT_MM, y, words, LETTERS_MM, Ink.INK));
    }

    private void samples(GapPicture picture) {
        if (picture.hasAfter()) {
            sample(picture.beforeName(), true);
            sample(picture.afterName(), false);
        } else if (picture.stations().stream().anyMatch(s -> s.beforeMm().isPresent())) {
            sample(picture.beforeName(), false);
        }
        row("in tolerance", Shape.Polygon.rectangle(LEFT_MM, y + ROW_MM - 2.4, 7, 2.4, Ink.NIGHT, Ink.NONE, 0));
        if (picture.stations().stream().anyMatch(s -> s.shownMm().isEmpty())) {
            row(
                    "no reading",
                    new Shape.Disc(new Point(LEFT_MM + 3.5, y + ROW_MM - 1), 0.95, Ink.PAPER, Ink.QUIET, 0.35));
        }
        if (picture.stations().stream().anyMatch(s -> !s.trouble().isEmpty())) {
            shapes.addAll(PinShapes.trouble(LEFT_MM + 2, y + ROW_MM - 2.8, 3.2));
            y += ROW_MM;
            shapes.add(Shape.text(LEFT_MM + 9, y, "out of tolerance", LETTERS_MM, Ink.INK));
        }
    }

    private void sample(String name, boolean dashed) {
        double at = y + ROW_MM - 1;
        row(
                name,
                new Shape.Polyline(
                        List.of(new Point(LEFT_MM, at), new Point(LEFT_MM + 7, at)),
                        dashed ? Ink.QUIET : Ink.INK,
                        dashed ? 0.4 : 0.55,
                        dashed));
    }

    private void row(String words, Shape sample) {
        shapes.add(sample);
        y += ROW_MM;
        shapes.add(Shape.text(LEFT_MM + 9, y, words, LETTERS_MM, Ink.INK));
    }

    private void directions(GapPicture picture, double footY) {
        double x = 5;
        String along = switch (picture.hand()) {
            case LEFT -> "aft";
            case RIGHT -> "forward";
            case NONE -> "x";
        };
        arrow(x, footY, x + 9, footY);
        arrow(x, footY, x, footY - 9);
        shapes.add(new Shape.Text(new Point(x + 4, footY + 4), along, LETTERS_MM, Ink.INK, Shape.Anchor.MIDDLE, false));
        shapes.add(Shape.text(x + 1.6, footY - 6.5, "up", LETTERS_MM, Ink.INK));
    }

    private void arrow(double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double ux = (x2 - x1) / length;
        double uy = (y2 - y1) / length;
        shapes.add(Shape.line(x1, y1, x2, y2, Ink.INK, 0.4));
        shapes.add(new Shape.Polygon(
                List.of(List.of(
                        new Point(x2 + 1.5 * ux, y2 + 1.5 * uy),
                        new Point(x2 - uy, y2 + ux),
                        new Point(x2 + uy, y2 - ux))),
                Ink.INK,
                Ink.NONE,
                0));
    }
}
