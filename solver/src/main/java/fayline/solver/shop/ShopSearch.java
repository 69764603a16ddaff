package fayline.solver.shop;

import com.google.ortools.sat.LinearArgument;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.planner.serial.WishedSchedule;
import fayline.flow.planner.serial.WishedSchedule.Sooner;
import fayline.flow.planner.serial.WishedSchedule.Wish;
import fayline.solver.CpSatLibrary;
import fayline.solver.RunAnswer;
import fayline.solver.RunLimits;
import fayline.solver.RunWatch;
import fayline.solver.SolverRun;
import fayline.solver.shop.ShopModel.Spot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;

/** One search for a better plan. */
final class ShopSearch {
    /** What goes to the whole plan at once, and when: order moves and parts find more at first. */
    private static final double WHOLE_EFFORT = 0.5;

    private static final double WHOLE_AFTER = 3;

    private static final double ROUND_EFFORT = 0.25;
    /** What building a model and making plans of its solution counts, beside the solver's own time. */
    private static final double OVERHEAD = 0.02;
    /** What one change of the order counts. */
    private static final double MOVE_EFFORT = 0.002;
    /** Changes of the order between two parts planned anew. */
    private static final int MOVES = 100;

    private static final int LEAST = 12;
    private static final int MOST = 90;
    private static final int AT_FIRST = 24;
    /** A solution so little better than the last is not made a plan of while the solver still runs. */
    private static final double WORTH = 0.01;

    private static final double EPS = 1e-9;

    private final CpSatLibrary library;
    private final ShopCase shop;
    private final Limits limits;
    private final Watch watch;
    /** Whether it is the whole model alone, without a start: what the rest is measured against. */
    private final boolean plain;

    private final WishedSchedule schedule;
    private final PlanScorer scorer;
    private Plan best;
    /** Where the search stands: the best, or a plan as good that has not been asked about. */
    private Plan current;

    private PlanScore score;
    /** Steps of the next two days that had to move already; no more of them may. */
    private final long nearMoved;

    private double used;
    private boolean wholeTried;
    private int rounds;
    private int found;
    private int refused;
    private boolean stopped;

    ShopSearch(CpSatLibrary library, Work work, Plan base, PlanGoal goal, Limits limits, Watch watch, boolean plain) {
        this.plain = plain;
        this.library = library;
        this.limits = limits;
        this.watch = watch;
        schedule = new WishedSchedule(work, base);
        scorer = new PlanScorer(work, goal);
        best = base;
        current = base;
        score = scorer.score(base);
        nearMoved = scorer.nearMoved(base);
        shop = new ShopCase(work, base, goal);
    }

    Improved go() {
        if (plain) {
            if (!shop.items.isEmpty()) {
                whole(limits.effortS());
            }
            return new Improved(best, score, stopped, used, rounds, found, refused);
        }
        for (Sooner sooner : Sooner.values()) {
            schedule.plan(wishes(best), sooner).ifPresent(this::consider);
        }
        if (!shop.items.isEmpty()) {
            OrderMoves moves = new OrderMoves(shop, schedule, this::wishes, limits.seed());
            parts(moves);
        }
        return new Improved(best, score, stopped, used, rounds, found, refused);
    }

    /** A plan's own wishes; what the crew was told of the next two days stays. */
    private List<Wish> wishes(Plan plan) {
        return schedule.of(plan).stream()
                .map(w -> scorer.isNear(w.step()) ? w.staying() : w)
                .toList();
    }

    /**
     * Goes on from a plan that is as good as the best without asking whether it counts, since asking takes longer than making it;
     * where it is better and counts, it is the best.
     */
    private void consider(Plan plan) {
        PlanScore s = scorer.score(plan);
        boolean first = plain && found == 0;
        if (!first && (s.total() > score.total() + EPS || plan.equals(current) || scorer.nearMoved(plan) > nearMoved)) {
            return;
        }
        if (!first && s.total() > score.total() - EPS) {
            current = plan;
            return;
        }
        if (!watch.counts(plan)) {
            refused++;
            current = best;
            return;
        }
        best = plan;
        current = plan;
        score = s;
        found++;
        watch.better(plan, score);
    }

