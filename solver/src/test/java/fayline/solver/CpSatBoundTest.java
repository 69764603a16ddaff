package fayline.solver;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.SerialPlanner;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The bound is never above a plan that keeps the rules, and is the optimum where that was found by hand. */
class CpSatBoundTest {
    private static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z"); // a Monday
    private static final int DAYS = 42;

    @TempDir
    static Path folder;

    private static CpSatBound bound;

    @BeforeAll
    static void load() {
        bound = new CpSatBound(new CpSatLibrary(folder), 2);
    }

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_not_lie_after_the_plan_when_work_is_invented(long seed) {
        Work work = invented(new Random(seed));
        Plan plan = new SerialPlanner().plan(work);
        Instant least = bound.earliestFinish(work, plan).orElseThrow();
        assertThat(least).isBeforeOrEqualTo(plan.finish().orElseThrow()).isAfter(NOW);
        // The longest chain alone, at the clock's fastest, is a bound that needs no solver.
        assertThat(least).isAfterOrEqualTo(NOW.plus(Duration.ofMinutes(40 + 250 + 30)));
        assertThat(bound.earliestFinish(work, plan)).contains(least);
    }

    @Test
    void should_be_the_optimum_when_two_cures_follow_in_one_mould() {
        // 08:00 to 09:00 and 10 h alone; out on Tuesday 08:00 to 08:30; the same again: Wednesday 08:30.
        List<WorkStep> steps = List.of(
                step("a", 1, 60, "", new Span(600, "")),
                step("a-out", 1, 30, "a", Span.NONE),
                step("b", 1, 60, "", new Span(600, "")),
                step("b-out", 1, 30, "b", Span.NONE));
        Work work = work(
                2,
                steps,
                List.of(
                        new Hold("h1", Place.Kind.MOULD, List.of("m0"), 1, List.of("a", "a-out")),
                        new Hold("h2", Place.Kind.MOULD, List.of("m0"), 1, List.of("b", "b-out"))));
        assertIsOptimum(work, "2026-03-04T08:30:00Z");
    }

    @Test
    void should_be_the_optimum_when_one_person_has_three_long_steps() {
        // Two steps of 4 h fit in a day of 8 h 30; the third is over on Tuesday at 12:00.
        List<WorkStep> steps = List.of(
                step("a", 1, 240, "", Span.NONE), step("b", 1, 240, "", Span.NONE), step("c", 1, 240, "", Span.NONE));
        assertIsOptimum(work(1, steps, List.of()), "2026-03-03T12:00:00Z");
    }

    private static void assertIsOptimum(Work work, String optimum) {
        Plan plan = new SerialPlanner().plan(work);
        assertThat(plan.finish()).contains(Instant.parse(optimum));
        assertThat(bound.earliestFinish(work, plan)).contains(Instant.parse(optimum));
    }

    @Test
    void should_have_no_bound_when_nothing_is_planned() {
        Work work = work(1, List.of(), List.of());
        assertThat(bound.earliestFinish(work, new SerialPlanner().plan(work))).isEmpty();
    }

    @Test
    void should_have_no_bound_when_the_library_cannot_be_unpacked() throws Exception {
        Path file = Files.createFile(folder.resolve("a-file"));
        Work work = work(1, List.of(step("a", 1, 60, "", Span.NONE)), List.of());
        Plan plan = new SerialPlanner().plan(work);
        assertThat(new CpSatBound(new CpSatLibrary(file), 1).earliestFinish(work, plan))
                .isEmpty();
    }

    @Test
    void should_unpack_once_when_loaded_twice() throws Exception {
        CpSatLibrary library = new CpSatLibrary(folder);
        library.load();
        library.load();
        try (var inside = Files.list(folder)) {
            assertThat(inside.filter(Files::isDirectory)).hasSize(1);
        }
    }

    @Test
    void should_name_the_artifact_when_asked_for_a_machine() {
        assertThat(CpSatLibrary.platform("Linux", "amd64")).isEqualTo("ortools-linux-x86-64");
        assertThat(CpSatLibrary.platform("Mac OS X", "aarch64")).isEqualTo("ortools-darwin-aarch64");
        assertThat(CpSatLibrary.platform("Windows 11", "amd64")).isEqualTo("ortools-win32-x86-64");
    }

