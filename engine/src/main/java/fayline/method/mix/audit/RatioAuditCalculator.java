package fayline.method.mix.audit;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.StandardNormal;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.method.mix.audit.RatioAuditResult.Verdict;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.FirstOrder;
import fayline.method.uncertainty.FirstOrderCalculator;
import fayline.method.uncertainty.FirstOrderResult;
import fayline.method.uncertainty.Formula;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Audits a mixing ratio by what is left (mass balance): of each part used = before - left; less what the mixes with scale
 * readings took, that is what the mixes without readings took, and their deviation (B/A)/(b/a) - 1. Where every mix has a
 * reading, all are judged by what is gone. The uncertainty is of first order [jcgm100], 5.1.2, expanded by the normal quantile
 * of the coverage; kept means that deviation and uncertainty together stay within the tolerance, not kept that they stay
 * outside, and between the two nothing can be told (guarded acceptance and rejection, [jcgm106], 8.3). Left out: what stuck to
 * cups and sticks, which takes both parts with it in the ratio in which they were mixed.
 */
public final class RatioAuditCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final String ABOUT = "mixing ratio";
    private static final String SOURCE = "[jcgm100] 5.1.2, [jcgm106] 8.3";
    private static final List<String> NAMES = List.of("rb", "rl", "rm", "hb", "hl", "hm", "n");
    private static final Formula RESIN = Formula.read("rb - rl - rm", NAMES);
    private static final Formula HARDENER = Formula.read("hb - hl - hm", NAMES);
    private static final Formula DEVIATION = Formula.read("(hb - hl - hm)/(rb - rl - rm)/n - 1", NAMES);

    private RatioAuditCalculator() {}

    /** Audits. */
    public static RatioAuditResult calculate(RatioAudit audit) {
        RatioAudit.Read out = audit.unread() > 0 ? audit.read() : RatioAudit.Read.NONE;
        List<FirstOrder.Input> inputs = inputs(audit, out);
        FirstOrderResult used = propagated(inputs, RESIN, HARDENER);
        double factor = StandardNormal.quantile((1 + audit.coverage()) / 2);
        double resin = used.results().get(0).value();
        double hardener = used.results().get(1).value();
        double resinU = factor * used.results().get(0).standardUncertainty();
        double hardenerU = factor * used.results().get(1).standardUncertainty();
        List<Finding> findings = new ArrayList<>(unaccounted(audit, factor));
        if (hardener < -hardenerU || resin < -resinU) {
            findings.add(caution("More is left than there can be: a count or a receipt is wrong. Count again."));
            return untold(audit, resin, hardener, findings);
        }
        if (resin <= resinU) {
            findings.add(caution("Too little resin is gone to judge its mixes by what is left."));
            return untold(audit, resin, hardener, findings);
        }
        FirstOrderResult.Outcome off = propagated(inputs, DEVIATION).results().get(0);
        double uncertainty = factor * off.standardUncertainty();
        Verdict verdict = verdict(off.value(), uncertainty, audit.tolerance().ratio());
        findings.add(sentence(audit, verdict, off.value(), uncertainty, resin, hardener));
        return new RatioAuditResult(
                verdict,
                audit.resin().used(),
                audit.hardener().used(),
                new Mass(resin),
                new Mass(hardener),
                new Mass(resin * nominal(audit)),
                OptionalDouble.of(100 * hardener / resin),
                Optional.of(new Fraction(off.value())),
                Optional.of(new Fraction(uncertainty)),
                List.of(figure(audit, off.value(), uncertainty)),
                findings);
    }

    private static double nominal(RatioAudit audit) {
        return audit.partsHardener() / audit.partsResin();
    }

    private static List<FirstOrder.Input> inputs(RatioAudit audit, RatioAudit.Read out) {
        return List.of(
                input("rb", audit.resin().before(), audit.resin().beforeUncertainty()),
                input("rl", audit.resin().left(), audit.resin().leftUncertainty()),
                input("rm", out.resin(), out.resinUncertainty()),
                input("hb", audit.hardener().before(), audit.hardener().beforeUncertainty()),
                input("hl", audit.hardener().left(), audit.hardener().leftUncertainty()),
                input("hm", out.hardener(), out.hardenerUncertainty()),
                new FirstOrder.Input("n", nominal(audit), List.of()));
    }

    private static FirstOrder.Input input(String name, Mass value, Mass uncertainty) {
        return new FirstOrder.Input(name, value.kilograms(), List.of(Distribution.normal(0, uncertainty.kilograms())));
    }

    private static FirstOrderResult propagated(List<FirstOrder.Input> inputs, Formula... formulas) {
        List<FirstOrder.Result> asked = new ArrayList<>();
        for (Formula f : formulas) {
            asked.add(new FirstOrder.Result(f.text(), f));
        }
        return FirstOrderCalculator.calculate(new FirstOrder(inputs, List.of(), asked));
    }

    private static Verdict verdict(double deviation, double uncertainty, double tolerance) {
        // A weighing to the last digit must not fall out by the last bit of a double.
        double off = Math.abs(deviation) - 1e-12;
        if (off + uncertainty <= tolerance) {
            return Verdict.PASS;
        }
        return off - uncertainty > tolerance ? Verdict.FAIL : Verdict.CANNOT_TELL;
    }

    /** Where every mix has a reading, what is gone beyond the readings went somewhere else. */
    private static List<Finding> unaccounted(RatioAudit audit, double factor) {
        if (audit.unread() > 0 || audit.read().mixes() == 0) {
            return List.of();
        }
        FirstOrderResult rest = propagated(inputs(audit, audit.read()), RESIN, HARDENER);
        List<Finding> said = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            FirstOrderResult.Outcome o = rest.results().get(i);
            if (Math.abs(o.value()) > factor * o.standardUncertainty() + 1e-12) {
                said.add(caution(String.format(
                        Locale.ROOT,
                        "%s of %s %s than the scale readings of the mixes say.",
                        FORMAT.mass(new Mass(Math.abs(o.value()))),
                        i == 0 ? "resin" : "hardener",
                        o.value() > 0 ? "more is gone" : "less is gone")));
            }
        }
        return said;
    }

    private static Finding caution(String sentence) {
        return new Finding(Severity.CAUTION, ABOUT, sentence, "mass balance");
    }

    private static Finding sentence(
            RatioAudit audit, Verdict verdict, double deviation, double uncertainty, double resin, double hardener) {
        String found = String.format(
                Locale.ROOT,
                "%s of resin had %s of hardener and should have had %s: 100:%.3g %s 100:%.3g, off by %+.1f +- %.1f"
                        + " percent where %.1f percent is allowed (at %.0f percent).",
                FORMAT.mass(new Mass(resin)),
                FORMAT.mass(new Mass(hardener)),
                FORMAT.mass(new Mass(resin * nominal(audit))),
                100 * hardener / resin,
                verdict == Verdict.FAIL ? "instead of" : "against",
                100 * nominal(audit),
                100 * deviation,
                100 * uncertainty,
                audit.tolerance().percent(),
                100 * audit.coverage());
        return switch (verdict) {
            case PASS -> new Finding(Severity.NOTE, ABOUT, "The ratio was kept. " + found, SOURCE);
            case FAIL ->
                new Finding(
                        Severity.STOP,
                        ABOUT,
                        "The ratio was not kept" + half(deviation, uncertainty) + ". " + found,
                        SOURCE);
            case CANNOT_TELL ->
                new Finding(
                        Severity.CAUTION,
                        ABOUT,
                        "Whether the ratio was kept cannot be told from these counts. " + found,
                        SOURCE);
        };
    }

    /** Names the two slips that a bench makes most: half of the hardener, or twice of it. */
    private static String half(double deviation, double uncertainty) {
        if (Math.abs(deviation + 0.5) <= uncertainty) {
            return ": half the hardener";
        }
        return Math.abs(deviation - 1) <= uncertainty ? ": twice the hardener" : "";
    }

    private static RatioAuditResult untold(RatioAudit audit, double resin, double hardener, List<Finding> findings) {
        return new RatioAuditResult(
                Verdict.CANNOT_TELL,
                audit.resin().used(),
                audit.hardener().used(),
                new Mass(resin),
                new Mass(hardener),
                new Mass(Math.max(0, resin) * nominal(audit)),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                findings);
    }

    private static Figure figure(RatioAudit audit, double deviation, double uncertainty) {
        return new Figure(
                "Deviation of the hardener",
                String.format(Locale.ROOT, "%+.1f +- %.1f percent", 100 * deviation, 100 * uncertainty),
                "(B/A)/(b/a) - 1, A and B what was used less what the scale readings say",
                List.of(
                        part("resin", audit.resin()),
                        part("hardener", audit.hardener()),
                        new Figure.Input(
                                "in mixes with readings",
                                FORMAT.mass(audit.read().resin()) + " and "
                                        + FORMAT.mass(audit.read().hardener()) + " in "
                                        + audit.read().mixes(),
                                Figure.Origin.MEASURED),
                        new Figure.Input(
                                "mixes without readings", Integer.toString(audit.unread()), Figure.Origin.ENTERED),
                        new Figure.Input(
                                "ratio a:b by mass",
                                String.format(Locale.ROOT, "%.4g:%.4g", audit.partsResin(), audit.partsHardener()),
                                Figure.Origin.DATA_SHEET)),
                SOURCE,
                List.of());
    }

    private static Figure.Input part(String name, Counted c) {
        return new Figure.Input(
                name,
                String.format(
                        Locale.ROOT,
                        "%s before (u %s), %s left (u %s)",
                        FORMAT.mass(c.before()),
                        FORMAT.scaleMass(c.beforeUncertainty()),
                        FORMAT.mass(c.left()),
                        FORMAT.scaleMass(c.leftUncertainty())),
                Figure.Origin.MEASURED);
    }
}
