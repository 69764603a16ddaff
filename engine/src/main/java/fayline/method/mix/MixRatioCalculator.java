package fayline.method.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two-part ratios by mass: A = M a/(a + b), B = M b/(a + b); by volume b_v = b rho_A/rho_B per 100 A; deviation of a weighed
 * mix (B/A)/(b/a) - 1 against the data sheet's tolerance, and the top-up: hardener A b/a - B where there is too little, resin
 * B a/b - A where there is too much (mass balance). Numbers by weight never hold for cups and pumps.
 */
public final class MixRatioCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final String BALANCE = "mass balance";

    private MixRatioCalculator() {}

    /** Answers the questions. */
    public static MixRatioResult calculate(MixRatio mix) {
        double a = mix.partsResin();
        double b = mix.partsHardener();
        if (!(a > 0 && b > 0 && Double.isFinite(a) && Double.isFinite(b)) || negative(mix)) {
            return new MixRatioResult(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of(new Finding(
                            Severity.STOP,
                            "mix ratio",
                            "Both parts, weighed resin and densities must be positive, masses and the tolerance not"
                                    + " negative: not covered.",
                            BALANCE)));
        }
        Optional<Mass> resin = mix.total().map(m -> m.times(a / (a + b)));
        Optional<Mass> hardener = mix.total().map(m -> m.times(b / (a + b)));
        Optional<Mass> off = hardener.flatMap(h -> mix.tolerance().map(t -> h.times(t.ratio())));
        OptionalDouble volume =
                mix.resinDensity().isPresent() && mix.hardenerDensity().isPresent()
                        ? OptionalDouble.of(100
                                * b
                                / a
                                * mix.resinDensity().get().si()
                                / mix.hardenerDensity().get().si())
                        : OptionalDouble.empty();
        List<Finding> findings = new ArrayList<>();
        List<Figure> figures = new ArrayList<>();
        mix.total().ifPresent(m -> figures.add(splitFigure(mix, m, hardener.orElse(m))));
        if (volume.isPresent()) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "mix ratio",
                    String.format(
                            Locale.ROOT,
                            "100:%.4g by weight is 100:%.4g by volume: never use one for the other.",
                            100 * b / a,
                            volume.getAsDouble()),
                    BALANCE));
        }
        Check check = check(mix, findings, figures);
        return new MixRatioResult(
                resin,
                hardener,
                off,
                volume,
                check.deviation(),
                check.inTolerance(),
                check.hardenerToAdd(),
                check.resinToAdd(),
                figures,
                findings);
    }

    private static boolean negative(MixRatio mix) {
        return mix.total().map(m -> m.kilograms() < 0).orElse(false)
                || mix.tolerance().map(t -> t.ratio() < 0).orElse(false)
                || mix.resinWeighed().map(m -> !(m.kilograms() > 0)).orElse(false)
                || mix.hardenerWeighed().map(m -> m.kilograms() < 0).orElse(false)
                || mix.resinDensity().map(d -> !(d.si() > 0)).orElse(false)
                || mix.hardenerDensity().map(d -> !(d.si() > 0)).orElse(false);
    }

    private static Check check(MixRatio mix, List<Finding> findings, List<Figure> figures) {
        if (mix.resinWeighed().isEmpty() || mix.hardenerWeighed().isEmpty()) {
            return new Check(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        }
        double nominal = mix.partsHardener() / mix.partsResin();
        double resin = mix.resinWeighed().get().kilograms();
        double hardener = mix.hardenerWeighed().get().kilograms();
        double deviation = hardener / resin / nominal - 1;
        Mass addHardener = new Mass(Math.max(0, resin * nominal - hardener));
        Mass addResin = new Mass(Math.max(0, hardener / nominal - resin));
        Optional<Boolean> within = mix.tolerance().map(t -> Math.abs(deviation) <= t.ratio() + 1e-12);
        String shown = String.format(Locale.ROOT, "%+.1f percent", deviation * 100);
        if (within.isPresent() && !within.get()) {
            findings.add(new Finding(
                    Severity.STOP,
                    "mix ratio",
                    "The hardener is off by " + shown + ", "
                            + String.format(
                                    Locale.ROOT,
                                    "%.1f percent is allowed",
                                    mix.tolerance().orElseThrow().percent())
                            + ": add "
                            + (deviation < 0
                                    ? FORMAT.scaleMass(addHardener) + " of hardener"
                                    : FORMAT.scaleMass(addResin) + " of resin")
                            + " before the pot life has run, or throw the mix away.",
                    "the definition"));
        }
        figures.add(new Figure(
                "Deviation of the hardener",
                shown,
                "(B/A)/(b/a) - 1",
                List.of(
                        new Figure.Input(
                                "resin A", FORMAT.scaleMass(mix.resinWeighed().get()), Figure.Origin.MEASURED),
                        new Figure.Input(
                                "hardener B",
                                FORMAT.scaleMass(mix.hardenerWeighed().get()),
                                Figure.Origin.MEASURED),
                        ratio(mix)),
                BALANCE,
                List.of()));
        return new Check(Optional.of(new Fraction(deviation)), within, Optional.of(addHardener), Optional.of(addResin));
    }

    private static Figure splitFigure(MixRatio mix, Mass total, Mass hardener) {
        return new Figure(
                "Hardener",
                FORMAT.scaleMass(hardener),
                "total x b/(a + b), by mass",
                List.of(new Figure.Input("total", FORMAT.scaleMass(total), Figure.Origin.COMPUTED), ratio(mix)),
                BALANCE,
                List.of());
    }

    private static Figure.Input ratio(MixRatio mix) {
        return new Figure.Input(
                "ratio a:b by mass",
                String.format(Locale.ROOT, "%.4g:%.4g", mix.partsResin(), mix.partsHardener()),
                Figure.Origin.DATA_SHEET);
    }

    private record Check(
            Optional<Fraction> deviation,
            Optional<Boolean> inTolerance,
            Optional<Mass> hardenerToAdd,
            Optional<Mass> resinToAdd) {}
}