    private static Work invented(Random random) {
        List<WorkStep> steps = new ArrayList<>();
        List<Hold> holds = new ArrayList<>();
        int parts = 1 + random.nextInt(5);
        for (int i = 0; i < parts; i++) {
            String lay = "lay-" + i;
            String out = "out-" + i;
            String trim = "trim-" + i;
            steps.add(step(lay, 1 + random.nextInt(2), 60 + random.nextInt(200), "", new Span(500, "slow")));
            steps.add(step(out, 1, 30 + random.nextInt(60), lay, Span.NONE));
            steps.add(stopping(step(trim, 1, 30 + random.nextInt(400), out, Span.NONE)));
            holds.add(new Hold("h" + i, Place.Kind.MOULD, List.of("m" + random.nextInt(2)), 1, List.of(lay, out)));
            holds.add(new Hold("p" + i, Place.Kind.PORT, List.of("p0", "p1"), 1, List.of(lay)));
        }
        return work(2 + random.nextInt(2), steps, holds);
    }

    private static WorkStep step(String id, int people, int minutes, String after, Span alone) {
        List<CrewTime> hands = List.of(new CrewTime(people, minutes), new CrewTime(people + 1, minutes * 2 / 3));
        List<Link> links = after.isEmpty()
                ? List.of()
                : List.of(new Link(after, "end", Span.NONE, Optional.empty(), Optional.empty()));
        return new WorkStep(
                id,
                "x",
                id,
                id,
                "other",
                people == 1 && alone.equals(Span.NONE) ? hands.subList(0, 1) : hands,
                Map.of("laminate", 1),
                "quiet",
                false,
                alone,
                links,
                Optional.empty(),
                List.of(),
                List.of(),
                false,
                State.TODO,
                Actual.NONE);
    }

    private static WorkStep stopping(WorkStep s) {
        return new WorkStep(
                s.id(),
                s.project(),
                s.made(),
                s.title(),
                s.kind(),
                s.hands(),
                s.skills(),
                s.air(),
                true,
                s.alone(),
                s.after(),
                s.notBefore(),
                s.awaits(),
                s.watchMin(),
                false,
                s.state(),
                s.actual());
    }

    private static Work work(int crew, List<WorkStep> steps, List<Hold> holds) {
        List<Worker> people = new ArrayList<>();
        for (int i = 0; i < crew; i++) {
            List<Stretch> present = new ArrayList<>();
            for (int d = 0; d < DAYS; d++) {
                LocalDate day = LocalDate.ofInstant(NOW, ZoneOffset.UTC).plusDays(d);
                if (d % 7 < 5) {
                    present.add(new Stretch(
                            day.atTime(8, 0).toInstant(ZoneOffset.UTC),
                            day.atTime(16, 30).toInstant(ZoneOffset.UTC)));
                }
            }
            people.add(new Worker("w" + i, "w" + i, Set.of("laminate"), present, List.of()));
        }
        List<Place> places = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            places.add(new Place("m" + i, "m" + i, Place.Kind.MOULD, "", false, false));
            places.add(new Place("p" + i, "p" + i, Place.Kind.PORT, "", false, false));
        }
        List<Double> rates = new ArrayList<>(Collections.nCopies(24 * DAYS, 1.0));
        for (int h = 12; h < rates.size(); h += 24) {
            for (int n = h; n < Math.min(h + 12, rates.size()); n++) {
                rates.set(n, 0.6);
            }
        }
        rates.set(0, 2.0);
        CureClock slow = new CureClock("slow", NOW, 60, rates);
        return new Work(
                "v",
                "d",
                "A",
                NOW,
                ZoneOffset.UTC,
                NOW.plus(Duration.ofDays(DAYS)),
                0,
                people,
                places,
                List.of(slow),
                List.of(),
                steps,
                holds);
    }
}
