package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
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
import fayline.solver.shop.ShopPlanner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
