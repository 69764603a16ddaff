package fayline.flow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.Worker;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties of plans of invented work; the auditor, which shares no code with the planner, is the judge. */
class SerialPlannerRandomTest {
    private static final int SHOPS = 200;

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, SHOPS);
    }

    /** All but what the plan itself says it leaves unplanned. */
    private static List<BrokenRule> broken(Work work, Plan plan) {
        return new PlanAuditor()
                .audit(work, plan).stream().filter(b -> !b.admitted()).toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_when_planning_an_invented_shop(long seed) {
        Work work = RandomWork.of(seed, 1 + (int) (seed % 9), 70);
        Plan plan = new SerialPlanner().plan(work);
        assertThat(broken(work, plan)).as("seed %d", seed).isEmpty();
        assertThat(plan.steps().size() + plan.unplanned().size())
                .isEqualTo(work.steps().size());
        assertThat(plan.unplanned()).as("seed %d", seed).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_when_the_horizon_is_too_near(long seed) {
        Work work = RandomWork.of(seed, 2 + (int) (seed % 7), 5 + (int) (seed % 12));
        Plan plan = new SerialPlanner().plan(work);
        assertThat(broken(work, plan)).as("seed %d", seed).isEmpty();
        assertThat(plan.unplanned()).allSatisfy(u -> assertThat(u.reason()).hasSizeGreaterThan(20));
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 14, 159, 265})
    void should_give_the_same_plan_when_asked_twice(long seed) {
        Work work = RandomWork.of(seed, 6, 70);
        assertThat(new SerialPlanner().plan(work)).isEqualTo(new SerialPlanner().plan(work));
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 8, 16, 20, 31, 44})
    void should_stay_clean_when_a_person_is_away_for_a_week_more(long seed) {
        Work work = RandomWork.of(seed, 8, 84);
        Instant from = RandomWork.NOW;
        Instant to = from.plus(Duration.ofDays(7));
        List<Worker> people = new ArrayList<>(work.people());
        Worker first = people.get(0);
        people.set(
                0,
                new Worker(
                        first.id(),
                        first.name(),
                        first.skills(),
                        first.present().stream()
                                .filter(s -> !s.from().isBefore(to))
                                .toList(),
                        first.breaks().stream()
                                .filter(s -> !s.from().isBefore(to))
                                .toList()));
        Work fewer = work.withPeople(people);
        Plan before = new SerialPlanner().plan(work);
        Plan after = new SerialPlanner().plan(fewer);
        assertThat(after).isNotEqualTo(before);
        assertThat(broken(fewer, after)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 8, 16, 20, 31, 44})
    void should_stay_clean_when_only_one_port_is_left(long seed) {
        Work work = RandomWork.of(seed, 8, 84);
        List<Place> places = work.places().stream()
                .filter(p -> p.kind() != Place.Kind.PORT || p.id().equals("port-0"))
                .toList();
        Work fewer = Works.withPlaces(work, places);
        Plan plan = new SerialPlanner().plan(fewer);
        assertThat(broken(fewer, plan)).isEmpty();
        assertThat(plan.steps()).allSatisfy(s -> assertThat(s.places()).noneMatch(p -> p.matches("port-[12]")));
    }
}
