package fayline.flow.audit;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.Mutation.Scene;
import fayline.flow.audit.Mutation.Spoilt;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.SerialPlanner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Seeded shops are planned, the plans audited, and then spoilt in every way: what was spoilt must be named. */
class SpoiltPlansTest {
    private static final int SEEDS = 200;
    /** Every way must have been tried so often, or the test says nothing of it. */
    private static final int LEAST_TIMES = 20;

    @Test
    void should_find_nothing_but_what_was_spoilt_when_seeded_shops_are_planned() {
        Map<String, Integer> times = new TreeMap<>();
        List<Mutation> mutations = Mutations.all();
        for (int seed = 0; seed < SEEDS; seed++) {
            Work work = SeededWork.of(seed);
            Plan plan = new SerialPlanner().plan(work);
            assertThat(new PlanAuditor().audit(work, plan)).as("seed %d", seed).isEmpty();
            for (Mutation mutation : mutations) {
                Scene scene = new Scene(work, plan, new Random(seed * 1000L + mutations.indexOf(mutation)));
                Optional<Spoilt> spoilt = mutation.spoil().on(scene);
                spoilt.ifPresent(s -> {
                    assertThat(new PlanAuditor().audit(s.work(), s.plan()))
                            .as("%s in seed %s", mutation.name(), scene.work.definition())
                            .extracting(BrokenRule::rule)
                            .contains(mutation.rule());
                    times.merge(mutation.name(), 1, Integer::sum);
                });
            }
        }
        assertThat(times.keySet())
                .containsExactlyInAnyOrderElementsOf(
                        mutations.stream().map(Mutation::name).toList());
        assertThat(times).allSatisfy((name, count) -> assertThat(count).as(name).isGreaterThanOrEqualTo(LEAST_TIMES));
    }
}
