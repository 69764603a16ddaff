package fayline.method.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.ArealMass;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Fibre m_f = A sum(w), resin in the part m_r = m_f (1 - W)/W, mix to weigh m_r (1 + waste) (mass balance);
 * V_f = (W/rho_f)/(W/rho_f + (1 - W)/rho_r) and thickness sum(w)/(rho_f V_f), without voids (rule of mixtures, [astm-d3171]
 * method II rearranged).
 */
public final class LaminateMassCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final double LEAST_USUAL = 0.3;
    private static final double MOST_USUAL = 0.75;

    private LaminateMassCalculator() {}

    /** Answers the question. */
    public static LaminateMassResult calculate(LaminateMass stack) {
        double w = stack.fibreFraction().ratio();
        double areal = stack.plies().stream()
                .mapToDouble(ArealMass::kilogramsPerSquareMetre)
                .sum();
        boolean positive = stack.plies().stream().allMatch(p -> p.kilogramsPerSquareMetre() >= 0);
        if (!(w > 0 && w <= 1)
                || !positive
                || !(stack.waste().ratio() >= 0)
                || stack.area().map(a -> a.squareMetres() < 0).orElse(false)) {
            return refused("The fibre fraction must lie above 0 and up to 1, and areas, cloth and waste must not be"
                    + " negative: not covered.");
        }
        Optional<Mass> fibre = stack.area().map(a -> new Mass(a.squareMetres() * areal));
        Optional<Mass> resin = fibre.map(f -> new Mass(f.kilograms() * (1 - w) / w));
        Optional<Mass> mix = resin.map(r -> r.times(1 + stack.waste().ratio()));
        Optional<Fraction> volume = Optional.empty();
        Optional<Length> thickness = Optional.empty();
        if (stack.fibreDensity().isPresent() && stack.resinDensity().isPresent()) {
            double rf = stack.fibreDensity().get().si();
            double rr = stack.resinDensity().get().si();
            if (!(rf > 0 && rr > 0)) {
                return refused("Densities must be positive: not covered.");
            }
            double v = w / rf / (w / rf + (1 - w) / rr);
            volume = Optional.of(new Fraction(v));
            thickness = Optional.of(new Length(areal / (rf * v)));
        }
        Optional<Mass> whole = fibre.flatMap(f -> resin.map(f::plus));
        return new LaminateMassResult(
                fibre, resin, mix, whole, volume, thickness, figures(stack, fibre, resin, mix), findings(w));
    }

    private static List<Finding> findings(double w) {
        if (w >= LEAST_USUAL && w <= MOST_USUAL) {
            return List.of();
        }
        return List.of(new Finding(
                Severity.CAUTION,
                "fibre fraction",
                String.format(
                        Locale.ROOT,
                        "A fibre mass fraction of %.0f percent is outside what hand work gives (30 to 75): check it.",
                        w * 100),
                "common practice, no source"));
    }

    private static List<Figure> figures(
            LaminateMass stack, Optional<Mass> fibre, Optional<Mass> resin, Optional<Mass> mix) {
        if (fibre.isEmpty() || resin.isEmpty() || mix.isEmpty() || stack.area().isEmpty()) {
            return List.of();
        }
        List<Figure.Input> cloth = new ArrayList<>();
        cloth.add(new Figure.Input("area", FORMAT.area(stack.area().get()), Figure.Origin.ENTERED));
        for (ArealMass p : stack.plies()) {
            cloth.add(new Figure.Input("ply", FORMAT.arealMass(p), Figure.Origin.DATA_SHEET));
        }
        return List.of(
                new Figure(
                        "Fibre", FORMAT.mass(fibre.get()), "area x sum of the plies", cloth, "mass balance", List.of()),
                new Figure(
                        "Mixed resin to weigh",
                        FORMAT.mass(mix.get()),
                        "fibre x (1 - W)/W x (1 + waste)",
                        List.of(
                                new Figure.Input("fibre", FORMAT.mass(fibre.get()), Figure.Origin.COMPUTED),
                                new Figure.Input(
                                        "fibre mass fraction W",
                                        FORMAT.percent(stack.fibreFraction()),
                                        Figure.Origin.ENTERED),
                                new Figure.Input(
                                        "waste, of the resin in the part",
                                        FORMAT.percent(stack.waste()),
                                        Figure.Origin.ENTERED),
                                new Figure.Input(
                                        "resin in the part", FORMAT.mass(resin.get()), Figure.Origin.COMPUTED)),
                        "mass balance",
                        List.of()));
    }

    private static LaminateMassResult refused(String sentence) {
        return new LaminateMassResult(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(new Finding(Severity.STOP, "laminate", sentence, "mass balance")));
    }
}
