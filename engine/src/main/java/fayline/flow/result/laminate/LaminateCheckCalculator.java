package fayline.flow.result.laminate;

import fayline.basis.units.Temperature;
import fayline.flow.project.catalog.Catalog;
import fayline.flow.project.design.LaminateLoad;
import fayline.flow.project.stock.Material;
import fayline.flow.result.laminate.LaminateCheck.Input;
import fayline.flow.result.laminate.LaminateCheck.LoadCheck;
import fayline.flow.result.laminate.LaminateCheck.Ratio;
import fayline.flow.result.laminate.LaminateCheck.Stack;
import fayline.flow.result.laminate.LaminateCheck.Verdict;
import fayline.method.laminate.EngineeringConstants;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.SectionLoad;
import fayline.method.laminate.SectionStrain;
import fayline.method.laminate.strength.Criterion;
import fayline.method.laminate.strength.FirstPlyCalculator;
import fayline.method.laminate.strength.LastPlyCalculator;
import fayline.method.laminate.strength.PlyFailure;
import fayline.method.laminate.strength.PolarCalculator;
import fayline.method.laminate.strength.Strength;
import fayline.method.laminate.strength.StrongPly;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Asks a laminate of the project by its real plies: lamination theory, first ply failure by maximum stress, Tsai-Wu (F12* -0.5) and
 * Hashin, the lowest of them deciding, to the last ply by ply discount [jones1999]. A figure that is missing, assumed or of
 * which nobody says where it is from makes the answer that nothing can be said.
 */
public final class LaminateCheckCalculator {
    private static final double ROUND_DEG = 5;
    private static final List<Criterion> ASKED =
            List.of(Criterion.maxStress(), Criterion.tsaiWu(Criterion.USUAL_F12), Criterion.hashin());

    private LaminateCheckCalculator() {}

    /** Asks. */
    public static LaminateCheck calculate(fayline.flow.project.design.Laminate laminate, Catalog<Material> materials) {
        EnteredStack entered = new EnteredStack(laminate, materials);
        List<String> missing = new ArrayList<>(entered.missing());
        List<Input> inputs = new ArrayList<>(entered.inputs());
        boolean whole = entered.plies().size() == laminate.plies().size();
        boolean strong = whole && missing.isEmpty();
        for (LaminateLoad l : laminate.loads()) {
            inputs.add(new Input("Load: " + l.name(), "entered", l.origin(), true));
            if (change(l) != 0 && !entered.expansionKnown()) {
                missing.add("For \"" + l.name()
                        + "\" the expansion of a ply is not entered: what cooling from cure left in the"
                        + " plies is left out.");
            }
        }
        List<LoadCheck> loads = new ArrayList<>();
        if (strong) {
            laminate.loads().forEach(l -> loads.add(asked(laminate, materials, entered.plies(), l)));
        }
        Optional<LoadCheck> smallest = loads.stream()
                .filter(l -> l.margin().isPresent())
                .min(Comparator.comparingDouble(l -> l.margin().getAsDouble()));
        List<String> untrusted =
                inputs.stream().filter(i -> !i.trusted()).map(Input::of).toList();
        Verdict verdict = laminate.loads().isEmpty() || !missing.isEmpty() || !untrusted.isEmpty()
                ? Verdict.CANNOT_SAY
                : smallest.map(s -> s.margin().getAsDouble() < 0).orElse(false) ? Verdict.NOT_WITHIN : Verdict.WITHIN;
        return new LaminateCheck(
                laminate,
                verdict,
                why(laminate, verdict, smallest, missing, untrusted),
                smallest,
                loads,
                missing,
                inputs,
                whole ? Optional.of(stack(entered)) : Optional.empty());
    }

    private static String why(
            fayline.flow.project.design.Laminate laminate,
            Verdict verdict,
            Optional<LoadCheck> smallest,
            List<String> missing,
            List<String> untrusted) {
        String where = smallest.map(LaminateCheckCalculator::sentence).orElse("");
        if (verdict != Verdict.CANNOT_SAY) {
            return where.isEmpty() ? "No load makes any ply fail." : where;
        }
        if (!missing.isEmpty()) {
            return missing.get(0) + (missing.size() > 1 ? " More is missing below." : "");
        }
        if (!untrusted.isEmpty()) {
            String settle = smallest.map(x -> settles(x, untrusted)).orElse("");
            return "Figures of " + String.join(", ", untrusted) + " are assumed." + settle
                    + (where.isEmpty() ? "" : " With them as they stand: " + where);
        }
        return laminate.loads().isEmpty() ? "Nobody has entered what it must bear (loads)." : where;
    }

