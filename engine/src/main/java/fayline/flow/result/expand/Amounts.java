package fayline.flow.result.expand;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.MixUse;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.stock.Material;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.BagStack;
import fayline.flow.result.quantity.BagTakeOff;
import fayline.flow.result.quantity.Drawn;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PlyCut;
import fayline.flow.result.quantity.Shape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What each step takes. Cloth and core are drawn when they are cut: at a step of kind {@code cut} where the make has one, else
 * when they are laid. Release is counted at {@value #RELEASE_KG_PER_M2} kg for each m2 and coat, common practice, no source.
 */
final class Amounts {
    private static final double RELEASE_KG_PER_M2 = 0.015;

    private final Definition definition;
    private final MixAmounts mixes;
    private final BagTakeOff bags;
    private final Drawn drawn;
    private final Map<Asked, StepAmounts> known = new HashMap<>();

    Amounts(Definition definition) {
        this.definition = definition;
        this.mixes = new MixAmounts(definition);
        this.bags = new BagTakeOff(definition);
        this.drawn = new Drawn(definition);
    }

    /** A step of a make; each is computed once. */
    private record Asked(String made, int number, String key) {}

    StepAmounts of(MakeNode node, RecipeStep step, Shape shape) {
        Asked asked = new Asked(node.made().id(), node.number(), step.id());
        StepAmounts found = known.get(asked);
        if (found == null) {
            found = compute(node, step, shape);
            known.put(asked, found);
        }
        return found;
    }

    private StepAmounts compute(MakeNode node, RecipeStep step, Shape shape) {
        int stage = node.stage(step);
        List<Finding> findings = new ArrayList<>();
        List<StepMix> mixed = new ArrayList<>();
        for (MixUse use : step.mixes()) {
            mixes.of(node, use, shape, stage, findings).ifPresent(mixed::add);
        }
        Optional<BagStack> bag = step.bagged()
                ? Optional.of(bags.bag(shape, stage, kind -> node.with().get(kind)))
                : Optional.empty();
        List<PlyCut> plies = lays(step) ? shape.plies(stage) : List.of();
        List<Need> needs = new ArrayList<>();
        cloth(node, step, stage, plies, needs);
        for (StepMix mix : mixed) {
            needs.add(drawn.need(mix.system(), mix.toMix(), mix.purpose()));
            thickener(node, mix, findings).ifPresent(needs::add);
        }
        bag.ifPresent(b -> consumables(b, needs, findings, node));
        if (step.kind() == StepKind.RELEASE) {
            release(node, step, shape).ifPresent(needs::add);
        }
        return new StepAmounts(stage, plies, mixed, bag, Drawn.sum(needs), findings);
    }

    /** Length of sealant tape on a stage in metres, for rates that count it. */
    double tapeM(Shape shape, int stage) {
        return bags.tapeM(shape, stage);
    }

    private static boolean lays(RecipeStep step) {
        return step.kind() == StepKind.CUT
                || (!step.stage().isBlank() && !step.stage().equals("0") && !step.bagged());
    }

    private void cloth(MakeNode node, RecipeStep step, int stage, List<PlyCut> plies, List<Need> needs) {
        boolean cutApart = node.steps().stream()
                .anyMatch(s -> s.kind() == StepKind.CUT && (node.stage(s) == 0 || node.stage(s) == stage));
        if (step.kind() != StepKind.CUT && cutApart) {
            return;
        }
        List<Integer> laid = node.steps().stream()
                .filter(s -> s.kind() != StepKind.CUT && lays(s))
                .map(node::stage)
                .toList();
        double waste = 1 + definition.shop().clothWaste().ratio();
        for (PlyCut ply : plies) {
            if (step.kind() != StepKind.CUT || laid.contains(ply.stage())) {
                needs.add(drawn.need(ply.material(), ply.area().times(waste), ply.core() ? "core" : "plies"));
            }
        }
    }

    private Optional<Need> thickener(MakeNode node, StepMix mix, List<Finding> findings) {
        if (mix.thickener().ratio() <= 0) {
            return Optional.empty();
        }
        Optional<String> material = chosen(node, Material.Kind.THICKENER);
        if (material.isEmpty()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    node.made().id(),
                    "A thickened mix is called for but no thickener stands among the materials.",
                    "the definition"));
        }
        Mass mass = mix.toMix().times(mix.thickener().ratio());
        return material.map(m -> drawn.need(m, mass, "thickener"));
    }

    private void consumables(BagStack bag, List<Need> needs, List<Finding> findings, MakeNode node) {
        for (BagStack.Layer layer : bag.layers()) {
            layer.material().ifPresent(m -> needs.add(drawn.need(m, layer.area(), "bag")));
            if (layer.material().isEmpty()) {
                findings.add(new Finding(
                        Severity.NOTE,
                        node.made().id(),
                        String.format(
                                Locale.ROOT,
                                "No material of kind %s stands in the definition; it is not counted.",
                                layer.what()),
                        "the definition"));
            }
        }
        bag.tapeMaterial().ifPresent(m -> needs.add(drawn.need(m, bag.tape(), "bag")));
    }

    private Optional<Need> release(MakeNode node, RecipeStep step, Shape shape) {
        double coats = step.hands().stream()
                .filter(h -> h.per().equals("m2"))
                .mapToDouble(h -> node.with().number(h.times(), 1))
                .max()
                .orElse(1);
        double kg = shape.area(0).squareMetres() * coats * RELEASE_KG_PER_M2;
        return chosen(node, Material.Kind.RELEASE).filter(m -> kg > 0).map(m -> drawn.need(m, new Mass(kg), "release"));
    }

    private Optional<String> chosen(MakeNode node, Material.Kind kind) {
        Optional<String> named = node.with()
                .get(kind.key())
                .filter(v -> definition.materials().find(v).isPresent());
        return named.isPresent()
                ? named
                : definition.materials().stream()
                        .filter(m -> m.kind() == kind)
                        .map(Material::id)
                        .findFirst();
    }
}
