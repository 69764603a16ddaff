package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.method.mix.audit.Counted;
import fayline.method.mix.audit.RatioAudit;
import fayline.method.mix.audit.RatioAuditCalculator;
import fayline.method.mix.audit.RatioAuditResult;
import fayline.method.mix.audit.RatioAuditResult.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Whether resin and hardener were used in their ratio, told from what is left of both. */
final class MixAuditTopic {
    private static final String COUNTS =
            "partsResin partsHardener tolerance resinBefore resinBeforeU resinLeft resinLeftU hardenerBefore"
                    + " hardenerBeforeU hardenerLeft hardenerLeftU coverage mixesUnread"
                    + " [resinRead] [hardenerRead] [readingU]";

    private MixAuditTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "mix.audit",
                "Whether resin and hardener were used in their ratio, by what is left of both, and how sure that is.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("partsResin", "-", "parts of resin by mass"),
                number("partsHardener", "-", "parts of hardener by mass"),
                number("tolerance", "percent", "how far the hardener may be off, of the nominal"),
                number("resinBefore", "kg", "resin received, or there at the count before"),
                number("resinBeforeU", "g", "standard uncertainty of that"),
                number("resinLeft", "kg", "resin left"),
                number("resinLeftU", "g", "standard uncertainty of that"),
                number("hardenerBefore", "kg", "hardener received, or there at the count before"),
                number("hardenerBeforeU", "g", "standard uncertainty of that"),
                number("hardenerLeft", "kg", "hardener left"),
                number("hardenerLeftU", "g", "standard uncertainty of that"),
                number("coverage", "-", "probability at which the verdict is to hold, as 0.95"),
                Term.count("mixesUnread", "how many mixes have no scale reading"),
                Term.list("resinRead", "g", "resin of each mix that has a scale reading"),
                Term.list("hardenerRead", "g", "hardener of each of them"),
                number("readingU", "g", "standard uncertainty of one such reading; 0 where it is not given"),
                number("resinUsed", "kg", "resin gone in all"),
                number("hardenerUsed", "kg", "hardener gone in all"),
                number("hardenerExpected", "kg", "hardener that the mixes in question should have had"),
                number("hardenerPer100", "per 100", "hardener per 100 of resin by mass in those mixes"),
                number("deviation", "percent", "hardener against the nominal"),
                number("deviationU", "percent", "expanded uncertainty of the deviation at the coverage"),
                Term.text("verdict", "kept, not kept, or cannot tell"),
                Term.yesNo("kept", "whether the ratio was kept; not answered where it cannot be told"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("resinUsed", "resinBefore resinLeft", k -> gone(k, "resin")));
        r.add(giving("hardenerUsed", "hardenerBefore hardenerLeft", k -> gone(k, "hardener")));
        r.add(giving(
                "hardenerExpected", COUNTS, k -> audit(k).hardenerExpected().si()));
        r.add(giving("hardenerPer100", COUNTS, k -> per100(k) / 100));
        r.add(giving("deviation", COUNTS, k -> known(k, RatioAuditResult::deviation)));
        r.add(giving("deviationU", COUNTS, k -> known(k, RatioAuditResult::uncertainty)));
        r.add(giving("verdict", COUNTS, k -> audit(k).verdict().words()));
        r.add(giving("kept", COUNTS, MixAuditTopic::kept));
        return r;
    }

    private static Object gone(Known k, String part) {
        k.by("used = before - left", "mass balance");
        return k.si(part + "Before") - k.si(part + "Left");
    }

    private static double per100(Known k) {
        RatioAuditResult r = audit(k);
        OptionalDouble v = r.hardenerPer100();
        return k.take(v.isPresent() ? Optional.of(v.getAsDouble()) : Optional.<Double>empty(), r.findings());
    }

    private static Object known(Known k, Function<RatioAuditResult, Optional<Fraction>> figure) {
        RatioAuditResult r = audit(k);
        return k.take(figure.apply(r), r.findings()).si();
    }

    private static Object kept(Known k) {
        RatioAuditResult r = audit(k);
        if (r.verdict() == Verdict.CANNOT_TELL) {
            throw new NotCoveredException(
                    r.findings().get(r.findings().size() - 1).sentence());
        }
        return r.verdict() == Verdict.PASS;
    }

    private static RatioAuditResult audit(Known k) {
        List<Double> resin = k.has("resinRead") ? k.list("resinRead") : List.of();
        List<Double> hardener = k.has("hardenerRead") ? k.list("hardenerRead") : List.of();
        if (resin.size() != hardener.size()) {
            throw new NotCoveredException(
                    "resinRead has " + resin.size() + " and hardenerRead " + hardener.size() + " readings");
        }
        Mass u = new Mass(k.si("readingU", 0) * Math.sqrt(resin.size()));
        RatioAudit question;
        try {
            question = new RatioAudit(
                    k.si("partsResin"),
                    k.si("partsHardener"),
                    k.as("tolerance", Fraction::new),
                    counted(k, "resin"),
                    counted(k, "hardener"),
                    new RatioAudit.Read(resin.size(), sum(resin), sum(hardener), u, u),
                    k.count("mixesUnread"),
                    k.si("coverage"));
        } catch (IllegalArgumentException e) {
            throw new NotCoveredException(String.valueOf(e.getMessage()));
        }
        RatioAuditResult r = RatioAuditCalculator.calculate(question);
        r.figures().forEach(k::by);
        return r;
    }

    private static Mass sum(List<Double> masses) {
        return new Mass(masses.stream().mapToDouble(Double::doubleValue).sum());
    }

    private static Counted counted(Known k, String part) {
        return new Counted(
                k.as(part + "Before", Mass::new),
                k.as(part + "BeforeU", Mass::new),
                k.as(part + "Left", Mass::new),
                k.as(part + "LeftU", Mass::new));
    }
}
