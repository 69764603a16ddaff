package fayline.app.usecase.better;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.PlanOrigin;
import fayline.app.usecase.view.PlanOrigin.Kind;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.PlanImprover.Improved;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a search in the background tells and leaves behind, with searchers that do as they are told. */
class ImprovePlanTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);
    private static final Instant LEAST = Instant.parse("2026-03-20T12:00:00Z");

    @TempDir
    Path folder;

    private OpenShop open;
    private LookAtShop looking;

    @BeforeEach
    void start() throws Exception {
        open = OpenShop.openWith(folder.resolve("data"), Path.of("../demo/ousel"), CLOCK, Optional.empty());
        looking = new LookAtShop(open.shop());
    }

    @AfterEach
    void stop() {
        open.close();
    }

    private List<Progress> told(PlanImprover improver) {
        ImprovePlan improve = new ImprovePlan(looking, improver, new LeastFinish((w, p) -> Optional.of(LEAST)));
        List<Progress> told = new ArrayList<>();
        improve.listen(told::add);
        assertThat(improve.start(new Limits(3, 7))).isTrue();
        improve.await();
        return told;
    }

    @Test
    void should_tell_the_bound_before_the_first_better_plan() {
        List<Progress> told = told((work, base, goal, limits, watch) -> {
            PlanScore score = new PlanScorer(work, goal).score(base);
            watch.better(base, score);
            return new Improved(base, score, false, 3, 1, 1, 0);
        });
        assertThat(told).hasSize(3).allSatisfy(p -> assertThat(p.least()).contains(LEAST));
        assertThat(told.get(0).steps()).isEmpty();
        assertThat(told.get(2).running()).isFalse();
        assertThat(told.get(2).origin()).isEqualTo(new PlanOrigin(Kind.SEARCHED, 3, 7));
        assertThat(looking.standing().orElseThrow().origin().kind()).isEqualTo(Kind.SEARCHED);
    }

    @Test
    void should_keep_the_best_and_say_that_the_search_broke_off() {
        List<Progress> told = told((work, base, goal, limits, watch) -> {
            watch.better(base, new PlanScorer(work, goal).score(base));
            throw new UnsatisfiedLinkError("no such library");
        });
        assertThat(told.get(told.size() - 1).fault()).contains("library cannot be loaded");
        assertThat(looking.standing().orElseThrow().origin().words())
                .isEqualTo("Best of a search that broke off (effort 3, seed 7); the same again need not give it.");
    }

    @Test
    void should_leave_the_plan_as_it_was_when_nothing_better_is_found() {
        Plan before = looking.standing().orElseThrow().plan();
        List<Progress> told = told((work, base, goal, limits, watch) ->
                new Improved(base, new PlanScorer(work, goal).score(base), false, 3, 1, 0, 0));
        assertThat(told.get(told.size() - 1).origin()).isEqualTo(PlanOrigin.SERIAL);
        assertThat(looking.standing().orElseThrow().plan()).isEqualTo(before);
        assertThat(looking.standing().orElseThrow().origin()).isEqualTo(PlanOrigin.SERIAL);
    }

    @Test
    void should_still_measure_the_plan_by_its_search_when_the_better_plan_is_in_other_sets() {
        Work before = looking.standing().orElseThrow().work();
        Work other = before.inSetsOf(before.sets().otherwise().get(0));
        List<Progress> told = told((work, base, goal, limits, watch) -> {
            Plan plan = new SerialPlanner().plan(other);
            PlanScore score = new PlanScorer(other, goal).score(plan);
            watch.better(plan, score);
            return new Improved(plan, score, false, 3, 1, 1, 0);
        });
        Work now = looking.standing().orElseThrow().work();
        assertThat(now.sets().groups())
                .isEqualTo(other.sets().groups())
                .isNotEqualTo(before.sets().groups());
        assertThat(told).isNotEmpty().allSatisfy(p -> assertThat(p.isOf(now)).isTrue());
        assertThat(told.get(0).isOf(now.withDeliveries(List.of()))).isFalse();
    }
}
