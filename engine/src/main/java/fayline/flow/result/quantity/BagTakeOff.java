package fayline.flow.result.quantity;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Material;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * The consumables of a bag from the area and edge of what it covers. A lay-up of area A and edge P needs, of a sheet that
 * reaches m beyond it, A + P m + 4 m2 (as a rectangle, which is more than any smooth convex outline needs). The bag is cut as
 * the rectangle of equal area and edge, each pleat on a side adding twice its height to that direction. Margins, pleats and
 * spare are common practice, no source, and shown as assumed; the order from the part outward is that of AC 43.13-1B par 3-4.
 */
public final class BagTakeOff {
    private static final double PEEL_MARGIN_M = 0.05;
    private static final double FILM_MARGIN_M = 0.03;
    private static final double BREATHER_MARGIN_M = 0.12;
    private static final double TAPE_LINE_M = BREATHER_MARGIN_M + 0.06;
    private static final double HAND_EDGE_M = 0.05;
    private static final double PLEAT_OVER_DEPTH_M = 0.05;
    private static final double LEAST_PLEAT_M = 0.10;
    private static final double SHEET_SPARE = 0.10;
    private static final double TAPE_SPARE = 0.05;
    private static final double ONE_PORT_M2 = 1.0;
    private static final String SOURCE = "first principles; margins common practice, no source";

    private final Definition definition;
    private final QuantityFormat format;

    /**
     * Takes off with the materials of a definition.
     *
     * @param definition the definition
     */
    public BagTakeOff(Definition definition) {
        this.definition = definition;
        this.format = new QuantityFormat(definition.facts().units());
    }

    /**
     * The bag over a stage of a part.
     *
     * @param shape the part's measures
     * @param stage the stage; 0 for the whole part
     * @param chosen the material that the make names for a kind, as {@code peel-ply}; empty where it names none
     */
    public BagStack bag(Shape shape, int stage, Function<String, Optional<String>> chosen) {
        double areaM2 = shape.area(stage).squareMetres();
        double edgeM = Math.max(shape.edgeM(stage), 4 * Math.sqrt(areaM2));
        int pleats = shape.pleats(stage);
        double heightM = Math.max(LEAST_PLEAT_M, shape.depthM() + PLEAT_OVER_DEPTH_M);
        List<BagStack.Layer> layers = new ArrayList<>();
        List<Figure> figures = new ArrayList<>();
        layers.add(sheet("peel ply", Material.Kind.PEEL_PLY, areaM2, edgeM, PEEL_MARGIN_M, chosen, figures));
        layers.add(
                sheet("perforated film", Material.Kind.PERFORATED_FILM, areaM2, edgeM, FILM_MARGIN_M, chosen, figures));
        layers.add(sheet("breather", Material.Kind.BREATHER, areaM2, edgeM, BREATHER_MARGIN_M, chosen, figures));
        layers.add(film(areaM2, edgeM, pleats, heightM, chosen, figures));
        double tapeM = tapeM(edgeM, pleats, heightM);
        figures.add(figure(
                "sealant tape",
                format.length(new Length(tapeM)),
                "(P + 8 m + 2 h n)(1 + spare)",
                List.of(
                        new Input("edge P", format.length(new Length(edgeM)), Origin.ENTERED),
                        new Input("tape line beyond the lay-up m", format.length(new Length(TAPE_LINE_M)), Origin.ASSUMED),
                        new Input("pleats n", Integer.toString(pleats), pleatOrigin(shape)),
                        new Input("height of a pleat h", format.length(new Length(heightM)), Origin.ASSUMED),
                        new Input("spare", "5 %", Origin.ASSUMED)),
                shape.edgeIsSum(stage)
                        ? List.of("The edge is the sum over several zones, on the safe side; a size \"edge\" narrows it.")
                        : List.of()));
        return new BagStack(
                layers,
                material(Material.Kind.SEALANT_TAPE, chosen),
                new Length(tapeM),
                pleats,
                new Length(heightM),
                areaM2 > ONE_PORT_M2 ? 2 : 1,
                figures);
    }

