package fayline.app.bench;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.Worker;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.solver.CpSatBound;
import fayline.solver.CpSatLibrary;
import fayline.solver.shop.ShopPlanner;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties of plans in which sets may be chosen and hands follow their opposite; the auditor is the judge. */
class SetsAndHandsTest {
    @TempDir
    static Path folder;

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static Work work(long seed) {
        return InventedSets.of(seed, 20 + 8 * (int) (seed % 7));
    }

    private static double score(Work work, Plan plan) {
        return new PlanScorer(work.inSetsOf(plan), PlanGoal.USUAL).score(plan).total();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_and_take_other_sets_only_for_a_better_plan(long seed) {
        Work work = work(seed);
        Plan plan = new SerialPlanner().plan(work, PlanGoal.USUAL);
        assertThat(new PlanAuditor().audit(work, plan)).isEmpty();
        assertThat(work.hands().follows()).isNotEmpty();
        for (Work one : work.divisions()) {
            Plan own = new SerialPlanner().plan(one);
            assertThat(new PlanAuditor().audit(work, own)).isEmpty();
        }
        assertThat(score(work, plan)).isLessThanOrEqualTo(score(work, new SerialPlanner().plan(work)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void should_keep_every_rule_and_get_no_worse_when_a_better_plan_is_searched(long seed) {
        Work work = work(seed);
        Plan serial = new SerialPlanner().plan(work, PlanGoal.USUAL);
        List<BrokenRule> broken = new ArrayList<>();
        List<Double> told = new ArrayList<>();
        Watch judge = new Watch() {
            @Override
            public boolean counts(Plan plan) {
                List<BrokenRule> found = new PlanAuditor().audit(work, plan);
                broken.addAll(found);
                return found.isEmpty();
            }

            @Override
            public void better(Plan plan, PlanScore score) {
                told.add(score.total());
            }
        };
        ShopPlanner planner = new ShopPlanner(new CpSatLibrary(folder));
        Improved once = planner.improve(work, serial, PlanGoal.USUAL, new Limits(0.8, 1), judge);
        assertThat(broken).isEmpty();
        assertThat(told).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(new PlanAuditor().audit(work, once.plan())).isEmpty();
        assertThat(score(work, once.plan())).isEqualTo(once.score().total()).isLessThanOrEqualTo(score(work, serial));
        Improved twice = planner.improve(work, serial, PlanGoal.USUAL, new Limits(0.8, 1), judge);
        assertThat(twice).isEqualTo(once);
    }

    @Test
    void should_change_the_sets_for_a_better_plan_where_that_pays() {
        List<Integer> changed = new ArrayList<>();
        for (long seed = 1; seed <= 60; seed++) {
            Work work = work(seed);
            Plan plan = new SerialPlanner().plan(work, PlanGoal.USUAL);
            changed.add(work.divisions().indexOf(work.inSetsOf(plan).divisions().get(0)));
        }
        assertThat(changed).contains(0, 1);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void should_never_have_a_later_least_finish_with_one_more_person_or_more_sets_to_choose_from(long seed) {
        Work work = InventedSets.of(seed, 8);
        Work fewer = work.withSets(new SetChoice(work.sets().groups(), List.of()));
        List<Worker> crew = new ArrayList<>(work.people());
        Worker first = crew.get(0);
        crew.add(new Worker("more", "One more", first.skills(), first.present(), first.breaks()));
        Instant all = least(work);
        assertThat(all).isBeforeOrEqualTo(least(fewer));
        assertThat(least(work.withPeople(crew))).isBeforeOrEqualTo(all);
    }

    /** Proven for each division: the works are small enough. */
    private static Instant least(Work work) {
        Plan plan = new SerialPlanner().plan(work, PlanGoal.USUAL);
        return new CpSatBound(new CpSatLibrary(folder), 30)
                .earliestFinish(work, plan)
                .orElseThrow();
    }
}
