package fayline.flow.result;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.Zone;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.Drawn;
import fayline.flow.result.quantity.JointResult;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.quantity.PlyMass;
import fayline.flow.result.quantity.Shape;
import fayline.flow.result.quantity.ZoneResult;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Sums steps and zones up to parts and joints. */
final class Parts {
    private static final double OVER_TARGET = 1.05;

    private final Definition definition;
    private final ShopState state;
    private final PlyMass plyMass;
    private final QuantityFormat format;

    Parts(Definition definition, ShopState state) {
        this.definition = definition;
        this.state = state;
        this.plyMass = new PlyMass(definition);
        this.format = new QuantityFormat(definition.facts().units());
    }

    PartResult part(Part part, List<StepResult> steps) {
        Shape shape = Shape.of(definition, part);
        List<ZoneResult> zones = part.zones().stream().map(this::zone).toList();
        double fibre = zones.stream().mapToDouble(z -> z.fibre().kilograms()).sum();
        double core = zones.stream().mapToDouble(z -> z.core().kilograms()).sum();
        double resin = zones.stream().mapToDouble(z -> z.resin().kilograms()).sum();
        double other = steps.stream()
                .flatMap(s -> s.mixes().stream())
                .filter(m -> !m.purpose().equals("plies"))
                .mapToDouble(m -> m.inPart().kilograms() * (1 + m.thickener().ratio()))
                .sum();
        Mass asMade = new Mass(fibre + core + resin + other);
        List<Need> needs = needs(steps);
        Optional<Entered<Mass>> weighed = Optional.ofNullable(state.weighed().get(part.id()));
        List<Figure> figures = new ArrayList<>();
        if (asMade.kilograms() > 0) {
            figures.add(mass(fibre, core, resin, other, asMade));
            figures.add(cost(needs));
        }
        steps.stream().flatMap(s -> s.mixes().stream()).map(StepMix::figure).forEach(figures::add);
        steps.stream()
                .flatMap(s -> s.bag().stream())
                .flatMap(b -> b.figures().stream())
                .forEach(figures::add);
        return new PartResult(
                part.id(),
                shape.area(0),
                new Length(shape.edgeM(0)),
                zones,
                shape.plies(0),
                needs,
                new Mass(fibre + core),
                asMade,
                part.target(),
                weighed,
                Drawn.cost(needs),
                personMinutes(steps),
                figures,
                findings(part, asMade, weighed, needs));
    }

    JointResult joint(Joint joint, List<StepResult> steps) {
        List<StepMix> mixes = steps.stream()
                .flatMap(s -> s.mixes().stream())
                .filter(m -> m.system().equals(joint.adhesive()))
                .toList();
        List<Need> needs = needs(steps);
        return new JointResult(
                joint.id(),
                joint.fayingArea(),
                new Mass(mixes.stream().mapToDouble(m -> m.inPart().kilograms()).sum()),
                new Mass(mixes.stream().mapToDouble(m -> m.toMix().kilograms()).sum()),
                needs,
                Drawn.cost(needs),
                personMinutes(steps),
                mixes.stream().map(StepMix::figure).toList());
    }

    private static List<Need> needs(List<StepResult> steps) {
        return Drawn.sum(steps.stream().flatMap(s -> s.needs().stream()).toList());
    }

    private static int personMinutes(List<StepResult> steps) {
        return steps.stream().mapToInt(StepResult::personMinutes).sum();
    }

    private ZoneResult zone(Zone zone) {
        var thickness = plyMass.thicknessM(zone);
        return new ZoneResult(
                zone.id(),
                zone.laminate(),
                zone.area(),
                new Mass(plyMass.fibreKg(zone, 0)),
                new Mass(plyMass.coreKg(zone, 0)),
                new Mass(plyMass.resinKg(zone, 0)),
                thickness.isPresent() ? Optional.of(new Length(thickness.getAsDouble())) : Optional.empty());
    }

    private Figure mass(double fibre, double core, double resin, double other, Mass asMade) {
        return new Figure(
                "mass as made",
                format.mass(asMade),
                "cloth + core + resin in the plies + other mixes that stay in the part",
                List.of(
                        new Input("cloth", format.mass(new Mass(fibre)), Origin.COMPUTED),
                        new Input("core and sheet", format.mass(new Mass(core)), Origin.COMPUTED),
                        new Input("resin in the plies", format.mass(new Mass(resin)), Origin.COMPUTED),
                        new Input("bedding, coats and fillets", format.mass(new Mass(other)), Origin.COMPUTED)),
                "first principles",
                List.of("Before trimming; paint, fasteners and what is bought in are not counted. Weigh the part."));
    }

    private Figure cost(List<Need> needs) {
        List<Input> inputs = needs.stream()
                .map(n -> new Input(
                        n.of(),
                        n.cost().isPresent()
                                ? String.format(
                                        java.util.Locale.ROOT, "%.2f", n.cost().getAsDouble())
                                : "no price",
                        n.cost().isPresent() ? Origin.COMPUTED : Origin.ASSUMED))
                .toList();
        return new Figure(
                "cost of materials",
                String.format(
                        java.util.Locale.ROOT,
                        "%.2f %s",
                        Drawn.cost(needs),
                        definition.facts().currency()),
                "sum of amount x price",
                inputs,
                "the definition",
                List.of());
    }

    private List<Finding> findings(Part part, Mass asMade, Optional<Entered<Mass>> weighed, List<Need> needs) {
        List<Finding> findings = new ArrayList<>();
        part.target().ifPresent(t -> {
            Mass mass = weighed.map(Entered::value).orElse(asMade);
            if (mass.kilograms() > t.value().kilograms() * (weighed.isPresent() ? 1 : OVER_TARGET)) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        part.id(),
                        part.name() + (weighed.isPresent() ? " weighs " : " is computed at ") + format.mass(mass)
                                + ", " + format.mass(mass.minus(t.value())) + " over its target of "
                                + format.mass(t.value()) + ".",
                        "the definition"));
            }
        });
        part.zones().stream()
                .flatMap(z -> definition.laminates().get(z.laminate()).plies().stream())
                .map(p -> p.material())
                .distinct()
                .filter(m -> plyMass.arealKgPerM2(m).isEmpty())
                .forEach(m -> findings.add(new Finding(
                        Severity.CAUTION,
                        part.id(),
                        "The mass of " + m + " is not known (neither areal mass nor thickness and density), so "
                                + part.name() + " is computed without it.",
                        "the definition")));
        List<String> unpriced =
                needs.stream().filter(n -> n.cost().isEmpty()).map(Need::of).toList();
        if (!unpriced.isEmpty()) {
            findings.add(new Finding(
                    Severity.NOTE,
                    part.id(),
                    "No price is known of " + String.join(", ", unpriced) + "; the cost leaves it out.",
                    "the definition"));
        }
        return findings;
    }
}