    private void whole(double effort) {
        boolean[] free = new boolean[shop.items.size()];
        Arrays.fill(free, true);
        run(free, effort);
    }

    private void moves(OrderMoves moves) {
        for (int i = 0; i < MOVES && used < limits.effortS() && !isStopped(); i++) {
            used += MOVE_EFFORT;
            moves.next(current).ifPresent(this::consider);
        }
    }

    private void parts(OrderMoves moves) {
        Neighbourhoods parts = new Neighbourhoods(shop, limits.seed());
        double size = AT_FIRST;
        while (used < limits.effortS() && !isStopped()) {
            moves(moves);
            if (!wholeTried && used > WHOLE_AFTER) {
                wholeTried = true;
                whole(Math.min(WHOLE_EFFORT, Math.max(OVERHEAD, limits.effortS() - used)));
            }
            rounds++;
            boolean[] free = parts.next(new Standing(shop, current), (int) Math.round(size));
            boolean proven = run(free, Math.min(ROUND_EFFORT, Math.max(OVERHEAD, limits.effortS() - used)));
            size = Math.max(LEAST, Math.min(Math.min(MOST, shop.items.size()), proven ? size * 1.06 : size * 0.94));
        }
    }

    private boolean isStopped() {
        stopped |= watch.stop();
        return stopped;
    }

    /** Plans some steps anew; says whether the solver was done with them. */
    private boolean run(boolean[] free, double effort) {
        Standing standing = new Standing(shop, current);
        shop.items.forEach(i -> free[i.index] &= !scorer.isNear(i.step.id()));
        ShopModel model = new ShopModel(shop, standing, free, !plain);
        Improving improving = new Improving(standing, model);
        RunAnswer answer =
                SolverRun.of(library, model.model, RunLimits.ofEffort(effort).withSeed(limits.seed()), improving);
        used += answer.effortS() + OVERHEAD;
        if (answer.found()) {
            make(standing, model.free(), model.read(answer::value).values());
        }
        return answer.proven();
    }

    /** Makes plans of solutions while the solver runs. */
    private final class Improving implements RunWatch {
        private final Standing standing;
        private final ShopModel model;
        private double made = Double.POSITIVE_INFINITY;

        Improving(Standing standing, ShopModel model) {
            this.standing = standing;
            this.model = model;
        }

        @Override
        public void improved(double objective, double bound, ToLongFunction<LinearArgument> values) {
            if (Double.isInfinite(made) && !plain) {
                made = objective;
            } else if (Double.isInfinite(made) || objective < made - WORTH * Math.abs(made)) {
                made = objective;
                make(standing, model.free(), model.read(values).values());
            }
        }

        @Override
        public boolean stop() {
            return isStopped();
        }
    }

    private void make(Standing standing, boolean[] free, Collection<Spot> spots) {
        Map<Integer, List<String>> crews =
                CrewChoice.of(library, shop, standing, spots, ModelCrew.busy(shop, standing, free));
        List<Wish> wishes = new ArrayList<>();
        for (Wish w : wishes(standing.plan)) {
            int item = shop.itemOf(w.step()).orElseThrow();
            Optional<Spot> spot =
                    spots.stream().filter(s -> s.item().index == item).findFirst();
            wishes.add(spot.map(s -> wish(s, crews)).orElse(w));
        }
        for (Sooner sooner : Sooner.values()) {
            schedule.plan(wishes, sooner).ifPresent(this::consider);
        }
    }

    private static Wish wish(Spot s, Map<Integer, List<String>> crews) {
        return new Wish(
                s.item().step.id(),
                s.start() * Slots.MIN,
                s.mode().crew(),
                crews.getOrDefault(s.item().index, List.of()),
                s.places(),
                List.copyOf(s.mode().missed()));
    }
}
