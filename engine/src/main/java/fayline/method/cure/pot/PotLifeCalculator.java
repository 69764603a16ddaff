package fayline.method.cure.pot;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.RateRule;
import fayline.method.cure.SheetPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Pot life of a mixed mass: the data-sheet time, brought to the temperature by the system's own law and to the mass by a power
 * law between two data-sheet masses; no claim beyond them. A shallow tray instead of the sheet's cup counts as 1.2 times the
 * life (thin films live two to four times as long, from memory), a cup instead of the sheet's tray as a quarter, a thickened
 * mix as 0.7 times: estimates on the safe side, common practice, no source, always marked.
 */
public final class PotLifeCalculator {
    /** Factor on the life of a cup when the mix is poured out into a shallow tray. */
    static final double TRAY_FOR_CUP = 1.2;

    /** Factor on the life of a tray when the mix stays in a cup. */
    static final double CUP_FOR_TRAY = 0.25;

    /** Factor for a thickened mix, whose filler keeps the heat in. */
    static final double THICKENED = 0.7;

    private static final String CP = "common practice, no source";
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    private PotLifeCalculator() {}

    /** Answers the question. */
    public static PotLifeResult calculate(PotLife question) {
        List<SheetPoint> all = question.sheet().points().stream()
                .filter(p -> p.state() == CureState.POT_LIFE && p.time().seconds() > 0)
                .toList();
        List<Finding> findings = new ArrayList<>();
        if (all.isEmpty()) {
            findings.add(stop("The data sheet gives no pot life: not covered."));
            return none(OptionalDouble.empty(), Optional.empty(), findings);
        }
        List<SheetPoint> points = MassLaw.ofShape(all, question.shape());
        MassLaw law =
                MassLaw.of(question.sheet(), points, question.temperature().kelvins(), question.exponent());
        double mass = question.mass().map(Mass::kilograms).orElse(law.smallest());
        Optional<Mass> most =
                Double.isInfinite(law.largest()) ? Optional.empty() : Optional.of(new Mass(law.largest()));
        if (!law.massless() && !(mass > 0)) {
            findings.add(stop("A pot life needs a mass above zero: not covered."));
            return none(law.exponent(), most, findings);
        }
        double seconds = law.secondsAt(mass);
        if (!Double.isFinite(seconds)) {
            findings.add(stop(String.format(
                    Locale.ROOT,
                    "%s lies above the largest mass for which the data sheet allows a pot life (%s): not covered, mix less.",
                    FORMAT.mass(new Mass(mass)),
                    FORMAT.mass(new Mass(law.largest())))));
            return none(law.exponent(), most, findings);
        }
        double factor = factor(question, points.get(0).shape());
        sayFactor(question, points.get(0).shape(), findings);
        if (law.estimatedAt(mass)) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "pot life",
                    "The sheet gives one mass only; above it the life is taken to fall in proportion to the mass (estimate"
                            + " on the safe side).",
                    CP));
        }
        if (law.law().rule().origin() == RateRule.Origin.DOUBLING
                && !law.law().reference().equals(question.temperature())) {
            findings.add(new Finding(
                    Severity.NOTE, "pot life", "The factor of two per 10 K is assumed for this system.", CP));
        }
        findings.addAll(law.law().cautionsAt(question.temperature()));
        TimeSpan life = new TimeSpan(seconds * factor);
        boolean estimated = factor != 1 || law.estimatedAt(mass);
        return new PotLifeResult(
                Optional.of(life),
                law.exponent(),
                most,
                estimated,
                Optional.of(figure(question, points, law, mass, life, findings)),
                findings);
    }

    /** The factor on the data-sheet life for container and thickener. */
    static double factor(PotLife question, PotShape sheet) {
        double factor = question.thickened() ? THICKENED : 1;
        if (sheet == question.shape()) {
            return factor;
        }
        return factor * (question.shape() == PotShape.TRAY ? TRAY_FOR_CUP : CUP_FOR_TRAY);
    }

    private static void sayFactor(PotLife question, PotShape sheet, List<Finding> findings) {
        if (sheet == PotShape.CUP && question.shape() == PotShape.TRAY) {
            findings.add(
                    estimate("A shallow tray is counted as 1.2 times the life of the data sheet's cup (estimate)."));
        } else if (sheet == PotShape.TRAY && question.shape() == PotShape.CUP) {
            findings.add(estimate("A cup is counted as a quarter of the life of the data sheet's tray (estimate)."));
        }
        if (question.thickened()) {
            findings.add(estimate("A thickened mix is counted as 0.7 times the life of the plain one (estimate)."));
        }
    }

    private static Figure figure(
            PotLife question,
            List<SheetPoint> points,
            MassLaw law,
            double mass,
            TimeSpan life,
            List<Finding> findings) {
        List<Figure.Input> inputs = new ArrayList<>();
        for (SheetPoint p : points) {
            inputs.add(new Figure.Input(
                    "data-sheet pot life",
                    FORMAT.span(p.time()) + " at " + FORMAT.temperature(p.at())
                            + p.mass().map(m -> " for " + FORMAT.mass(m)).orElse(""),
                    Figure.Origin.DATA_SHEET));
        }
        inputs.add(new Figure.Input("temperature", FORMAT.temperature(question.temperature()), Figure.Origin.ENTERED));
        if (!law.massless()) {
            inputs.add(new Figure.Input("mass", FORMAT.mass(new Mass(mass)), Figure.Origin.ENTERED));
        }
        inputs.add(new Figure.Input(
                "dependence on temperature",
                law.law().rule().sentence(),
                law.law().rule().origin() == RateRule.Origin.DOUBLING
                        ? Figure.Origin.ASSUMED
                        : Figure.Origin.DATA_SHEET));
        law.exponent()
                .ifPresent(n -> inputs.add(new Figure.Input(
                        "mass exponent",
                        String.format(Locale.ROOT, "%.3f", n),
                        question.exponent().isPresent() ? Figure.Origin.ENTERED : Figure.Origin.COMPUTED)));
        return new Figure(
                "Pot life",
                FORMAT.span(life),
                "t = t1 (m1/m)^n / rate factor(T) x container and thickener factors",
                inputs,
                CP,
                findings.stream().map(Finding::sentence).toList());
    }

    private static Finding estimate(String sentence) {
        return new Finding(Severity.NOTE, "pot life", sentence, CP);
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "pot life", sentence, "the definition");
    }

    private static PotLifeResult none(OptionalDouble exponent, Optional<Mass> most, List<Finding> findings) {
        return new PotLifeResult(Optional.empty(), exponent, most, false, Optional.empty(), findings);
    }
}
