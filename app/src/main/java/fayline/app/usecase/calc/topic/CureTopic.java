package fayline.app.usecase.calc.topic;

import static fayline.app.usecase.calc.Relation.giving;
import static fayline.app.usecase.calc.Term.number;
import static fayline.app.usecase.calc.Term.rows;

import fayline.app.usecase.calc.Known;
import fayline.app.usecase.calc.NotCoveredException;
import fayline.app.usecase.calc.Relation;
import fayline.app.usecase.calc.RelationTopic;
import fayline.app.usecase.calc.Term;
import fayline.basis.units.MolarEnergy;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.CureClockCalculator;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.CureWatch;
import fayline.method.cure.CureWatchResult;
import fayline.method.cure.EquivalentAge;
import fayline.method.cure.EquivalentAgeCalculator;
import fayline.method.cure.EquivalentAgeResult;
import fayline.method.cure.GlassTransition;
import fayline.method.cure.Kinetics;
import fayline.method.cure.PotShape;
import fayline.method.cure.RateRule;
import fayline.method.cure.SheetPoint;
import fayline.method.cure.reaction.DegreeOfCure;
import fayline.method.cure.reaction.DegreeOfCureCalculator;
import fayline.method.cure.reaction.DegreeOfCureResult;
import fayline.method.cure.reaction.GlassState;
import fayline.method.cure.reaction.GlassStateCalculator;
import fayline.method.cure.reaction.GlassStateResult;
import fayline.method.cure.reaction.RateLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Times at other temperatures, equivalent age and wait, degree of cure and glass transition. */
final class CureTopic {
    private static final double[] HORIZONS_H = {1, 10, 100, 1_000, 10_000, 100_000};
    private static final double JUMP = 0.3;
    private static final String GLASS = "Tg0 TgInf lambda";
    private static final String WARMTH = " [profile] [spans] [temp] [shopTemp] [gasConstant]";

    private CureTopic() {}

    static RelationTopic topic() {
        return new RelationTopic(
                "cure",
                "When a resin gels or is old enough over its temperatures, how far it has reacted, and its glass transition.",
                terms(),
                relations());
    }

    private static List<Term> terms() {
        return List.of(
                number("gelRef", "min", "data-sheet time to gel, or to another state, at tempRef"),
                number("tempRef", "degC", "the data sheet's temperature"),
                number("gelRef2", "min", "data-sheet time at a second temperature"),
                number("tempRef2", "degC", "that second temperature"),
                number("temp", "degC", "the temperature asked about"),
                number("shopTemp", "degC", "shop temperature; stands for temp where that is not given"),
                number(
                        "activationEnergy",
                        "J/mol",
                        "activation energy; without it a factor of two per 10 K is assumed"),
                number("gasConstant", "J/(mol K)", "molar gas constant that belongs to the activation energies"),
                number("t1", "degC", "one temperature of two"),
                number("t2", "degC", "the other temperature"),
                number("factor", "-", "how many times faster the reaction runs at t2"),
                rows("spans", "h, degC", "time spent at each temperature, in order"),
                rows("profile", "min, degC", "time since mixing and temperature, straight lines between"),
                number("needed", "h", "age needed at tempRef"),
                number("now", "degC", "temperature while waiting; the last one where it is not given"),
                number("k1", "1/min", "rate constant at one temperature"),
                number("k2", "1/min", "autocatalytic rate constant at one temperature"),
                number("A1", "1/min", "pre-exponential factor"),
                number("E1", "J/mol", "activation energy that belongs to A1"),
                number("A2", "1/min", "pre-exponential factor; may be negative"),
                number("E2", "J/mol", "activation energy that belongs to A2"),
                number("A3", "1/min", "pre-exponential factor above the jump"),
                number("E3", "J/mol", "activation energy that belongs to A3"),
                number("B", "-", "constant of the lower branch"),
                number("jumpAt", "-", "degree of cure at which the two branches meet; 0.3 where it is not given"),
                number("m", "-", "exponent of the degree of cure"),
                number("n", "-", "exponent of what is left to react"),
                number("alpha0", "-", "degree of cure at the start; 0 where it is not given"),
                number("time", "min", "time since mixing at which the degree of cure is asked"),
                number("alphaLevel", "-", "degree of cure whose time is asked"),
                number("Tg0", "degC", "glass transition of the uncured mix"),
                number("TgInf", "degC", "glass transition at full cure"),
                number("lambda", "-", "shape constant of the glass transition, above 0 to 1"),
                number(
                        "stallAbove",
                        "K",
                        "how far the glass transition rises above the temperature before cure stalls"),
                number("gel", "min", "time to gel"),
                number("equivalentAge", "h", "age counted at tempRef"),
                number("wait", "h", "how long still to wait for the needed age"),
                number("alpha", "-", "degree of cure, 0 to 1"),
                number("timeAtAlpha", "min", "when the degree alphaLevel is reached"),
                number("Tg", "degC", "glass transition"),
                number("alphaVitrify", "-", "degree of cure at which the glass transition reaches the temperature"),
                number("alphaStall", "-", "degree of cure at which the reaction stalls at the temperature"));
    }

