package fayline.solver.shop;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.solver.CpSatLibrary;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A search where pieces may be made in other sets: each division is searched a little from a plan of its own, the better half a
 * little longer, and so on until one is left, which gets the rest (successive halving; K. Jamieson and A. Talwalkar, AISTATS 2016;
 * from memory). Every division is a model of its own: pieces of a set share every step, so that a choice of sizes inside one model
 * would double each of its steps.
 */
final class SetSearch {
    /** The part of the effort that goes to finding the division. */
    private static final double RACE = 0.4;

    private static final double EPS = 1e-9;

    private final CpSatLibrary library;
    private final PlanGoal goal;
    private final Limits limits;
    private final Watch watch;
    private final List<Runner> runners = new ArrayList<>();
    private Plan best;
    private PlanScore score;
    private double used;
    private int rounds;
    private int found;
    private int refused;
    private boolean stopped;

    /** A division on its way: its work and the best plan of it so far. */
    private static final class Runner {
        private final Work work;
        private Plan plan;
        private double total;

        Runner(Work work, Plan plan, double total) {
            this.work = work;
            this.plan = plan;
            this.total = total;
        }
    }

    SetSearch(CpSatLibrary library, Work work, Plan base, PlanGoal goal, Limits limits, Watch watch) {
        this.library = library;
        this.goal = goal;
        this.limits = limits;
        this.watch = watch;
        PlanScorer scorer = new PlanScorer(work, goal);
        best = base;
        score = scorer.score(base);
        runners.add(new Runner(work, base, score.total()));
        for (Work other : work.sets().otherwise()) {
            Work alone = work.inSetsOf(other);
            Plan plan = new SerialPlanner().plan(alone);
            PlanScorer its = new PlanScorer(alone, goal);
            // What the crew was told of the next two days moves for no better sets.
            if (its.nearMoved(plan) <= scorer.nearMoved(base) && counts(plan)) {
                PlanScore s = its.score(plan);
                runners.add(new Runner(alone, plan, s.total()));
                better(plan, s);
            }
        }
    }

    Improved go() {
        int heats = 32 - Integer.numberOfLeadingZeros(runners.size() - 1);
        for (int heat = 0; heat < heats && !stopped; heat++) {
            double each = limits.effortS() * RACE / heats / runners.size();
            List.copyOf(runners).forEach(r -> search(r, each));
            runners.sort(Comparator.comparingDouble(r -> r.total));
            runners.subList((runners.size() + 1) / 2, runners.size()).clear();
        }
        if (!stopped) {
            search(runners.get(0), Math.max(EPS, limits.effortS() - used));
        }
        return new Improved(best, score, stopped, used, rounds, found, refused);
    }

    private void search(Runner r, double effort) {
        if (stopped) {
            return;
        }
        Limits some = new Limits(effort, limits.seed());
        Improved i = new ShopSearch(library, r.work, r.plan, goal, some, new Heat(), false).go();
        r.plan = i.plan();
        r.total = i.score().total();
        used += i.effortS();
        rounds += i.rounds();
        refused += i.refused();
        stopped |= i.stopped();
        if (i.score().total() <= score.total() + EPS) {
            best = i.plan();
            score = i.score();
        }
    }

    private boolean counts(Plan plan) {
        boolean counts = watch.counts(plan);
        refused += counts ? 0 : 1;
        return counts;
    }

    private void better(Plan plan, PlanScore s) {
        if (s.total() < score.total() - EPS) {
            best = plan;
            score = s;
            found++;
            watch.better(plan, s);
        }
    }

    /** Tells of plans only that are the best of all divisions. */
    private final class Heat implements Watch {
        @Override
        public boolean counts(Plan plan) {
            return watch.counts(plan);
        }

        @Override
        public void better(Plan plan, PlanScore s) {
            SetSearch.this.better(plan, s);
        }

        @Override
        public boolean stop() {
            return watch.stop();
        }
    }
}
