package fayline.app.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * What lies over a wet part, in the order in which it goes on, drawn from the mould outward with gaps between so that each
 * layer is seen. The tape sits on the flange outside everything.
 */
public final class BagStackDrawing {
    private static final double WIDTH = 80;
    private static final double LEFT = 4;
    private static final double STACK = 27;
    private static final double PITCH = 7;

    private BagStackDrawing() {}

    /**
     * One layer of the bag.
     *
     * @param name what it is
     * @param amount how much of it, as shown; may be empty
     * @param kind how it is drawn
     */
    public record Layer(String name, String amount, Kind kind) {}

    /** How a layer is drawn. */
    public enum Kind {
        /** The part itself: hatched. */
        PART,
        /** A cloth that stays or peels: dashes. */
        PEEL,
        /** A film with holes: dots on a line. */
        FILM,
        /** A felt: short upright strokes. */
        BREATHER,
        /** The bag: a heavy line that turns down to the tape. */
        BAG
    }

    /**
     * Draws a bag.
     *
     * @param layers the layers in the order in which they go on
     * @param tape the sealant tape, as shown; may be empty
     * @param ground what it all lies on, in words
     */
    public static Drawing of(List<Layer> layers, String tape, String ground) {
        double height = 6 + layers.size() * PITCH + 8;
        double floor = height - 6;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.Polygon.rectangle(0, floor, STACK + 2 * LEFT, 2, Ink.INK, Ink.INK, 0.3));
        shapes.add(Shape.text(STACK + 2 * LEFT + 2, floor + 2, ground, 3, Ink.INK));
        int parts = (int) layers.stream().filter(l -> l.kind() == Kind.PART).count();
        for (int i = 0; i < layers.size(); i++) {
            double y = floor - (i + 1) * PITCH + 2;
            layer(shapes, layers.get(i), i, y, floor);
            Layer l = layers.get(i);
            String number = l.kind() == Kind.PART ? "" : (i + 1 - parts) + "  ";
            String line = number + l.name() + (l.amount().isEmpty() ? "" : ", " + l.amount());
            shapes.add(Shape.text(
                    STACK + 2 * LEFT + 2, y + 3, Drawing.fit(line, 3, WIDTH - STACK - 2 * LEFT - 2), 3, Ink.INK));
        }
        String words = "Bag stack from the mould outward: "
                + String.join(
                        ", ",
                        layers.stream().map(l -> l.name() + " " + l.amount()).toList())
                + (tape.isEmpty() ? "" : "; sealant tape " + tape);
        if (!tape.isEmpty()) {
            shapes.add(Shape.Polygon.rectangle(0, height - 2.6, 2.4, 1.6, Ink.INK, Ink.NONE, 0));
            shapes.add(Shape.text(3.6, height - 0.8, "sealant tape, " + tape, 3, Ink.INK));
        }
        return new Drawing(WIDTH, height, words.strip() + ".", shapes);
    }

    private static void layer(List<Shape> shapes, Layer layer, int index, double y, double ground) {
        double inset = LEFT + 4 - Math.min(3.5, index);
        double width = STACK + 2 * LEFT - 2 * inset;
        switch (layer.kind()) {
            case PART -> {
                Shape.Polygon body = Shape.Polygon.rectangle(inset, y + 0.6, width, 3.4, Ink.PAPER, Ink.INK, 0.3);
                shapes.add(body);
                shapes.add(new Shape.Hatch(body.rings(), 45, 1.6, Ink.INK, 0.2));
            }
            case PEEL ->
                shapes.add(new Shape.Polyline(
                        List.of(new Point(inset, y + 2.4), new Point(inset + width, y + 2.4)), Ink.INK, 0.6, true));
            case FILM -> {
                shapes.add(Shape.line(inset, y + 2.4, inset + width, y + 2.4, Ink.INK, 0.2));
                for (double x = inset + 1; x < inset + width; x += 2.4) {
                    shapes.add(new Shape.Disc(new Point(x, y + 2.4), 0.45, Ink.PAPER, Ink.INK, 0.2));
                }
            }
            case BREATHER -> {
                List<List<Point>> felt = Shape.Polygon.rectangle(inset, y + 1, width, 2.8, Ink.NONE, Ink.NONE, 0)
                        .rings();
                shapes.add(new Shape.Hatch(felt, 80, 1.1, Ink.INK, 0.15));
            }
            case BAG -> {
                double l = 1.4;
                double r = STACK + 2 * LEFT - 1.4;
                shapes.add(new Shape.Polyline(
                        List.of(
                                new Point(l, ground - 0.8),
                                new Point(l + 1.6, y + 2.4),
                                new Point(r - 1.6, y + 2.4),
                                new Point(r, ground - 0.8)),
                        Ink.INK,
                        0.6,
                        false));
                shapes.add(Shape.Polygon.rectangle(l - 1.2, ground - 1.6, 2.4, 1.6, Ink.INK, Ink.NONE, 0));
                shapes.add(Shape.Polygon.rectangle(r - 1.2, ground - 1.6, 2.4, 1.6, Ink.INK, Ink.NONE, 0));
            }
        }
    }
}