    private static List<Relation> relations() {
        List<Relation> r = new ArrayList<>();
        r.add(giving("activationEnergy", "t1 t2 factor [gasConstant]", CureTopic::activationEnergy));
        r.add(giving("activationEnergy", "gelRef tempRef gelRef2 tempRef2 [gasConstant]", CureTopic::activationEnergy));
        r.add(giving("gel", "gelRef tempRef temp [activationEnergy] [gasConstant]", k -> timeAt(k, "gelRef", "temp")));
        r.add(giving(
                "gel",
                "gelRef tempRef shopTemp [activationEnergy] [gasConstant]",
                k -> timeAt(k, "gelRef", "shopTemp")));
        for (String history : List.of("profile", "spans")) {
            r.add(giving(
                    "gel", "gelRef tempRef " + history + " [activationEnergy] [gasConstant]", CureTopic::timeOver));
        }
        String age = " tempRef [activationEnergy] [gasConstant] [time] [needed] [now]";
        r.add(giving("equivalentAge", "spans" + age, k -> age(k).age().si()));
        r.add(giving("equivalentAge", "profile" + age, k -> age(k).age().si()));
        r.add(giving("wait", "spans needed" + age, CureTopic::wait));
        r.add(giving("wait", "profile needed" + age, CureTopic::wait));
        String start = " [alpha0] [Tg0] [TgInf] [lambda] [stallAbove]" + WARMTH;
        for (String law : List.of("A1 E1 A2 E2 A3 E3 B [jumpAt]", "A1 E1 A2 E2 m n", "A1 E1 n", "k1 k2 m n", "k1 n")) {
            r.add(giving(
                    "alpha",
                    law + " time" + start,
                    k -> degrees(k, Optional.of(k.as("time", TimeSpan::new)))
                            .degrees()
                            .get(0)));
            r.add(giving("timeAtAlpha", law + " alphaLevel" + start, CureTopic::timeOfLevel));
        }
        r.add(giving("alpha", "Tg " + GLASS, k -> glass(k).degrees().get(0).orElseThrow()));
        r.add(giving("Tg", "alpha " + GLASS, k -> glass(k).transitions().get(0).si()));
        for (String at : List.of("temp", "shopTemp")) {
            r.add(giving(
                    "alphaVitrify",
                    at + " " + GLASS,
                    k -> glass(k).vitrified().get(0).orElseThrow()));
            r.add(giving(
                    "alphaStall",
                    at + " stallAbove " + GLASS,
                    k -> glass(k).stalled().get(0).orElseThrow()));
        }
        return r;
    }

    private static Object activationEnergy(Known k) {
        String t1 = k.has("t1") ? "t1" : "tempRef";
        String t2 = k.has("t2") ? "t2" : "tempRef2";
        double factor = k.has("factor") ? k.si("factor") : k.si("gelRef") / k.si("gelRef2");
        if (k.si(t1) == k.si(t2) || !(factor > 0) || !Double.isFinite(factor)) {
            throw new NotCoveredException("two different temperatures and times above zero are needed");
        }
        RateRule rule = RateRule.between(k.as(t1, Temperature::new), k.as(t2, Temperature::new), factor);
        k.by("E = R ln(factor)/(1/T1 - 1/T2), kelvins", "[arrhenius1889]");
        return rule.energyJPerMol() * k.si("gasConstant", RateRule.GAS_CONSTANT) / RateRule.GAS_CONSTANT;
    }

    /** An energy as the engine's gas constant needs it: only E/R counts, so another R scales E. */
    static double energy(Known k, String name) {
        return k.si(name) * RateRule.GAS_CONSTANT / k.si("gasConstant", RateRule.GAS_CONSTANT);
    }

    static CureSheet sheet(Known k, List<SheetPoint> points) {
        Optional<MolarEnergy> stated = k.has("activationEnergy")
                ? Optional.of(new MolarEnergy(energy(k, "activationEnergy")))
                : Optional.empty();
        return new CureSheet(points, stated, Optional.empty(), Optional.empty());
    }

    private static Object timeAt(Known k, String reference, String temperature) {
        SheetPoint point = point(k, reference);
        CureLaw law = CureLaw.of(sheet(k, List.of(point)), CureState.GEL).orElseThrow();
        Temperature at = k.as(temperature, Temperature::new);
        k.by(law.figureAt(at));
        return law.timeAt(at).si();
    }

    private static SheetPoint point(Known k, String reference) {
        if (!(k.si(reference) > 0)) {
            throw new NotCoveredException("a data-sheet time above zero is needed");
        }
        return new SheetPoint(
                CureState.GEL,
                k.as(reference, TimeSpan::new),
                k.as("tempRef", Temperature::new),
                Optional.empty(),
                PotShape.CUP,
                "given");
    }

