package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.planner.serial.TimeLine;
import fayline.flow.planner.serial.WishedSchedule;
import fayline.flow.planner.serial.WishedSchedule.Sooner;
import fayline.flow.planner.serial.WishedSchedule.Wish;
import fayline.flow.record.PublishedPlan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Keeps to plans that were made before: to a better one that was searched for, and to what the crew was told. Work goes on and
 * things change, so an old plan is put together anew, in its order and with its crews, as far as that still can be. What the crew
 * was told of the next two days stays where it is unless a change touches it: of what could be followed, that counts first in
 * which fewest untouched steps of these days move, then fewest of all, then the better score.
 */
public final class StayingPlan {
    private final Work work;
    private final PlanScorer scorer;
    private final Plan fresh;
    private final WishedSchedule schedule;
    private final TimeLine time;
    private final Map<String, PublishedPlan.Step> told = new HashMap<>();

    private StayingPlan(Work work, Plan fresh, PlanGoal goal) {
        this.work = work;
        this.fresh = fresh;
        scorer = new PlanScorer(work, goal);
        schedule = new WishedSchedule(work, fresh);
        time = new TimeLine(work);
        goal.told().ifPresent(t -> t.steps().forEach(s -> told.put(s.step(), s)));
    }

    /**
     * The plans that could be followed, the one to follow first.
     *
     * @param work the work now
     * @param fresh a plan of it that knows nothing of earlier ones
     * @param goal what is wanted, with what the crew was told
     * @param kept a better plan that was searched for before, of this work or of what it was then
     * @return the fresh plan among them; the kept one too, which may break rules where the work is not what it was
     */
    public static List<Plan> of(Work work, Plan fresh, PlanGoal goal, Optional<Plan> kept) {
        return new StayingPlan(work, fresh, goal).plans(kept);
    }

    private List<Plan> plans(Optional<Plan> kept) {
        List<Plan> plans = new ArrayList<>();
        plans.add(fresh);
        kept.ifPresent(k -> {
            // As it is, where nothing has happened since; whether that is so, the auditor finds.
            plans.add(k);
            add(k.steps(), plans);
        });
        if (!told.isEmpty()) {
            add(fresh.steps(), plans);
            add(told.values().stream().map(StayingPlan::planned).toList(), plans);
        }
        Set<String> touched = touched();
        return plans.stream()
                .map(p -> new Weighed(
                        p,
                        scorer.nearMoved(p, s -> !touched.contains(s)),
                        scorer.nearMoved(p),
                        scorer.score(p).total()))
                .sorted(Comparator.comparingLong(Weighed::untouched)
                        .thenComparingLong(Weighed::near)
                        .thenComparingDouble(Weighed::total))
                .map(Weighed::plan)
                .toList();
    }

    /** How many steps of the next two days moved though nothing touched them, how many in all, and the score. */
    private record Weighed(Plan plan, long untouched, long near, double total) {}

    /** What an absence or a wish touches: steps of those who are away or not wished, all that waits for them, all that shares their places. */
    private Set<String> touched() {
        Set<String> touched = new HashSet<>();
        work.steps().stream()
                .filter(s -> s.state() == WorkStep.State.TODO)
                .map(s -> told.get(s.id()))
                .filter(t -> t != null && !canStay(t))
                .forEach(t -> touched.add(t.step()));
        boolean grows = !touched.isEmpty();
        while (grows) {
            Set<String> more = new HashSet<>();
            work.steps().stream()
                    .filter(s -> s.after().stream().anyMatch(l -> touched.contains(l.step())))
                    .forEach(s -> more.add(s.id()));
            work.holds().stream()
                    .filter(h -> h.steps().stream().anyMatch(touched::contains))
                    .forEach(h -> more.addAll(h.steps()));
            grows = touched.addAll(more);
        }
        return touched;
    }

    private static PlannedStep planned(PublishedPlan.Step s) {
        return new PlannedStep(
                s.step(), s.start(), s.handsEnd(), s.end(), s.people(), s.places(), List.of(), List.of());
    }

    /** Puts an old plan's steps together anew; what is new since stands as in the fresh plan. */
    private void add(List<PlannedStep> old, List<Plan> plans) {
        Map<String, PlannedStep> before = new HashMap<>();
        old.forEach(p -> before.put(p.step(), p));
        List<Wish> wishes = new ArrayList<>();
        for (Wish w : schedule.of(fresh)) {
            PublishedPlan.Step t = told.get(w.step());
            PlannedStep p = before.get(w.step());
            if (t != null && scorer.isNear(w.step())) {
                Wish near = wish(planned(t), w);
                wishes.add(canStay(t) ? near.staying() : near);
            } else {
                wishes.add(p == null ? w : wish(p, w));
            }
        }
        schedule.plan(wishes, Sooner.BY_THE_SAME)
                .filter(p -> p.unplanned().size() <= fresh.unplanned().size())
                .ifPresent(plans::add);
    }

    /** Whether it still can be where it was told, as far as its people and the lead's wishes go. */
    private boolean canStay(PublishedPlan.Step t) {
        return areIn(t)
                && work.wishes().stream()
                        .filter(w -> w.step().equals(t.step()) && !w.isPast(work.now()))
                        .allMatch(w -> w.isKept(t.people(), t.places(), t.start()));
    }

    /** Whether all who were told are in: the others' steps look for somebody else only when these have found their places. */
    private boolean areIn(PublishedPlan.Step t) {
        return t.people().stream()
                .allMatch(id -> work.people().stream()
                        .filter(p -> p.id().equals(id))
                        .flatMap(p -> p.present().stream())
                        .anyMatch(s -> !s.from().isAfter(t.start()) && s.to().isAfter(t.start())));
    }

    private Wish wish(PlannedStep p, Wish w) {
        int start = Math.max(time.floor(p.start()), time.ceil(work.now()));
        boolean crew = !p.people().isEmpty() || w.crew() == 0;
        return new Wish(w.step(), start, crew ? p.people().size() : w.crew(), p.people(), p.places(), p.missed());
    }
}
