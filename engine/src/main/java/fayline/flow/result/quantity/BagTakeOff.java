package fayline.flow.result.quantity;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Material;
import fayline.method.bag.BagStack.Margins;
import fayline.method.bag.BagStackCalculator;
import fayline.method.bag.BagStackResult;
import fayline.method.bag.Cover;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The consumables of a bag over a stage of a part, from its true area and edge, by {@link BagStackCalculator}. Sheets have
 * {@value #SHEET_SPARE} of spare (common practice, no source); a pleat is as high as the mould is deep and 50 mm more, and never
 * under 100 mm. Bags are computed once and kept; not for use by several threads at a time.
 */
public final class BagTakeOff {
    private static final double PLEAT_OVER_DEPTH_M = 0.05;
    private static final double LEAST_PLEAT_M = 0.10;
    private static final double SHEET_SPARE = 0.10;

    private final Definition definition;
    private final Map<Covered, BagStackResult> known = new HashMap<>();

    /** What a bag covers; a shape is the same only as itself. */
    private record Covered(Shape shape, int stage) {}

    /**
     * Takes off with the materials of a definition.
     *
     * @param definition the definition
     */
    public BagTakeOff(Definition definition) {
        this.definition = definition;
    }

    /**
     * The bag over a stage of a part.
     *
     * @param shape the part's measures
     * @param stage the stage; 0 for the whole part
     * @param chosen the material that the make names for a kind, as {@code peel-ply}; empty where it names none
     */
    public BagStack bag(Shape shape, int stage, Function<String, Optional<String>> chosen) {
        BagStackResult result = calculate(shape, stage);
        Margins margins = Margins.assumed();
        Length film = margins.breather().plus(margins.tapeBeyondBreather()).plus(margins.handEdge());
        List<BagStack.Layer> layers = new ArrayList<>();
        layers.add(layer("peel ply", Material.Kind.PEEL_PLY, result.peelPly(), margins.peelPly(), chosen));
        layers.add(layer(
                "perforated film",
                Material.Kind.PERFORATED_FILM,
                result.perforatedFilm(),
                margins.perforatedFilm(),
                chosen));
        layers.add(layer("breather", Material.Kind.BREATHER, result.breather(), margins.breather(), chosen));
        layers.add(layer("bag", Material.Kind.BAG_FILM, result.film(), film, chosen));
        return new BagStack(
                layers,
                material(Material.Kind.SEALANT_TAPE, chosen),
                result.tape().orElse(new Length(0)),
                shape.pleats(stage),
                pleatHeight(shape),
                result.ports().orElse(1),
                figures(shape, stage, result));
    }

    /** Length of sealant tape over a stage in metres, for rates that count it. */
    public double tapeM(Shape shape, int stage) {
        return calculate(shape, stage).tape().map(Length::metres).orElse(0.0);
    }

    private BagStackResult calculate(Shape shape, int stage) {
        return known.computeIfAbsent(new Covered(shape, stage), c -> compute(shape, stage));
    }

    private static BagStackResult compute(Shape shape, int stage) {
        Area area = shape.area(stage);
        // No outline has less edge than the circle of its area: a part without a stated edge is taken as one.
        double edgeM = Math.max(shape.edgeM(stage), 2 * Math.sqrt(Math.PI * area.squareMetres()));
        return BagStackCalculator.calculate(fayline.method.bag.BagStack.of(
                new Cover.Convex(area, new Length(edgeM)), 1, shape.pleats(stage), pleatHeight(shape)));
    }

    private static Length pleatHeight(Shape shape) {
        return new Length(Math.max(LEAST_PLEAT_M, shape.depthM() + PLEAT_OVER_DEPTH_M));
    }

    private static List<Figure> figures(Shape shape, int stage, BagStackResult result) {
        List<Figure> figures = new ArrayList<>();
        for (Figure f : result.figures()) {
            List<Input> inputs = new ArrayList<>(f.inputs());
            inputs.add(new Input("margins and pleats", "defaults of the program", Origin.ASSUMED));
            List<String> cautions = new ArrayList<>(f.cautions());
            if (shape.edgeIsSum(stage)) {
                cautions.add("The edge is the sum over several zones, on the safe side; a size \"edge\" narrows it.");
            }
            figures.add(new Figure(f.name(), f.value(), f.formula(), inputs, f.source(), cautions));
        }
        return figures;
    }

    private BagStack.Layer layer(
            String what,
            Material.Kind kind,
            Optional<Area> area,
            Length margin,
            Function<String, Optional<String>> chosen) {
        Area drawn = area.orElse(new Area(0)).times(1 + SHEET_SPARE);
        return new BagStack.Layer(what, material(kind, chosen), drawn, margin);
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
}
