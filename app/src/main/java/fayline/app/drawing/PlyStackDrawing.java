package fayline.app.drawing;

import fayline.basis.units.QuantityFormat;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.Laminate;
import fayline.flow.project.design.Ply;
import fayline.flow.project.stock.Material;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The plies of a laminate as they lie: the mould at the bottom, the first ply on it. Hatch lines run at the true angle
 * against the axis, which points right; woven cloth has its second direction thinner; heavier cloth has closer lines; core is
 * dots.
 */
public final class PlyStackDrawing {
    private static final double WIDTH = 80;
    private static final double STRIP = 27;
    private static final double STRIP_HEIGHT = 8.4;
    private static final double PITCH = 10;
    private static final double STAGE_GAP = 5;
    private static final double GRAMS_TIMES_MM = 400;

    private PlyStackDrawing() {}

    /**
     * One layer.
     *
     * @param number its place in the lay-up
     * @param name the material
     * @param kind what it is
     * @param gramsPerM2 its weight, 0 where unknown
     * @param weight its weight or thickness as shown
     * @param angleDeg the angle of its fibres
     * @param stage the lay-up stage; the same for all where they are one
     */
    public record Layer(
            int number, String name, Material.Kind kind, double gramsPerM2, String weight, double angleDeg, int stage) {
        /**
         * A layer of one stage.
         *
         * @param number its place in the lay-up
         * @param name the material's name
         * @param material the material, where it is known
         * @param core whether it is core
         * @param angleDeg the angle of its fibres
         * @param format the reader's units
         */
        public static Layer of(
                int number,
                String name,
                Optional<Material> material,
                boolean core,
                double angleDeg,
                QuantityFormat format) {
            return new Layer(
                    number,
                    name,
                    core ? Material.Kind.CORE : material.map(Material::kind).orElse(Material.Kind.CLOTH),
                    material.flatMap(Material::arealMass)
                            .map(w -> w.value().gramsPerSquareMetre())
                            .orElse(0.0),
                    core
                            ? material.flatMap(Material::thickness)
                                    .map(t -> format.length(t.value()))
                                    .orElse("")
                            : material.flatMap(Material::arealMass)
                                    .map(w -> format.arealMass(w.value()))
                                    .orElse(""),
                    angleDeg,
                    0);
        }

        Layer inStage(int at) {
            return new Layer(number, name, kind, gramsPerM2, weight, angleDeg, at);
        }
    }

    /**
     * Draws the whole stack of a laminate.
     *
     * @param laminate the laminate
     * @param materials the materials it names
     * @param format the reader's units
     */
    public static Drawing of(Laminate laminate, Catalog<Material> materials, QuantityFormat format) {
        List<Layer> layers = new ArrayList<>();
        for (Ply ply : laminate.plies()) {
            Material m = materials.get(ply.material());
            layers.add(Layer.of(
                            layers.size() + 1,
                            m.name(),
                            Optional.of(m),
                            ply.core(),
                            ply.angle().degrees(),
                            format)
                    .inStage(ply.stage()));
        }
        return of(laminate.name(), layers);
    }

    static Drawing of(String name, List<Layer> layers) {
        return of(name, layers, "Mould face");
    }

