package fayline.method.mix.batch;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureState;
import fayline.method.cure.pot.PotLifeCurve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Splits a mix into equal batches, each under the container limit and each applied within the trusted share of its own life by
 * the crew at its pace, staggers their mixing, and holds the whole lay-up against the crew's day and the resin's life before
 * the first cup is mixed. The first batch on the part must still be workable when the bag is tight: within the film's working
 * life, or where the sheet gives none, within the trusted share of the time to gel. Rules of this project (common practice, no
 * source).
 */
public final class BatchPlanCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final String CP = "common practice, no source";

    private BatchPlanCalculator() {}

    /** Answers the question. */
    public static BatchPlanResult calculate(BatchPlan plan) {
        if (plan.total().kilograms() == 0) {
            return empty(plan, Optional.empty(), List.of());
        }
        if (!(plan.total().kilograms() > 0)
                || !(plan.partsResin() > 0 && plan.partsHardener() > 0)
                || !(plan.useRateKgPerS() > 0)
                || plan.crew().people() < 1) {
            return empty(
                    plan,
                    Optional.empty(),
                    List.of(stop(
                            plan, "The mix, its ratio, the use rate and the crew must be positive: not covered.")));
        }
        LargestBatchResult largest = largest(plan, plan.crew().people());
        if (largest.largest().isEmpty()) {
            return empty(plan, Optional.of(largest), largest.findings());
        }
        Pace pace = pace(plan, plan.crew().people(), largest.largest().get());
        if (pace.batches() == 0) {
            return empty(plan, Optional.of(largest), List.of(stop(plan, "More than 10000 batches: not covered.")));
        }
        return planned(plan, largest, pace);
    }

    private static BatchPlanResult planned(BatchPlan plan, LargestBatchResult largest, Pace pace) {
        List<Finding> findings = new ArrayList<>(largest.findings());
        TimeSpan applied = new TimeSpan(pace.appliedS());
        TimeSpan tight = applied.plus(plan.bagging());
        Optional<TimeSpan> life = resinLife(plan, findings);
        boolean fitsDay = plan.dayLeft().map(d -> tight.compareTo(d) <= 0).orElse(true);
        boolean fitsResin = life.map(l -> tight.compareTo(l) <= 0).orElse(true);
        if (!fitsDay) {
            findings.add(stop(
                    plan,
                    "From the first cup to a tight bag it takes " + FORMAT.span(tight) + ", the crew is there for "
                            + FORMAT.span(plan.dayLeft().orElseThrow()) + ": choose a way out before mixing."));
        }
        if (!fitsResin) {
            findings.add(stop(
                    plan,
                    "From the first cup to a tight bag it takes " + FORMAT.span(tight)
                            + ", the first batch can be worked for " + FORMAT.span(life.orElseThrow())
                            + ": choose a way out before mixing."));
        }
        List<WayOut> waysOut = fitsDay && fitsResin ? List.of() : WaysOut.of(plan, pace, life);
        return new BatchPlanResult(
                batches(plan, pace),
                largest.largest(),
                applied,
                tight,
                life,
                fitsDay,
                fitsResin,
                waysOut,
                figures(plan, pace, largest, tight),
                findings);
    }

    /** The largest batch for a crew whose pace is set by the use rate or by the hands-on time. */
    static LargestBatchResult largest(BatchPlan plan, int people) {
        double pace = plan.total().kilograms() / Pace.workSeconds(plan, people);
        LargestBatchResult alone = LargestBatchCalculator.calculate(
                new LargestBatch(plan.pot(), pace, 1, plan.trusted(), plan.mixing(), plan.container()));
        return new LargestBatchResult(
                alone.largest(),
                alone.potLife(),
                alone.rule(),
                alone.figure().map(f -> ofCrew(f, people, pace)),
                alone.findings());
    }

    /** The same figure, telling that the pace is the whole crew's and was worked out, where it told one person's rate. */
    private static Figure ofCrew(Figure figure, int people, double paceKgPerS) {
        List<Figure.Input> inputs = new ArrayList<>();
        inputs.add(new Figure.Input(
                "pace of " + people + (people == 1 ? " person" : " people")
                        + ", the slower of use rate and hands-on time",
                String.format(Locale.ROOT, "%.1f g/min", paceKgPerS * 60_000),
                Figure.Origin.COMPUTED));
        inputs.addAll(figure.inputs().subList(2, figure.inputs().size()));
        return new Figure(
                figure.name(),
                figure.value(),
                "m = pace x (f t(m, T) - mixing), limited by container, film and data sheet",
                inputs,
                figure.source(),
                figure.cautions());
    }

    static Pace pace(BatchPlan plan, int people, Mass largest) {
        EqualBatchesResult equal = EqualBatchesCalculator.calculate(new EqualBatches(plan.total(), largest));
        int n = equal.batches();
        return new Pace(
                people,
                n,
                equal.each().orElse(plan.total()),
                n == 0 ? 0 : Pace.workSeconds(plan, people) / n,
                plan.mixing().seconds());
    }

    private static Optional<TimeSpan> resinLife(BatchPlan plan, List<Finding> findings) {
        Optional<CureLaw> working = CureLaw.of(plan.pot().sheet(), CureState.WORKING_LIFE);
        if (working.isPresent()) {
            return working.map(l -> l.timeAt(plan.pot().temperature()));
        }
        Optional<CureLaw> open = CureLaw.of(plan.pot().sheet(), CureState.OPEN_TIME);
        if (open.isPresent()) {
            return open.map(l -> l.timeAt(plan.pot().temperature()));
        }
        Optional<CureLaw> gel = CureLaw.of(plan.pot().sheet(), CureState.GEL);
        if (gel.isPresent()) {
            return gel.map(
                    l -> l.timeAt(plan.pot().temperature()).times(plan.trusted().ratio()));
        }
        findings.add(new Finding(
                Severity.CAUTION,
                plan.system(),
                "The data sheet gives neither working life, open time nor gel: whether the bag is tight in time cannot be"
                        + " said.",
                "the definition"));
        return Optional.empty();
    }

    private static List<Batch> batches(BatchPlan plan, Pace pace) {
        double resinShare = plan.partsResin() / (plan.partsResin() + plan.partsHardener());
        Mass resin = pace.each().times(resinShare);
        Mass hardener = pace.each().times(1 - resinShare);
        Mass off = hardener.times(Math.max(0, plan.ratioTolerance().ratio()));
        double life =
                PotLifeCurve.of(plan.pot()).orElseThrow().secondsAt(pace.each().kilograms());
        List<Batch> all = new ArrayList<>();
        for (int i = 0; i < pace.batches(); i++) {
            double mix = pace.mixAtS(i);
            all.add(new Batch(
                    i + 1,
                    pace.each(),
                    resin,
                    hardener,
                    off,
                    new TimeSpan(mix),
                    new TimeSpan(mix + pace.mixingS()),
                    new TimeSpan(mix + pace.mixingS() + pace.perBatchS()),
                    new TimeSpan(mix + plan.trusted().ratio() * life),
                    new TimeSpan(life)));
        }
        return all;
    }

    private static List<Figure> figures(BatchPlan plan, Pace pace, LargestBatchResult largest, TimeSpan tight) {
        List<Figure> figures = new ArrayList<>();
        largest.figure().ifPresent(figures::add);
        figures.add(new Figure(
                "Batches",
                pace.batches() + " of " + FORMAT.mass(pace.each()),
                "ceil(total / largest batch), equal",
                List.of(
                        new Figure.Input("total", FORMAT.mass(plan.total()), Figure.Origin.COMPUTED),
                        new Figure.Input(
                                "largest batch",
                                largest.largest().map(FORMAT::mass).orElse(""),
                                Figure.Origin.COMPUTED)),
                CP,
                List.of()));
        figures.add(new Figure(
                "First cup to tight bag",
                FORMAT.span(tight),
                pace.people() == 1
                        ? "batches x (mixing + applying) + bagging"
                        : "mixing + batches x applying + bagging; one mixes while the others apply",
                List.of(
                        new Figure.Input("people", String.valueOf(pace.people()), Figure.Origin.ENTERED),
                        new Figure.Input(
                                "applying one batch",
                                FORMAT.span(new TimeSpan(pace.perBatchS())),
                                Figure.Origin.COMPUTED),
                        new Figure.Input("mixing one batch", FORMAT.span(plan.mixing()), Figure.Origin.ENTERED),
                        new Figure.Input("bagging", FORMAT.span(plan.bagging()), Figure.Origin.COMPUTED)),
                CP,
                List.of()));
        return figures;
    }

    private static BatchPlanResult empty(BatchPlan plan, Optional<LargestBatchResult> largest, List<Finding> findings) {
        return new BatchPlanResult(
                List.of(),
                largest.flatMap(LargestBatchResult::largest),
                new TimeSpan(0),
                new TimeSpan(0),
                Optional.empty(),
                findings.isEmpty(),
                findings.isEmpty(),
                List.of(),
                List.of(),
                findings);
    }

    private static Finding stop(BatchPlan plan, String sentence) {
        return new Finding(Severity.STOP, plan.system(), sentence, CP);
    }
}
