package fayline.app.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** A value all round, drawn as a closed line about the middle: 0 degrees to the right, angles counter-clockwise. */
public final class RoundDrawing {
    private static final double SIDE = 70;
    private static final double RADIUS = 28;

    private RoundDrawing() {}

    /**
     * One direction.
     *
     * @param angleDeg from the right counter-clockwise
     * @param value not negative
     */
    public record Ray(double angleDeg, double value) {}

    /**
     * Draws.
     *
     * @param words what is drawn, for those who do not see it
     * @param rays all round in order
     * @param most what the outer ring stands for, as it is written there
     */
    public static Drawing of(String words, List<Ray> rays, String most) {
        double largest = rays.stream().mapToDouble(Ray::value).max().orElse(1);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(ring(1));
        shapes.add(ring(0.5));
        shapes.add(Shape.line(SIDE / 2 - RADIUS, SIDE / 2, SIDE / 2 + RADIUS, SIDE / 2, Ink.QUIET, 0.15));
        shapes.add(Shape.line(SIDE / 2, SIDE / 2 - RADIUS, SIDE / 2, SIDE / 2 + RADIUS, Ink.QUIET, 0.15));
        shapes.add(closed(rays, r -> largest > 0 ? r.value() / largest : 0, Ink.INK, 0.5));
        shapes.add(Shape.text(SIDE / 2 + 1, 5, most, 3, Ink.QUIET));
        shapes.add(Shape.text(SIDE - 6, SIDE / 2 - 1, "0\u00b0", 3, Ink.QUIET));
        return new Drawing(SIDE, SIDE, words, shapes);
    }

    private static Shape ring(double share) {
        List<Ray> rays = new ArrayList<>();
        for (int a = 0; a < 360; a += 5) {
            rays.add(new Ray(a, share));
        }
        return closed(rays, Ray::value, Ink.QUIET, 0.15);
    }

    private static Shape closed(List<Ray> rays, ToDoubleFunction<Ray> share, Ink ink, double width) {
        List<Point> line = new ArrayList<>();
        for (Ray r : rays) {
            double a = Math.toRadians(r.angleDeg());
            double d = RADIUS * share.applyAsDouble(r);
            line.add(new Point(SIDE / 2 + d * Math.cos(a), SIDE / 2 - d * Math.sin(a)));
        }
        line.add(line.get(0));
        return new Shape.Polyline(line, ink, width, false);
    }
}