    /**
     * Draws layers.
     *
     * @param name what they make
     * @param layers the layers, the one that is laid first leading
     * @param base what they lie on
     */
    public static Drawing of(String name, List<Layer> layers, String base) {
        int stages = (int) layers.stream()
                .mapToInt(Layer::stage)
                .filter(x -> x > 0)
                .distinct()
                .count();
        double height = 8 + layers.size() * PITCH + stages * STAGE_GAP + 6;
        List<Shape> shapes = new ArrayList<>();
        double y = height - 6;
        mould(shapes, y, base);
        int stage = Integer.MIN_VALUE;
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            if (layer.stage() != stage) {
                stage = layer.stage();
                if (stage > 0) {
                    y -= STAGE_GAP;
                    stageLine(shapes, stage, y);
                }
            }
            y -= PITCH;
            layer(shapes, layer, y);
        }
        axis(shapes);
        return new Drawing(WIDTH, height, words(name, layers), shapes);
    }

    /** Distance of hatch lines for a cloth weight: heavier is closer, within what a printer can still part. */
    static double spacingMm(double gramsPerM2) {
        return gramsPerM2 <= 0 ? 2 : Math.max(0.8, Math.min(3.2, GRAMS_TIMES_MM / gramsPerM2));
    }

    /** An angle as a builder writes it: with its sign, without idle zeros. */
    public static String angle(double degrees) {
        String number = SvgRenderer.number(Math.abs(degrees));
        return (degrees > 0 && degrees != 90 ? "+" : degrees < 0 ? "\u2212" : "") + number + "\u00b0";
    }

    private static void stageLine(List<Shape> shapes, int stage, double y) {
        shapes.add(Shape.text(0, y + 3.6, "Stage " + stage, 3, Ink.QUIET));
        shapes.add(new Shape.Polyline(
                List.of(new Point(STRIP * 0.36, y + 2.7), new Point(WIDTH, y + 2.7)), Ink.QUIET, 0.15, true));
    }

    private static void axis(List<Shape> shapes) {
        shapes.add(Shape.line(0, 3, STRIP - 2, 3, Ink.INK, 0.35));
        shapes.add(new Shape.Polygon(
                List.of(List.of(new Point(STRIP, 3), new Point(STRIP - 3, 1.8), new Point(STRIP - 3, 4.2))),
                Ink.INK,
                Ink.NONE,
                0));
        shapes.add(Shape.text(STRIP + 2, 4, "axis, 0\u00b0", 3, Ink.QUIET));
    }

    private static void mould(List<Shape> shapes, double y, String base) {
        shapes.add(Shape.Polygon.rectangle(0, y, STRIP, 2.2, Ink.INK, Ink.INK, 0.3));
        shapes.add(Shape.text(STRIP + 2, y + 2, base, 3, Ink.INK));
    }

    private static void layer(List<Shape> shapes, Layer layer, double y) {
        List<List<Point>> strip = List.of(List.of(
                new Point(0, y),
                new Point(STRIP, y),
                new Point(STRIP, y + STRIP_HEIGHT),
                new Point(0, y + STRIP_HEIGHT)));
        shapes.add(new Shape.Polygon(strip, Ink.PAPER, Ink.INK, 0.3));
        shapes.addAll(fill(layer, strip));
        boolean core = layer.kind() == Material.Kind.CORE;
        String head = core
                ? "core"
                : layer.kind() == Material.Kind.TAPE
                        ? angle(layer.angleDeg())
                        : angle(layer.angleDeg()) + " / " + angle(across(layer.angleDeg()));
        shapes.add(Shape.bold(STRIP + 2, y + 3.4, layer.number() + "   " + head, 3.7, Ink.INK));
        String line = layer.name() + (layer.weight().isEmpty() ? "" : ", " + layer.weight());
        double room = WIDTH - STRIP - 2;
        String words = fits(line, room) ? line : layer.name();
        shapes.add(Shape.text(STRIP + 2, y + 7.6, Drawing.fit(words, 3.2, room), 3.2, Ink.INK));
    }

    private static boolean fits(String line, double room) {
        return Drawing.fit(line, 3.2, room).equals(line);
    }

    /** What fills a layer's strip, or a ply on a zone. */
    static List<Shape> fill(Layer layer, List<List<Point>> area) {
        if (layer.kind() == Material.Kind.CORE) {
            return List.of(new Shape.Dots(area, 2, 0.42, Ink.INK));
        }
        double spacing = spacingMm(layer.gramsPerM2());
        Shape along = new Shape.Hatch(area, layer.angleDeg(), spacing, Ink.INK, 0.28);
        if (layer.kind() == Material.Kind.TAPE) {
            return List.of(along);
        }
        return List.of(along, new Shape.Hatch(area, across(layer.angleDeg()), spacing, Ink.QUIET, 0.12));
    }

    /** The second direction of woven cloth, within -90 (left out) to 90 degrees. */
    static double across(double degrees) {
        double a = degrees + 90;
        while (a > 90) {
            a -= 180;
        }
        return a;
    }

    private static String words(String name, List<Layer> layers) {
        StringBuilder s = new StringBuilder("Ply stack of " + name + ", from the mould face: ");
        for (int i = 0; i < layers.size(); i++) {
            Layer l = layers.get(i);
            s.append(String.format(
                    Locale.ROOT,
                    "%s%d %s%s",
                    i == 0 ? "" : "; ",
                    l.number(),
                    l.name(),
                    l.kind() == Material.Kind.CORE ? "" : " at " + angle(l.angleDeg())));
        }
        return s.append('.').toString();
    }
}