    /** Length of sealant tape over a stage in metres, for rates that count it. */
    public double tapeM(Shape shape, int stage) {
        double edgeM = Math.max(
                shape.edgeM(stage), 4 * Math.sqrt(shape.area(stage).squareMetres()));
        return tapeM(edgeM, shape.pleats(stage), Math.max(LEAST_PLEAT_M, shape.depthM() + PLEAT_OVER_DEPTH_M));
    }

    private static double tapeM(double edgeM, int pleats, double heightM) {
        return (edgeM + 8 * TAPE_LINE_M + 2 * heightM * pleats) * (1 + TAPE_SPARE);
    }

    private BagStack.Layer sheet(
            String what,
            Material.Kind kind,
            double areaM2,
            double edgeM,
            double marginM,
            Function<String, Optional<String>> chosen,
            List<Figure> figures) {
        double m2 = (areaM2 + edgeM * marginM + 4 * marginM * marginM) * (1 + SHEET_SPARE);
        figures.add(figure(
                what,
                format.area(new Area(m2)),
                "(A + P m + 4 m2)(1 + spare)",
                List.of(
                        new Input("area A", format.area(new Area(areaM2)), Origin.ENTERED),
                        new Input("edge P", format.length(new Length(edgeM)), Origin.ENTERED),
                        new Input("margin m", format.length(new Length(marginM)), Origin.ASSUMED),
                        new Input("spare", "10 %", Origin.ASSUMED)),
                List.of()));
        return new BagStack.Layer(what, material(kind, chosen), new Area(m2), new Length(marginM));
    }

    private BagStack.Layer film(
            double areaM2,
            double edgeM,
            int pleats,
            double heightM,
            Function<String, Optional<String>> chosen,
            List<Figure> figures) {
        double half = edgeM / 2;
        double root = Math.sqrt(Math.max(0, half * half / 4 - areaM2));
        double longM = half / 2 + root;
        double shortM = half / 2 - root;
        double out = 2 * (TAPE_LINE_M + HAND_EDGE_M);
        double longPleats = Math.ceil(pleats * longM / edgeM - 1e-9);
        double shortPleats = Math.ceil(pleats * shortM / edgeM - 1e-9);
        double m2 = (longM + out + 2 * heightM * longPleats)
                * (shortM + out + 2 * heightM * shortPleats)
                * (1 + SHEET_SPARE);
        figures.add(figure(
                "bag film",
                format.area(new Area(m2)),
                "(L + 2 e + 2 h nL)(W + 2 e + 2 h nW)(1 + spare), L and W of the rectangle with area A and edge P",
                List.of(
                        new Input("L x W", format.length(new Length(longM)) + " x " + format.length(new Length(shortM)),
                                Origin.COMPUTED),
                        new Input("tape line and hand edge beyond the lay-up e", format.length(new Length(out / 2)),
                                Origin.ASSUMED),
                        new Input("pleats on a long and a short side", (int) longPleats + " and " + (int) shortPleats,
                                Origin.COMPUTED),
                        new Input("height of a pleat h", format.length(new Length(heightM)), Origin.ASSUMED),
                        new Input("spare", "10 %", Origin.ASSUMED)),
                List.of("A bag cut to the flat size bridges inside corners.")));
        return new BagStack.Layer(
                "bag", material(Material.Kind.BAG_FILM, chosen), new Area(m2), new Length(out / 2));
    }

    private Optional<String> material(Material.Kind kind, Function<String, Optional<String>> chosen) {
        Optional<String> named = chosen.apply(kind.key());
        return named.isPresent()
                ? named
                : definition.materials().stream()
                        .filter(m -> m.kind() == kind)
                        .map(Material::id)
                        .findFirst();
    }

    private static Origin pleatOrigin(Shape shape) {
        return shape.size("pleats").isPresent() ? Origin.ENTERED : Origin.ASSUMED;
    }

    private static Figure figure(
            String name, String value, String formula, List<Input> inputs, List<String> cautions) {
        return new Figure(name, value, formula, inputs, SOURCE, cautions);
    }
}
