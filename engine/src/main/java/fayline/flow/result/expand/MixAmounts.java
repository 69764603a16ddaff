package fayline.flow.result.expand;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Area;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Part;
import fayline.flow.project.recipe.MixUse;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.PlyMass;
import fayline.flow.result.quantity.Shape;
import fayline.method.mix.AdhesiveMass;
import fayline.method.mix.AdhesiveMassCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much of a mix a step needs. Cloth: m_f (1 - W_f)/W_f; coats and bedding: area x mass per area, or area x film x density;
 * joints: faying area x bond line x density; fillets: length x r2 (1 - pi/4) x density, the section of a concave fillet in a
 * square corner. Waste is a fraction of what stays in the part (first principles; waste common practice, no source).
 */
final class MixAmounts {
    private static final String SOURCE = "first principles";

    private final Definition definition;
    private final PlyMass plyMass;
    private final QuantityFormat format;

    MixAmounts(Definition definition) {
        this.definition = definition;
        this.plyMass = new PlyMass(definition);
        this.format = new QuantityFormat(definition.facts().units());
    }

    /** The mix; empty where nothing can be said, and then a finding says why. */
    Optional<StepMix> of(MakeNode node, MixUse use, Shape shape, int stage, List<Finding> findings) {
        String id = node.with().value(use.system());
        Optional<ResinSystem> system = definition.systems().find(id);
        if (system.isEmpty()) {
            findings.add(stop(node, "There is no system " + id + " for the mix of " + use.purpose() + "."));
            return Optional.empty();
        }
        List<Input> inputs = new ArrayList<>();
        Optional<Amount> amount = switch (use.purpose()) {
            case "plies" -> plies(node, system.get(), stage, inputs, findings);
            case "joint" -> joint(node, use, system.get(), shape, inputs, findings);
            case "core-bedding" -> spread(node, use, system.get(), shape.coreAreaM2(stage), inputs, findings);
            case "fillet" -> fillet(node, use, system.get(), shape, inputs, findings);
            case "coat" -> spread(node, use, system.get(), shape.area(stage).squareMetres(), inputs, findings);
            default -> fixed(node, use, inputs, findings);
        };
        return amount.map(a -> mix(system.get(), use, a, inputs));
    }

    private StepMix mix(ResinSystem system, MixUse use, Amount a, List<Input> inputs) {
        Mass toMix = new Mass(a.inPartKg() * (1 + a.waste()));
        inputs.add(new Input(
                "waste, of what stays in the part", format.percent(new Fraction(a.waste())), a.wasteOrigin()));
        Figure figure = new Figure(
                "mix of " + system.name() + " for " + use.purpose(),
                format.mass(toMix),
                a.formula() + ", times (1 + waste)",
                inputs,
                SOURCE,
                List.of());
        return new StepMix(system.id(), use.purpose(), new Mass(a.inPartKg()), toMix, use.thickener(), figure);
    }

