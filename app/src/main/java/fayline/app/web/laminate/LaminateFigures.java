package fayline.app.web.laminate;

import fayline.basis.units.ArealMass;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.design.LaminateLoad;
import fayline.flow.result.laminate.LaminateCheck;
import fayline.flow.result.laminate.LaminateCheck.LoadCheck;
import fayline.flow.result.laminate.LaminateCheck.Stack;
import fayline.method.laminate.PlyStress;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Figures of a laminate in the reader's units. */
final class LaminateFigures {
    private static final double MPA = 1e6;
    private static final double PSI = 6894.757293168;
    private static final double PER_MM = 1e3;
    private static final double POUND_PER_INCH = 175.126835;
    private static final double POUND_FORCE = 4.4482216152605;
    private static final double INCH = 0.0254;

    private final QuantityFormat format;
    private final boolean metric;

    LaminateFigures(QuantityFormat format) {
        this.format = format;
        this.metric = format.system() == UnitSystem.METRIC;
    }

    List<LaminateView.Fact> facts(Stack s, String currency) {
        List<LaminateView.Fact> all = new ArrayList<>();
        all.add(fact("Thickness as laid", format.length(new Length(s.thicknessM()))));
        all.add(fact("Mass with resin", mass(s.massKgPerM2())));
        all.add(fact("Cloth, tape and core", cost(s.costPerM2(), currency)));
        all.add(fact("Modulus along (0\u00b0)", modulus(s.exPa())));
        all.add(fact("Modulus across (90\u00b0)", modulus(s.eyPa())));
        all.add(fact("Shear modulus", modulus(s.gxyPa())));
        all.add(fact("Contraction", String.format(Locale.ROOT, "%.3f", s.nuXy())));
        all.add(fact("Bending stiffness along, per width", bending(s.bendXNm())));
        all.add(fact("Bending stiffness across, per width", bending(s.bendYNm())));
        all.add(fact("Stretching bends it", s.coupled() ? "yes: it is not symmetric and warps as it cools" : "no"));
        if (s.expansionKnown()) {
            all.add(fact(
                    "Growth along and across",
                    String.format(
                            Locale.ROOT,
                            "%.1f and %.1f millionths per kelvin",
                            s.expansionXPerK() * 1e6,
                            s.expansionYPerK() * 1e6)));
        } else {
            all.add(fact("Growth and warp", "not reckoned: the expansion of a ply is not entered"));
        }
        return all;
    }