    /** The time to a state over changing temperatures; after the end of a history its last temperature is taken to hold. */
    private static Object timeOver(Known k) {
        CureWatchResult r = CureClockCalculator.calculate(new CureWatch(
                sheet(k, List.of(point(k, "gelRef"))),
                List.of(new CureWatch.Probe("given", Warmth.history(k))),
                new TimeSpan(0)));
        CureWatchResult.Arrival arrival = k.take(r.at(CureState.GEL), r.findings());
        k.by(arrival.figure());
        return arrival.reachedAt().si();
    }

    private static EquivalentAgeResult age(Known k) {
        Temperature reference = k.as("tempRef", Temperature::new);
        RateRule rule = k.has("activationEnergy")
                ? RateRule.stated(reference, new MolarEnergy(energy(k, "activationEnergy")))
                : RateRule.doubling(reference);
        EquivalentAgeResult r = EquivalentAgeCalculator.calculate(new EquivalentAge(
                Warmth.history(k),
                k.maybe("time", TimeSpan::new),
                rule,
                k.maybe("needed", TimeSpan::new),
                k.maybe("now", Temperature::new)));
        k.heed(r.findings());
        k.by(r.figure());
        return r;
    }

    private static Object wait(Known k) {
        return age(k).remaining()
                .orElseThrow(() -> new NotCoveredException("the needed age is never reached at that temperature"))
                .si();
    }

    private static RateLaw law(Known k) {
        if (k.has("A3")) {
            return new RateLaw.TwoBranch(
                    k.si("A1"),
                    energy(k, "E1"),
                    k.si("A2"),
                    energy(k, "E2"),
                    k.si("A3"),
                    energy(k, "E3"),
                    k.si("B"),
                    k.si("jumpAt", JUMP));
        }
        if (k.has("A2")) {
            return new RateLaw.Autocatalytic(
                    new Kinetics(k.si("A1"), energy(k, "E1"), k.si("A2"), energy(k, "E2"), k.si("m"), k.si("n")));
        }
        if (k.has("A1")) {
            return new RateLaw.NthOrder(k.si("A1"), energy(k, "E1"), k.si("n"));
        }
        if (k.has("k2")) {
            return new RateLaw.Autocatalytic(new Kinetics(k.si("k1"), 0, k.si("k2"), 0, k.si("m"), k.si("n")));
        }
        return new RateLaw.NthOrder(k.si("k1"), 0, k.si("n"));
    }

    private static DegreeOfCureResult degrees(Known k, Optional<TimeSpan> time) {
        boolean capped = k.has("Tg0") && k.has("TgInf") && k.has("lambda") && k.has("stallAbove");
        boolean oneTemperature = k.has("k1");
        Optional<GlassTransition> glass =
                capped && (!oneTemperature || Warmth.isKnown(k)) ? Optional.of(transition(k)) : Optional.empty();
        List<TimeSpan> times = time.map(List::of).orElseGet(() -> Warmth.ends(k) ? List.of() : horizons());
        DegreeOfCureResult r = DegreeOfCureCalculator.calculate(new DegreeOfCure(
                law(k),
                Warmth.history(k, oneTemperature),
                k.si("alpha0", 0),
                times,
                k.has("alphaLevel") ? OptionalDouble.of(k.si("alphaLevel")) : OptionalDouble.empty(),
                glass));
        k.heed(r.findings());
        k.by(r.figure());
        return r;
    }

    private static List<TimeSpan> horizons() {
        List<TimeSpan> all = new ArrayList<>();
        for (double h : HORIZONS_H) {
            all.add(new TimeSpan(h * 3600));
        }
        return all;
    }

    private static Object timeOfLevel(Known k) {
        return degrees(k, Optional.empty())
                .timeOfLevel()
                .orElseThrow(() -> new NotCoveredException("the degree of cure is not reached within the history"))
                .si();
    }

    private static GlassTransition transition(Known k) {
        return new GlassTransition(
                k.as("Tg0", Temperature::new),
                k.as("TgInf", Temperature::new),
                k.si("lambda"),
                new TemperatureDifference(k.si("stallAbove", 0)));
    }

    private static GlassStateResult glass(Known k) {
        String at = k.has("temp") ? "temp" : "shopTemp";
        GlassStateResult r = GlassStateCalculator.calculate(new GlassState(
                transition(k),
                k.has("alpha") ? List.of(k.si("alpha")) : List.of(),
                k.has("Tg") ? List.of(k.as("Tg", Temperature::new)) : List.of(),
                k.has(at) ? List.of(k.as(at, Temperature::new)) : List.of()));
        if (k.has("stallAbove")) {
            k.heed(r.findings());
        } else {
            // Without a stall distance what the result says of stalling is about a distance of zero: not ours to pass
            // on.
            k.heed(r.findings().stream()
                    .filter(f -> f.severity() == fayline.basis.finding.Severity.STOP)
                    .toList());
        }
        k.by("Tg = Tg0 + (TgInf - Tg0) lambda a/(1 - (1 - lambda) a), and its inverse", "[dibenedetto1987]");
        return r;
    }
}