    private Optional<Amount> plies(
            MakeNode node, ResinSystem system, int stage, List<Input> inputs, List<Finding> findings) {
        if (!(node.made() instanceof Part part)) {
            findings.add(stop(node, "A joint has no plies to wet."));
            return Optional.empty();
        }
        double fibre = 0;
        double resin = 0;
        for (var zone : part.zones()) {
            var laminate = definition.laminates().get(zone.laminate());
            double f = plyMass.fibreKg(zone, stage);
            if (f > 0) {
                inputs.add(new Input(
                        zone.name() + ": cloth at fibre mass fraction " + format.percent(laminate.fibreMassFraction()),
                        format.mass(new Mass(f)),
                        Origin.COMPUTED));
                if (!laminate.system().equals(system.id())) {
                    findings.add(new Finding(
                            Severity.CAUTION,
                            node.made().id(),
                            "Laminate " + laminate.name() + " is drawn with " + laminate.system()
                                    + " but the recipe mixes " + system.id() + ": settle which before mixing.",
                            "the definition"));
                }
            }
            fibre += f;
            resin += plyMass.resinKg(zone, stage);
        }
        if (fibre <= 0) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    node.made().id(),
                    "Stage " + stage + " of " + node.made().name() + " has no cloth to wet, so no resin is counted.",
                    "the definition"));
            return Optional.empty();
        }
        return Optional.of(new Amount(
                resin, definition.shop().resinWaste().ratio(), Origin.ENTERED, "cloth x (1 - W_f)/W_f, zone by zone"));
    }

    private Optional<Amount> joint(
            MakeNode node, MixUse use, ResinSystem system, Shape shape, List<Input> inputs, List<Finding> findings) {
        if (!(node.made() instanceof Joint joint)) {
            return spread(node, use, system, shape.driver("joint-m2", 0).orElse(0), inputs, findings);
        }
        inputs.add(new Input("faying area", format.area(joint.fayingArea()), Origin.ENTERED));
        inputs.add(new Input("bond line", format.length(joint.bondLine()), Origin.ENTERED));
        inputs.add(density(system));
        return Optional.of(new Amount(
                line(joint.fayingArea(), joint.bondLine(), system),
                joint.squeezeOut().ratio(),
                Origin.ENTERED,
                "area x bond line x density"));
    }

    private Optional<Amount> fillet(
            MakeNode node, MixUse use, ResinSystem system, Shape shape, List<Input> inputs, List<Finding> findings) {
        Optional<Quantity> radius = amount(node, use, findings);
        if (radius.isEmpty() || !(radius.get() instanceof Length r)) {
            radius.ifPresent(q -> findings.add(stop(node, "A fillet's amount must be its radius, as 6 mm.")));
            return Optional.empty();
        }
        double lengthM = shape.size("fillet").orElse(shape.jointLengthM() > 0 ? shape.jointLengthM() : shape.edgeM(0));
        inputs.add(new Input("length", format.length(new Length(lengthM)), Origin.ENTERED));
        inputs.add(new Input("radius r", format.length(r), Origin.ENTERED));
        inputs.add(density(system));
        double waste = node.made() instanceof Joint j
                ? j.squeezeOut().ratio()
                : definition.shop().resinWaste().ratio();
        AdhesiveMass.Fillet corner = new AdhesiveMass.Fillet(new Length(lengthM), r, AdhesiveMass.Shape.CONCAVE);
        return Optional.of(new Amount(
                stays(new AdhesiveMass(Optional.empty(), Optional.of(corner), system.density(), new Fraction(0))),
                waste,
                Origin.ENTERED,
                "length x r2 (1 - pi/4) x density"));
    }

    private Optional<Amount> spread(
            MakeNode node, MixUse use, ResinSystem system, double areaM2, List<Input> inputs, List<Finding> findings) {
        Optional<Quantity> amount = amount(node, use, findings);
        if (amount.isEmpty()) {
            return Optional.empty();
        }
        if (amount.get() instanceof Mass m) {
            return fixed(m, inputs);
        }
        double waste = definition.shop().resinWaste().ratio();
        inputs.add(new Input("area", format.area(new Area(areaM2)), Origin.ENTERED));
        inputs.add(new Input("amount", node.with().value(use.amount()), Origin.ENTERED));
        if (amount.get() instanceof Length film) {
            inputs.add(density(system));
            return Optional.of(
                    new Amount(line(new Area(areaM2), film, system), waste, Origin.ENTERED, "area x film x density"));
        }
        return Optional.of(new Amount(areaM2 * amount.get().si(), waste, Origin.ENTERED, "area x mass per area"));
    }

    private Optional<Amount> fixed(MakeNode node, MixUse use, List<Input> inputs, List<Finding> findings) {
        Optional<Quantity> amount = amount(node, use, findings);
        if (amount.isPresent() && !(amount.get() instanceof Mass)) {
            findings.add(stop(node, "The amount of a mix for " + use.purpose() + " must be a mass, as 120 g."));
        }
        return amount.filter(q -> q instanceof Mass).flatMap(q -> fixed((Mass) q, inputs));
    }

    private Optional<Amount> fixed(Mass mass, List<Input> inputs) {
        inputs.add(new Input("amount", format.mass(mass), Origin.ENTERED));
        return Optional.of(new Amount(mass.kilograms(), 0, Origin.ENTERED, "as the recipe says"));
    }

    private Optional<Quantity> amount(MakeNode node, MixUse use, List<Finding> findings) {
        String text = node.with().value(use.amount());
        for (QuantityKind<? extends Quantity> kind :
                List.of(QuantityKind.MASS, QuantityKind.LENGTH, QuantityKind.AREAL_MASS)) {
            try {
                return Optional.of(QuantityParser.parse(text, kind).value());
            } catch (UnreadableQuantityException e) {
                // not of this kind: the next one
            }
        }
        findings.add(stop(
                node,
                "The mix for " + use.purpose() + " needs an amount, as 0.5 kg/m2, 0.5 mm or 120 g; found \"" + text
                        + "\"."));
        return Optional.empty();
    }

    private static double line(Area area, Length thickness, ResinSystem system) {
        return stays(AdhesiveMass.ofLine(area, thickness, system.density(), new Fraction(0)));
    }

    private static double stays(AdhesiveMass question) {
        return AdhesiveMassCalculator.calculate(question)
                .inJoint()
                .map(Mass::kilograms)
                .orElse(0.0);
    }

    private static Input density(ResinSystem system) {
        return new Input(
                "density of the mix",
                String.format(
                        java.util.Locale.ROOT, "%.3f g/cm3", system.density().gramsPerCubicCentimetre()),
                Origin.DATA_SHEET);
    }

    private static Finding stop(MakeNode node, String sentence) {
        return new Finding(Severity.STOP, node.made().id() + "/" + node.number(), sentence, "the definition");
    }

    private record Amount(double inPartKg, double waste, Origin wasteOrigin, String formula) {}
}
