package fayline.solver.shop;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.project.shop.PlanWeights;
import fayline.solver.CpSatLibrary;
import fayline.solver.RunAnswer;
import fayline.solver.RunLimits;
import fayline.solver.RunWatch;
import fayline.solver.SolverRun;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the model does about late evenings and idle people where nothing else counts. */
class ModelHoursTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z"); // a Monday

    @TempDir
    static Path folder;

    private static WorkStep step(String id, int minutes, Instant notBefore) {
        return new WorkStep(
                id,
                "x",
                id,
                id,
                "cut",
                List.of(new CrewTime(1, minutes)),
                Map.of(),
                "quiet",
                false,
                Span.NONE,
                List.of(),
                Optional.of(notBefore),
                List.of(),
                List.of(),
                false,
                State.TODO,
                Actual.NONE);
    }

    private static Work work(List<Stretch> present, WorkStep... steps) {
        return new Work(
                "v",
                "d",
                "A",
                NOW,
                ZoneOffset.UTC,
                NOW.plus(Duration.ofDays(28)),
                0,
                List.of(new Worker("ada", "Ada", Set.of(), present, List.of())),
                List.of(),
                List.of(),
                List.of(),
                List.of(steps),
                List.of());
    }

    /** The steps one after the other at some moments. */
    private static Plan plan(Work work, Instant... starts) {
        List<PlannedStep> planned = new ArrayList<>();
        Instant last = NOW;
        for (int i = 0; i < starts.length; i++) {
            WorkStep s = work.steps().get(i);
            Instant end = starts[i].plus(Duration.ofMinutes(s.hands().get(0).minutes()));
            planned.add(new PlannedStep(
                    s.id(),
                    starts[i],
                    end,
                    end,
                    List.of("ada"),
                    List.of(),
                    List.of(new Stretch(starts[i], end)),
                    List.of()));
            last = end.isAfter(last) ? end : last;
        }
        return new Plan(planned, List.of(), Optional.of(last));
    }

    /** Where the model puts each step, in minutes from now, with all of them free. */
    private static List<Long> starts(Work work, Plan plan, double idle, double evening) {
        PlanWeights only = new PlanWeights(0, 0, 0, 0, idle, evening, 0, LocalTime.of(18, 0));
        CpSatLibrary library = new CpSatLibrary(folder);
        library.load();
        ShopCase shop = new ShopCase(work, plan, new PlanGoal(only, List.of(), Optional.empty()));
        boolean[] free = new boolean[shop.items.size()];
        java.util.Arrays.fill(free, true);
        ShopModel model = new ShopModel(shop, new Standing(shop, plan), free, true);
        RunAnswer answer =
                SolverRun.of(library, model.model, RunLimits.ofEffort(5).withSeed(1), RunWatch.NOBODY);
        assertThat(answer.proven()).isTrue();
        return model.read(answer::value).values().stream()
                .map(s -> Duration.between(NOW, shop.time.at(s.start() * Slots.MIN))
                        .toMinutes())
                .toList();
    }

    private static Stretch day(int day, int from, int to) {
        Instant midnight = NOW.minus(Duration.ofHours(8)).plus(Duration.ofDays(day));
        return new Stretch(midnight.plus(Duration.ofHours(from)), midnight.plus(Duration.ofHours(to)));
    }

    @Test
    void should_leave_the_evening_for_the_next_morning_only_where_evenings_count() {
        Instant evening = NOW.plus(Duration.ofHours(11));
        Work work = work(
                List.of(day(0, 8, 21), day(1, 8, 21)),
                step("a", 60, evening),
                step("end", 30, NOW.plus(Duration.ofHours(32))));
        Plan plan = plan(work, evening, NOW.plus(Duration.ofHours(32)));
        assertThat(starts(work, plan, 0, 0).get(0)).isEqualTo(11 * 60);
        assertThat(starts(work, plan, 0, 1).get(0)).isEqualTo(24 * 60);
    }

    @Test
    void should_fill_the_fortnight_with_what_needs_most_hands_where_idle_people_count() {
        Instant last = NOW.plus(Duration.ofDays(13));
        Work work = work(
                List.of(day(13, 8, 12), day(15, 8, 12), day(16, 8, 12)),
                step("short", 60, last),
                step("long", 240, last));
        Plan plan = plan(work, last, NOW.plus(Duration.ofDays(16)));
        assertThat(starts(work, plan, 1, 0).get(1)).isEqualTo(13 * 24 * 60);
        assertThat(starts(work, plan, 1, 0).get(0)).isGreaterThan(14 * 24 * 60);
    }
}
