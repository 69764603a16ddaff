package fayline.method.mix.batch;

import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What can be done where a lay-up does not fit, and what each way costs. */
final class WaysOut {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final int MOST_STAGES = 6;
    private static final TimeSpan NIGHT = TimeSpan.ofDays(1);

    private WaysOut() {}

    static List<WayOut> of(BatchPlan plan, Pace pace, Optional<TimeSpan> life) {
        List<WayOut> all = new ArrayList<>();
        all.add(split(plan, pace, life));
        all.add(oneMore(plan, pace, life));
        all.add(anotherDay(plan, pace, life));
        return all;
    }

    private static boolean fits(TimeSpan tight, Optional<TimeSpan> day, Optional<TimeSpan> life) {
        return day.map(d -> tight.compareTo(d) <= 0).orElse(true)
                && life.map(l -> tight.compareTo(l) <= 0).orElse(true);
    }

    private static WayOut split(BatchPlan plan, Pace pace, Optional<TimeSpan> life) {
        int stages = 2;
        while (stages < MOST_STAGES && !fits(stageTight(plan, pace, stages), plan.dayLeft(), life)) {
            stages++;
        }
        TimeSpan tight = stageTight(plan, pace, stages);
        boolean possible = fits(tight, plan.dayLeft(), life);
        Optional<TimeSpan> opens = time(plan, CureState.RECOAT_OPENS);
        Optional<TimeSpan> shuts = time(plan, CureState.RECOAT_SHUTS);
        String window = shuts.map(s -> "the next stage goes on "
                        + opens.map(o -> "from " + FORMAT.span(o) + " ").orElse("") + "to " + FORMAT.span(s)
                        + " after mixing, without sanding")
                .orElse("the data sheet gives no recoat window, so abrade before the next stage");
        TimeSpan delay = opens.filter(o -> o.compareTo(NIGHT) > 0).orElse(NIGHT).times(stages - 1.0);
        String sentence = possible
                ? "Split into " + stages + " stages with peel ply between: each takes " + FORMAT.span(tight) + "; "
                        + window
                        + ". It costs " + FORMAT.span(plan.prices().splitWork().times(stages - 1.0))
                        + " of work and " + (stages - 1) + " more night(s)."
                : "Even in " + MOST_STAGES + " stages each takes " + FORMAT.span(tight) + ": splitting does not help.";
        return new WayOut(
                WayOut.Kind.SPLIT,
                possible,
                sentence,
                tight,
                plan.prices().splitWork().times(stages - 1.0),
                delay,
                plan.prices().splitMaterials());
    }

    private static Optional<TimeSpan> time(BatchPlan plan, CureState state) {
        return CureLaw.of(plan.pot().sheet(), state)
                .map(l -> l.timeAt(plan.pot().temperature()));
    }

    /** Time of one stage: the batches spread over the stages, rounded up. */
    private static TimeSpan stageTight(BatchPlan plan, Pace pace, int stages) {
        int batches = (int) Math.ceil((double) pace.batches() / stages);
        double share = (double) pace.batches() / stages / batches;
        Pace stage = new Pace(pace.people(), batches, pace.each(), pace.perBatchS() * share, pace.mixingS());
        return new TimeSpan(stage.appliedS()).plus(plan.bagging());
    }

    private static WayOut oneMore(BatchPlan plan, Pace pace, Optional<TimeSpan> life) {
        int people = plan.crew().people() + 1;
        TimeSpan before = new TimeSpan(pace.appliedS()).plus(plan.bagging());
        if (people > plan.crew().usefulMost()) {
            return new WayOut(
                    WayOut.Kind.ONE_MORE_PERSON,
                    false,
                    "No more than " + plan.crew().usefulMost() + " people can usefully work here.",
                    before,
                    new TimeSpan(0),
                    new TimeSpan(0),
                    "");
        }
        LargestBatchResult largest = BatchPlanCalculator.largest(plan, people);
        Pace faster = BatchPlanCalculator.pace(plan, people, largest.largest().orElse(pace.each()));
        TimeSpan bagging = plan.bagging()
                .times((double) plan.crew().people() / people * plan.crew().factorWithOneMore());
        TimeSpan tight = new TimeSpan(faster.appliedS()).plus(bagging);
        boolean possible = largest.largest().isPresent() && fits(tight, plan.dayLeft(), life);
        TimeSpan work = new TimeSpan(Math.max(
                0, tight.seconds() * people - before.seconds() * plan.crew().people()));
        return new WayOut(
                WayOut.Kind.ONE_MORE_PERSON,
                possible,
                "With " + people + " people it takes " + FORMAT.span(tight)
                        + (possible ? "" : ", which still does not fit")
                        + "; it ties up one more person for that time.",
                tight,
                work,
                new TimeSpan(0),
                "");
    }

    private static WayOut anotherDay(BatchPlan plan, Pace pace, Optional<TimeSpan> life) {
        TimeSpan tight = new TimeSpan(pace.appliedS()).plus(plan.bagging());
        boolean inLife = fits(tight, Optional.empty(), life);
        boolean possible = inLife && fits(tight, plan.wholeDay(), life);
        String sentence = !inLife
                ? "Another day does not help: the resin's life is too short at this temperature."
                : possible
                        ? "Begin first thing on another day: it then fits the crew's day and costs the wait alone."
                        : "Not even a whole day of the crew is long enough.";
        return new WayOut(WayOut.Kind.ANOTHER_DAY, possible, sentence, tight, new TimeSpan(0), NIGHT, "");
    }
}
