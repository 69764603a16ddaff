package fayline.app.drawing.fit;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.fit.ChainPicture.Bond;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A chain of bonds, drawn as what it is: the parts one below the other, the innermost on top and what does not move on hatched
 * ground, and between them each bond, solid where it is made and broken where it is open. Beside each bond a bar as long as its
 * part of the spread; all bars together are as long as the frame round each. An arrow points to the bond that takes the correction.
 */
public final class ChainDrawing {
    static final double WIDTH_MM = 94;
    static final double PART_MM = 8;
    static final double BOND_MM = 17;
    static final double BAR_LEFT_MM = 16;
    static final double BAR_FULL_MM = 54;
    static final double BAR_MM = 4;
    private static final double TOP_MM = 2;
    private static final double LINE_MM = 8;
    private static final double LETTERS_MM = 3.2;
    private static final double REST_MM = 11;
    private static final double LEFT_MM = 2;

    private final ChainPicture picture;
    private final List<Shape> shapes = new ArrayList<>();

    private ChainDrawing(ChainPicture picture) {
        this.picture = picture;
    }

    /** Draws. */
    public static Drawing of(ChainPicture picture) {
        return new ChainDrawing(picture).draw();
    }

    /** The top of a part's box; the one after the last bond is the ground's. */
    static double topOfPart(int k) {
        return TOP_MM + k * (PART_MM + BOND_MM);
    }

    private Drawing draw() {
        for (int k = 0; k < picture.bonds().size(); k++) {
            double y = topOfPart(k);
            box(y, picture.bonds().get(k).part(), false);
            bond(y + PART_MM, picture.bonds().get(k));
        }
        double y = topOfPart(picture.bonds().size());
        box(y, picture.ground(), true);
        y += PART_MM + 3;
        for (String n : picture.moving()) {
            y += 1;
            neighbour(y, n);
            y += PART_MM;
        }
        for (ChainPicture.Rest r : picture.rest()) {
            y += 4;
            shapes.add(Shape.text(BAR_LEFT_MM, y, r.name(), LETTERS_MM, Ink.INK));
            bar(y + 1.2, OptionalDouble.of(r.share()), false);
            y += REST_MM - 4;
        }
        if (picture.isShared()) {
            y += 4;
            shapes.add(Shape.text(
                    LEFT_MM,
                    y,
                    "Bars: share of the variance at station " + picture.station() + ".",
                    LETTERS_MM,
                    Ink.QUIET));
        }
        return new Drawing(WIDTH_MM, y + 3, spoken(), shapes);
    }

    private void box(double y, String name, boolean ground) {
        double width = WIDTH_MM - 2 * LEFT_MM;
        Shape.Polygon box = Shape.Polygon.rectangle(LEFT_MM, y, width, PART_MM, Ink.PAPER, Ink.INK, 0.5);
        shapes.add(box);
        if (ground) {
            List<List<Point>> below = Shape.Polygon.rectangle(LEFT_MM, y + PART_MM, width, 2, Ink.NONE, Ink.NONE, 0)
                    .rings();
            shapes.add(new Shape.Hatch(below, 45, 1.6, Ink.INK, 0.25));
        }
        shapes.add(Shape.bold(LEFT_MM + 2, y + 5.3, name, 3.6, Ink.INK));
    }

    private void bond(double y, Bond b) {
        shapes.add(new Shape.Polyline(
                List.of(new Point(LINE_MM, y), new Point(LINE_MM, y + BOND_MM)), Ink.INK, 1.4, !b.made()));
        shapes.add(Shape.bold(BAR_LEFT_MM, y + 4.4, b.name(), LETTERS_MM, Ink.INK));
        shapes.add(Shape.text(BAR_LEFT_MM, y + 8.4, b.where(), 2.9, Ink.QUIET));
        if (picture.isShared()) {
            bar(y + 10.4, b.share(), b.most());
        }
        if (b.corrected()) {
            arrow(LINE_MM - 0.9, y + BOND_MM / 2, "The correction goes here: " + b.name());
        }
    }

    private void arrow(double tip, double y, String words) {
        shapes.add(new Shape.Group(
                words,
                "",
                List.of(
                        Shape.line(tip - 6.6, y, tip - 2.1, y, Ink.HANDS, 1.2),
                        new Shape.Polygon(
                                List.of(List.of(
                                        new Point(tip - 3.3, y - 2.2),
                                        new Point(tip, y),
                                        new Point(tip - 3.3, y + 2.2))),
                                Ink.HANDS,
                                Ink.HANDS,
                                0.2))));
    }

    /** A neighbour beside the chain: its edge broken, for it is not held fast. */
    private void neighbour(double y, String name) {
        double right = WIDTH_MM - LEFT_MM;
        shapes.add(new Shape.Polyline(
                List.of(
                        new Point(BAR_LEFT_MM, y),
                        new Point(right, y),
                        new Point(right, y + PART_MM),
                        new Point(BAR_LEFT_MM, y + PART_MM),
                        new Point(BAR_LEFT_MM, y)),
                Ink.INK,
                0.5,
                true));
        shapes.add(Shape.bold(BAR_LEFT_MM + 2, y + 5.3, name + " moves too", LETTERS_MM, Ink.INK));
        arrow(BAR_LEFT_MM - 0.9, y + PART_MM / 2, "A neighbour that moves: " + name);
    }

    private void bar(double y, OptionalDouble share, boolean most) {
        if (share.isEmpty()) {
            return;
        }
        double length = BAR_FULL_MM * share.getAsDouble();
        shapes.add(Shape.Polygon.rectangle(BAR_LEFT_MM, y, BAR_FULL_MM, BAR_MM, Ink.PAPER, Ink.QUIET, 0.2));
        shapes.add(
                Shape.Polygon.rectangle(BAR_LEFT_MM, y, length, BAR_MM, most ? Ink.TROUBLE : Ink.DONE, Ink.INK, 0.3));
        shapes.add(new Shape.Text(
                new Point(WIDTH_MM - LEFT_MM, y + 3.3),
                percent(share.getAsDouble()) + (most ? ", most" : ""),
                LETTERS_MM,
                Ink.INK,
                Shape.Anchor.END,
                most));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }

    private String spoken() {
        StringBuilder words = new StringBuilder(picture.title()).append(": ");
        for (Bond b : picture.bonds()) {
            words.append(b.name()).append(b.made() ? ", made" : ", open");
            if (b.share().isPresent()) {
                words.append(", ").append(percent(b.share().getAsDouble()));
            }
            words.append(b.corrected() ? ", the correction goes here; " : "; ");
        }
        words.append("then ").append(picture.ground()).append('.');
        picture.moving().forEach(n -> words.append(' ').append(n).append(" moves too."));
        return words.toString();
    }
}