    LaminateView.Load load(LaminateCheck check, LoadCheck l, ToName names) {
        List<LaminateView.Fact> facts = new ArrayList<>();
        facts.add(fact("Acts", acting(l.load())));
        facts.add(fact("From", l.load().origin()));
        facts.add(fact(
                "Can act until the first ply fails",
                l.ratio().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                "%.2f times (asked: %.2f), margin %+.0f %%",
                                l.ratio().getAsDouble(),
                                l.load().factor(),
                                100 * l.margin().orElse(0))
                        : "no ply fails"));
        if (l.ply() > 0) {
            facts.add(fact("First to fail", "ply " + l.ply() + ", " + l.material() + ": " + l.mode()));
        }
        facts.add(fact(
                "By each criterion",
                l.ratios().stream()
                        .map(r -> String.format(Locale.ROOT, "%s %.2f", r.criterion(), r.ratio()))
                        .collect(Collectors.joining("; "))));
        facts.add(fact(
                "Last ply, by ply discount", String.format(Locale.ROOT, "%.2f times; a rough guide", l.lastRatio())));
        List<LaminateView.PlyRow> rows = new ArrayList<>();
        for (int k = 0; k < l.stresses().size(); k++) {
            List<PlyStress> faces = l.stresses().get(k);
            rows.add(new LaminateView.PlyRow(
                    k + 1,
                    names.of(check.laminate().plies().get(k).material()),
                    names.angle(check.laminate().plies().get(k).angle().degrees()),
                    both(faces, PlyStress::s1Pa),
                    both(faces, PlyStress::s2Pa),
                    both(faces, PlyStress::t12Pa)));
        }
        return new LaminateView.Load(l.load().name(), facts, rows);
    }

    /** How a page names materials and angles. */
    interface ToName {
        String of(String material);

        String angle(double degrees);
    }

    private String both(List<PlyStress> faces, ToDoubleFunction<PlyStress> part) {
        return faces.stream().map(f -> number(part.applyAsDouble(f))).collect(Collectors.joining(" / "));
    }

    private String number(double pa) {
        return String.format(Locale.ROOT, metric ? "%.1f" : "%.0f", metric ? pa / MPA : pa / PSI);
    }

    String stressUnit() {
        return metric ? "MPa" : "psi";
    }

    private String acting(LaminateLoad l) {
        List<String> parts = new ArrayList<>();
        force(parts, "along", l.along().si());
        force(parts, "across", l.across().si());
        force(parts, "shear", l.shear().si());
        moment(parts, "bending along", l.bendAlong().si());
        moment(parts, "bending across", l.bendAcross().si());
        moment(parts, "twist", l.twist().si());
        l.service()
                .ifPresent(s -> parts.add("at " + format.temperature(s)
                        + l.cure()
                                .map(c -> ", free of stress at " + format.temperature(c))
                                .orElse("")));
        return parts.isEmpty() ? "nothing" : String.join("; ", parts);
    }

    private void force(List<String> parts, String name, double nPerM) {
        if (nPerM != 0) {
            parts.add(String.format(
                    Locale.ROOT,
                    metric ? "%s %.4g N/mm" : "%s %.4g lbf/in",
                    name,
                    metric ? nPerM / PER_MM : nPerM / POUND_PER_INCH));
        }
    }

    private void moment(List<String> parts, String name, double n) {
        if (n != 0) {
            parts.add(String.format(
                    Locale.ROOT,
                    metric ? "%s %.4g N (N mm per mm)" : "%s %.4g lbf (in lbf per in)",
                    name,
                    metric ? n : n / POUND_FORCE));
        }
    }

    private String modulus(double pa) {
        return metric
                ? String.format(Locale.ROOT, "%.2f GPa", pa / 1e9)
                : String.format(Locale.ROOT, "%.3f Msi", pa / PSI / 1e6);
    }

    private String bending(double nm) {
        return metric
                ? String.format(Locale.ROOT, "%.4g N m", nm)
                : String.format(Locale.ROOT, "%.4g in lbf", nm / POUND_FORCE / INCH);
    }

    private String mass(OptionalDouble kgPerM2) {
        return kgPerM2.isPresent() ? format.arealMass(new ArealMass(kgPerM2.getAsDouble())) : "not entered";
    }

    private static String cost(OptionalDouble perM2, String currency) {
        return perM2.isPresent()
                ? String.format(Locale.ROOT, "%.2f %s/m2", perM2.getAsDouble(), currency)
                : "no price by area";
    }

    List<LaminateView.Row> compared(LaminateCheck now, LaminateCheck then, String currency) {
        List<LaminateView.Row> rows = new ArrayList<>();
        rows.add(new LaminateView.Row(
                "Answer", now.verdict().words(), then.verdict().words()));
        rows.add(new LaminateView.Row("Smallest margin", margin(now), margin(then)));
        List<LaminateView.Fact> a = now.stack().map(s -> facts(s, currency)).orElse(List.of());
        List<LaminateView.Fact> b = then.stack().map(s -> facts(s, currency)).orElse(List.of());
        for (LaminateView.Fact f : a) {
            String other = b.stream()
                    .filter(x -> x.name().equals(f.name()))
                    .map(LaminateView.Fact::value)
                    .findFirst()
                    .orElse("cannot be reckoned");
            rows.add(new LaminateView.Row(f.name(), f.value(), other));
        }
        return rows;
    }

    private static String margin(LaminateCheck c) {
        return c.smallest()
                .map(s -> String.format(
                        Locale.ROOT,
                        "%+.0f %%, %s",
                        100 * s.margin().orElse(0),
                        s.load().name()))
                .orElse("none reckoned");
    }

    static LaminateView.Fact fact(String name, String value) {
        return new LaminateView.Fact(name, value);
    }
}