    /** The number that would settle it first: the strength that rules, where that one is assumed, else how the load is shared. */
    private static String settles(LoadCheck s, List<String> untrusted) {
        return untrusted.contains(s.material())
                ? " What would settle it first: what " + s.material() + " bears before it fails by " + s.mode() + "."
                : " What would settle it first: the modulus along of " + untrusted.get(0)
                        + ", which says how the load is shared, then what it bears.";
    }

    private static String sentence(LoadCheck s) {
        return String.format(
                Locale.ROOT,
                "\"%s\" can act %.2f times until ply %d (%s) fails, %s by %s; %.2f times are asked: margin %+.0f percent.",
                s.load().name(),
                s.ratio().orElse(0),
                s.ply(),
                s.material(),
                s.mode(),
                s.criterion(),
                s.load().factor(),
                100 * s.margin().orElse(0));
    }

    private static double change(LaminateLoad l) {
        return l.cure().isPresent() && l.service().isPresent()
                ? l.service().map(Temperature::si).orElse(0.0)
                        - l.cure().map(Temperature::si).orElse(0.0)
                : 0;
    }

    private static LoadCheck asked(
            fayline.flow.project.design.Laminate laminate,
            Catalog<Material> materials,
            List<StrongPly> plies,
            LaminateLoad l) {
        SectionLoad load = new SectionLoad(
                l.along().si(),
                l.across().si(),
                l.shear().si(),
                l.bendAlong().si(),
                l.bendAcross().si(),
                l.twist().si(),
                change(l));
        List<Ratio> ratios = new ArrayList<>();
        Optional<PlyFailure> lowest = Optional.empty();
        String criterion = "";
        for (Criterion c : ASKED) {
            Optional<PlyFailure> f =
                    FirstPlyCalculator.calculate(new Strength(plies, load, c)).first();
            f.ifPresent(x -> ratios.add(new Ratio(c.name(), x.ratio())));
            if (f.isPresent()
                    && (lowest.isEmpty() || f.get().ratio() < lowest.get().ratio())) {
                lowest = f;
                criterion = c.name();
            }
        }
        Optional<PlyFailure> first = lowest;
        return new LoadCheck(
                l,
                first.map(f -> OptionalDouble.of(f.ratio())).orElse(OptionalDouble.empty()),
                first.map(f -> OptionalDouble.of(f.ratio() / l.factor() - 1)).orElse(OptionalDouble.empty()),
                first.map(f -> f.ply() + 1).orElse(0),
                first.map(f -> materials
                                .get(laminate.plies().get(f.ply()).material())
                                .name())
                        .orElse(""),
                first.map(LaminateCheckCalculator::mode).orElse(""),
                criterion,
                ratios,
                LastPlyCalculator.calculate(new Strength(plies, load, ASKED.get(0)), LastPlyCalculator.USUAL_SHARE)
                        .lastRatio(),
                stresses(Laminate.of(plies.stream().map(StrongPly::ply).toList()), load));
    }

    private static String mode(PlyFailure f) {
        return "-".equals(f.mode()) ? (f.fibre() ? "mostly along the fibres" : "mostly across or in shear") : f.mode();
    }

    private static List<List<PlyStress>> stresses(Laminate l, SectionLoad load) {
        SectionStrain under = l.strain(load);
        SectionStrain free = l.expansionPerK().times(load.temperatureChangeK());
        List<List<PlyStress>> all = new ArrayList<>();
        for (int k = 0; k < l.plies().size(); k++) {
            List<PlyStress> faces = new ArrayList<>();
            for (int face = 0; face < 2; face++) {
                faces.add(l.stress(k, face, under).plus(l.residual(k, face, free, load.temperatureChangeK())));
            }
            all.add(List.copyOf(faces));
        }
        return all;
    }

    private static Stack stack(EnteredStack entered) {
        Laminate l = Laminate.of(entered.plies().stream().map(StrongPly::ply).toList());
        EngineeringConstants c = l.constants();
        SectionStrain perK = l.expansionPerK();
        double kappa = Math.max(
                Math.max(Math.abs(perK.kappaXPerM()), Math.abs(perK.kappaYPerM())), Math.abs(perK.kappaXyPerM()) / 2);
        return new Stack(
                l.thicknessM(),
                entered.massKgPerM2(),
                entered.costPerM2(),
                c.exPa(),
                c.eyPa(),
                c.gxyPa(),
                c.nuXy(),
                1 / l.compliance(3, 3),
                1 / l.compliance(4, 4),
                !l.isUncoupled(),
                kappa,
                entered.expansionKnown(),
                perK.epsX(),
                perK.epsY(),
                PolarCalculator.calculate(entered.plies(), Optional.empty(), 0, ROUND_DEG));
    }
}
