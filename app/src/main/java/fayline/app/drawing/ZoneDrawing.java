package fayline.app.drawing;

import fayline.basis.geometry.Outline;
import fayline.flow.project.design.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A zone in its true shape with its axis and the directions of its plies. A zone that is known by its area alone gets the
 * directions without an outline: no shape is made up.
 */
public final class ZoneDrawing {
    private static final double WIDTH = 80;
    private static final double MOST_HEIGHT = 60;
    private static final double MARGIN = 3;

    private ZoneDrawing() {}

    /**
     * Draws a zone.
     *
     * @param zone the zone
     * @param anglesDeg the angles of its fibre plies against the zone's axis
     */
    public static Drawing of(Zone zone, List<Double> anglesDeg) {
        List<Double> angles = anglesDeg.stream().distinct().sorted().toList();
        return zone.outline().map(o -> outlined(zone, o, angles)).orElseGet(() -> directions(zone, angles));
    }

    private static Drawing directions(Zone zone, List<Double> angles) {
        List<Shape> shapes = new ArrayList<>();
        rosette(shapes, new Point(22, 19), 15, zone.axis().degrees(), angles);
        shapes.add(Shape.text(42, 16, "By area: no outline.", 3, Ink.QUIET));
        return new Drawing(WIDTH, 38, title(zone, angles), shapes);
    }

    private static Drawing outlined(Zone zone, Outline outline, List<Double> angles) {
        double left =
                outline.outer().stream().mapToDouble(Outline.Point::xM).min().orElse(0);
        double right =
                outline.outer().stream().mapToDouble(Outline.Point::xM).max().orElse(1);
        double low =
                outline.outer().stream().mapToDouble(Outline.Point::yM).min().orElse(0);
        double high =
                outline.outer().stream().mapToDouble(Outline.Point::yM).max().orElse(1);
        double roomW = WIDTH - 2 * MARGIN;
        double fit = Math.min(roomW / (right - left), MOST_HEIGHT / (high - low));
        double scale = niceScale(fit);
        double shapeHeight = (high - low) * scale;
        List<List<Point>> rings = new ArrayList<>();
        rings.add(placed(outline.outer(), left, high, scale));
        outline.cutouts().forEach(c -> rings.add(placed(c, left, high, scale)));
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Shape.Polygon(rings, Ink.PAPER, Ink.INK, 0.45));
        for (double a : angles) {
            shapes.add(new Shape.Hatch(rings, a + zone.axis().degrees(), 5, Ink.QUIET, 0.18));
        }
        double below = MARGIN + shapeHeight + 3;
        rosette(shapes, new Point(15, below + 13), 11, zone.axis().degrees(), angles);
        double bar = scaleBarM(roomW / scale / 3);
        shapes.add(Shape.line(44, below + 9, 44 + bar * scale, below + 9, Ink.INK, 0.5));
        shapes.add(Shape.line(44, below + 7.6, 44, below + 10.4, Ink.INK, 0.3));
        shapes.add(Shape.line(44 + bar * scale, below + 7.6, 44 + bar * scale, below + 10.4, Ink.INK, 0.3));
        shapes.add(Shape.text(44, below + 14, SvgRenderer.number(bar * 1000) + " mm", 3, Ink.INK));
        shapes.add(Shape.text(44, below + 18.4, "Scale 1:" + SvgRenderer.number(1000 / scale), 3, Ink.QUIET));
        return new Drawing(WIDTH, below + 26, title(zone, angles), shapes);
    }

    /** The largest scale in millimetres of paper per metre that fits and is a round one: 1, 2 or 5 times a power of ten. */
    static double niceScale(double mostMmPerM) {
        double least = 1000 / mostMmPerM;
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double step : new double[] {1, 2, 2.5, 5, 10}) {
            if (step * power >= least * (1 - 1e-9)) {
                return 1000 / (step * power);
            }
        }
        return 1000 / (10 * power);
    }

    private static double scaleBarM(double aboutM) {
        double power = Math.pow(10, Math.floor(Math.log10(aboutM)));
        return aboutM >= 5 * power ? 5 * power : aboutM >= 2 * power ? 2 * power : power;
    }

    private static List<Point> placed(List<Outline.Point> ring, double left, double high, double scale) {
        return ring.stream()
                .map(p -> new Point(MARGIN + (p.xM() - left) * scale, MARGIN + (high - p.yM()) * scale))
                .toList();
    }

    private static void rosette(List<Shape> shapes, Point c, double radius, double axisDeg, List<Double> angles) {
        for (double a : angles) {
            Point tip = polar(c, radius * 0.8, a + axisDeg);
            Point tail = polar(c, -radius * 0.8, a + axisDeg);
            shapes.add(Shape.line(tail.xMm(), tail.yMm(), tip.xMm(), tip.yMm(), Ink.INK, 0.5));
            Point label = polar(c, radius * 1.02, a + axisDeg);
            shapes.add(
                    new Shape.Text(label.plus(0, 1), PlyStackDrawing.angle(a), 3, Ink.INK, Shape.Anchor.MIDDLE, false));
        }
        Point head = polar(c, radius * 0.62, axisDeg);
        Point back = polar(c, -radius * 0.62, axisDeg);
        shapes.add(Shape.line(back.xMm(), back.yMm(), head.xMm(), head.yMm(), Ink.HANDS, 0.9));
        shapes.add(new Shape.Polygon(
                List.of(List.of(
                        polar(c, radius * 0.78, axisDeg),
                        polar(head, 1.6, axisDeg + 120),
                        polar(head, 1.6, axisDeg - 120))),
                Ink.HANDS,
                Ink.NONE,
                0));
    }

    private static Point polar(Point c, double radius, double degrees) {
        double turn = Math.toRadians(degrees);
        return new Point(c.xMm() + radius * Math.cos(turn), c.yMm() - radius * Math.sin(turn));
    }

    private static String title(Zone zone, List<Double> angles) {
        return String.format(
                Locale.ROOT,
                "Zone %s with its axis at %s and plies at %s.",
                zone.name(),
                PlyStackDrawing.angle(zone.axis().degrees()),
                String.join(", ", angles.stream().map(PlyStackDrawing::angle).toList()));
    }
}
