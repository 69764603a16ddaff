package fayline.flow.planner.goal;

import static fayline.flow.planner.SmallShop.at;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Plan.Unplanned;
import fayline.flow.plan.Work;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.SmallShop;
import fayline.flow.planner.SmallShop.Step;
import fayline.flow.planner.goal.PlanScore.Kind;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Every term against a plan that can be scored by hand: two people in from 08:00 to 16:30 with a break at 12:00. */
class PlanScorerTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static Work work() {
        return new SmallShop("2026-03-02T08:00")
                .person("ada")
                .person("bob")
                .step(new Step("a", 1, 60).alone(120, ""))
                .step(new Step("b", 2, 60).window(0, 30, 90, "a"))
                .work();
    }

    private static PlannedStep step(String id, String from, String to, String end, List<String> people) {
        return new PlannedStep(
                id, at(from), at(to), at(end), people, List.of(), List.of(new Stretch(at(from), at(to))), List.of());
    }

    private static Plan plan() {
        List<PlannedStep> steps = List.of(
                step("a", "2026-03-02T08:00", "2026-03-02T09:00", "2026-03-02T11:00", List.of("ada")),
                step("b", "2026-03-02T11:00", "2026-03-02T12:00", "2026-03-02T12:00", List.of("ada", "bob")));
        return new Plan(steps, List.of(), Optional.of(at("2026-03-02T12:00")));
    }

    private static PlanScore score(Plan plan, PlanGoal goal) {
        return new PlanScorer(work(), goal).score(plan);
    }

    @Test
    void should_count_hours_to_the_end_of_all_and_of_each_part_on_average() {
        PlanScore score = score(plan(), PlanGoal.USUAL);
        assertThat(score.amount(Kind.FINISH)).isEqualTo(4, EXACT);
        assertThat(score.amount(Kind.PARTS)).isEqualTo(4, EXACT);
        assertThat(score.amount(Kind.UNPLANNED)).isZero();
    }

    @Test
    void should_count_as_idle_what_is_in_the_shop_and_not_needed() {
        // Two people for four hours, of which one and two hours are needed.
        assertThat(score(plan(), PlanGoal.USUAL).amount(Kind.IDLE)).isEqualTo(5, EXACT);
    }

    @Test
    void should_weigh_each_term_and_add_them_up() {
        PlanWeights weights = new PlanWeights(1, 10, 100, 1, 1000, 1, 1, LocalTime.of(18, 0));
        PlanScore score = score(plan(), new PlanGoal(weights, List.of(), Optional.empty()));
        assertThat(score.total()).isEqualTo(40 + 400 + 5000, EXACT);
    }

    @Test
    void should_count_the_hours_by_which_a_dated_goal_is_missed() {
        PlanGoal.Dated half = new PlanGoal.Dated("g", "Both", at("2026-03-02T11:30"), Set.of("a", "b"));
        PlanGoal.Dated met = new PlanGoal.Dated("h", "The first", at("2026-03-02T11:30"), Set.of("a"));
        PlanGoal goal = new PlanGoal(PlanWeights.USUAL, List.of(half, met), Optional.empty());
        assertThat(score(plan(), goal).amount(Kind.LATE)).isEqualTo(0.5, EXACT);
    }

    @Test
    void should_count_the_work_that_missed_windows_cost() {
        PlannedStep b = plan().steps().get(1);
        PlannedStep late = new PlannedStep(
                b.step(), b.start(), b.handsEnd(), b.end(), b.people(), b.places(), b.stretches(), List.of("a"));
        Plan missed = new Plan(List.of(plan().steps().get(0), late), List.of(), plan().finish());
        assertThat(score(missed, PlanGoal.USUAL).amount(Kind.WINDOWS)).isEqualTo(1.5, EXACT);
    }

    @Test
    void should_count_hands_in_the_evening_for_everyone() {
        Plan late = new Plan(
                List.of(step("b", "2026-03-02T17:30", "2026-03-02T19:00", "2026-03-02T19:00", List.of("ada", "bob"))),
                List.of(),
                Optional.of(at("2026-03-02T19:00")));
        assertThat(score(late, PlanGoal.USUAL).amount(Kind.EVENING)).isEqualTo(2, EXACT);
    }

    @Test
    void should_count_steps_that_moved_from_what_was_told() {
        List<PublishedPlan.Step> told = List.of(
                told("a", "2026-03-02T08:10", List.of("ada")), // less than a quarter of an hour is no move
                told("b", "2026-03-02T11:00", List.of("ada", "cem")));
        PlanGoal goal = new PlanGoal(
                PlanWeights.USUAL,
                List.of(),
                Optional.of(new PublishedPlan(1, at("2026-03-01T08:00"), "ada", "d", "h", told)));
        assertThat(score(plan(), goal).amount(Kind.MOVED)).isEqualTo(1, EXACT);
    }

    private static PublishedPlan.Step told(String id, String from, List<String> people) {
        return new PublishedPlan.Step(id, at(from), at(from), at(from), people, List.of());
    }

    @Test
    void should_hold_an_unplanned_step_dearer_than_any_time() {
        Plan none =
                new Plan(List.of(), List.of(new Unplanned("a", "why"), new Unplanned("b", "why")), Optional.empty());
        assertThat(score(none, PlanGoal.USUAL).total())
                .isGreaterThan(score(plan(), PlanGoal.USUAL).total() + PlanScorer.UNPLANNED_HOURS);
    }

    @Test
    void should_refuse_a_weight_below_nought() {
        assertThatThrownBy(() -> new PlanWeights(1, 1, 1, 1, 1, 1, -1, LocalTime.of(18, 0)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
