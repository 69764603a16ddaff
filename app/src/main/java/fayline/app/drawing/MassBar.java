package fayline.app.drawing;

import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import java.util.ArrayList;
import java.util.List;

/** A mass against its target: a bar that is full at the target, with what goes beyond it marked as trouble. */
public final class MassBar {
    private static final double WIDTH = 60;
    private static final double FULL = 48;

    private MassBar() {}

    /**
     * Draws a mass.
     *
     * @param mass what it is or is computed to be
     * @param target what it should be, positive
     * @param weighed whether it was weighed; a computed mass is drawn hollow
     * @param format the reader's units
     */
    public static Drawing of(Mass mass, Mass target, boolean weighed, QuantityFormat format) {
        double share = mass.kilograms() / target.kilograms();
        double within = FULL * Math.min(1, share);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.Polygon.rectangle(0, 1, FULL, 4, Ink.PAPER, Ink.QUIET, 0.2));
        shapes.add(Shape.Polygon.rectangle(0, 1, within, 4, weighed ? Ink.DONE : Ink.NONE, Ink.INK, 0.3));
        if (!weighed) {
            List<List<Point>> bar = Shape.Polygon.rectangle(0, 1, within, 4, Ink.NONE, Ink.NONE, 0)
                    .rings();
            shapes.add(new Shape.Hatch(bar, 45, 1.6, Ink.INK, 0.2));
        }
        if (share > 1) {
            double over = Math.min(WIDTH - FULL, FULL * (share - 1));
            shapes.add(Shape.Polygon.rectangle(FULL, 1, over, 4, Ink.TROUBLE, Ink.INK, 0.3));
        }
        shapes.add(Shape.line(FULL, 0, FULL, 6, Ink.INK, 0.5));
        String words = (weighed ? "Weighed " : "Computed ") + format.mass(mass) + " of " + format.mass(target)
                + (share > 1 ? ", over the target." : ".");
        return new Drawing(WIDTH, 6, words, shapes);
    }
}
