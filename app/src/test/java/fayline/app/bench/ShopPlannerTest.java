package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.solver.CpSatLibrary;
import fayline.solver.shop.ShopPlanner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the solver makes of a plan keeps every rule and is never worse; judged by the auditor and the score, which it does not own. */
class ShopPlannerTest {
    @TempDir
    static Path folder;

    private static ShopPlanner planner;

    @BeforeAll
    static void make() {
        planner = new ShopPlanner(new CpSatLibrary(folder));
    }

    /** Judges every plan and notes it. */
    private static final class Judge implements Watch {
        private final Work work;
        private final int stopAfter;
        private final List<Double> totals = new ArrayList<>();
        private int broken;

        Judge(Work work, int stopAfter) {
            this.work = work;
            this.stopAfter = stopAfter;
        }

        @Override
        public boolean counts(Plan plan) {
            boolean clean = new PlanAuditor().audit(work, plan).isEmpty();
            broken += clean ? 0 : 1;
            return clean;
        }

        @Override
        public void better(Plan plan, PlanScore score) {
            totals.add(score.total());
        }

        @Override
        public boolean stop() {
            return totals.size() >= stopAfter;
        }
    }

    private static Improved better(Work work, double effort) {
        Plan serial = new SerialPlanner().plan(work);
        Judge judge = new Judge(work, Integer.MAX_VALUE);
        Improved improved = planner.improve(work, serial, PlanGoal.USUAL, new Limits(effort, 1), judge);
        PlanScorer scorer = new PlanScorer(work, PlanGoal.USUAL);
        assertThat(new PlanAuditor().audit(work, improved.plan())).isEmpty();
        assertThat(judge.broken).isZero();
        assertThat(improved.score().total())
                .isLessThanOrEqualTo(scorer.score(serial).total())
                .isEqualTo(scorer.score(improved.plan()).total());
        assertThat(judge.totals).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(improved.plan().steps()).hasSize(work.steps().size());
        return improved;
    }

    @ParameterizedTest
    @ValueSource(ints = {150, 300})
    void should_better_the_serial_plan_of_an_invented_shop_and_keep_every_rule(int steps) {
        assertThat(better(InventedShop.of(steps, steps), 0.6).found()).isPositive();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void should_keep_every_rule_when_work_and_absences_are_invented(long seed) {
        better(InventedShop.of(seed, 20 + 5 * (int) seed), 0.3);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void should_keep_what_the_lead_wishes_when_it_betters_a_plan(long seed) {
        Work work = wished(InventedShop.of(seed, 60), seed);
        assertThat(work.wishes()).hasSizeGreaterThan(5);
        // The auditor within judges each plan by every wish.
        assertThat(better(work, 0.6).found()).isPositive();
    }

    /** For every seventh step another person, no longer its place, or the start that it has; what cannot be kept is left out. */
    private static Work wished(Work work, long seed) {
        Plan plan = new SerialPlanner().plan(work);
        Work wished = work;
        for (int i = (int) seed; i < plan.steps().size(); i += 7) {
            PlannedStep p = plan.steps().get(i);
            Optional<String> other = work.people().stream()
                    .map(Worker::id)
                    .filter(id -> !p.people().isEmpty() && !p.people().contains(id))
                    .findFirst();
            List<WorkWish> all = new ArrayList<>(wished.wishes());
            if (i % 3 == 0 && other.isPresent()) {
                all.add(wish(p, WorkWish.Kind.WITH, other.get()));
            } else if (i % 3 == 1 && !p.places().isEmpty()) {
                all.add(wish(p, WorkWish.Kind.AWAY, p.places().get(p.places().size() - 1)));
            } else {
                all.add(wish(p, WorkWish.Kind.START, ""));
            }
            Work more = wished.withWishes(all);
            wished = new SerialPlanner().plan(more).unplanned().isEmpty() ? more : wished;
        }
        return wished;
    }

    private static WorkWish wish(PlannedStep p, WorkWish.Kind kind, String on) {
        boolean start = kind == WorkWish.Kind.START;
        return new WorkWish(
                "w-" + p.step(),
                p.step(),
                kind,
                on,
                start ? Optional.of(p.start()) : Optional.empty(),
                start ? Optional.of(p.start().plusSeconds(900)) : Optional.empty(),
                "",
                "");
    }

    @Test
    void should_give_the_same_plan_when_seed_and_limit_are_the_same() {
        Work work = InventedShop.of(7, 60);
        Plan serial = new SerialPlanner().plan(work);
        Limits limits = new Limits(0.6, 5);
        Improved once = planner.improve(work, serial, PlanGoal.USUAL, limits, new Judge(work, Integer.MAX_VALUE));
        Improved twice = planner.improve(work, serial, PlanGoal.USUAL, limits, new Judge(work, Integer.MAX_VALUE));
        assertThat(twice).isEqualTo(once);
        assertThat(once.stopped()).isFalse();
    }

    @Test
    void should_keep_the_best_and_say_so_when_stopped() {
        Work work = InventedShop.of(7, 60);
        Plan serial = new SerialPlanner().plan(work);
        Judge judge = new Judge(work, 1);
        Improved improved = planner.improve(work, serial, PlanGoal.USUAL, new Limits(60, 1), judge);
        assertThat(improved.stopped()).isTrue();
        assertThat(improved.effortS()).isLessThan(60);
        assertThat(improved.score().total()).isEqualTo(judge.totals.get(judge.totals.size() - 1));
    }

    @Test
    void should_leave_the_plan_when_nothing_counts() {
        Work work = InventedShop.of(9, 30);
        Plan serial = new SerialPlanner().plan(work);
        Improved improved = planner.improve(work, serial, PlanGoal.USUAL, new Limits(0.1, 1), plan -> false);
        assertThat(improved.plan()).isEqualTo(serial);
        assertThat(improved.found()).isZero();
    }
}
