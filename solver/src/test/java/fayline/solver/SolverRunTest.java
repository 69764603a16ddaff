package fayline.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import fayline.solver.RunAnswer.End;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.ToLongFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Limits, watch and stop, on little machine-scheduling models whose answer is known or which nobody proves quickly. */
class SolverRunTest {
    @TempDir
    static Path folder;

    private static CpSatLibrary library;

    @BeforeAll
    static void unpack() {
        library = new CpSatLibrary(folder);
        library.load();
    }

    /** Jobs one after the other on one machine, each to end by its date at best: summed lateness. */
    private record OneMachine(CpModel model, List<IntVar> starts) {
        static OneMachine of(int jobs) {
            Random random = new Random(7);
            CpModel model = new CpModel();
            List<IntVar> starts = new ArrayList<>();
            List<IntervalVar> intervals = new ArrayList<>();
            List<IntVar> late = new ArrayList<>();
            for (int i = 0; i < jobs; i++) {
                int minutes = 1 + random.nextInt(20);
                IntVar start = model.newIntVar(0, 20L * jobs, "s" + i);
                IntVar over = model.newIntVar(0, 20L * jobs, "l" + i);
                starts.add(start);
                late.add(over);
                intervals.add(model.newFixedSizeIntervalVar(start, minutes, "i" + i));
                model.addGreaterOrEqual(over, LinearExpr.affine(start, 1, minutes - random.nextInt(5 * jobs)));
            }
            model.addNoOverlap(intervals);
            model.minimize(LinearExpr.sum(late.toArray(new LinearArgument[0])));
            return new OneMachine(model, starts);
        }
    }

    @Test
    void should_prove_the_best_when_the_model_is_small() {
        OneMachine one = OneMachine.of(4);
        RunAnswer answer = SolverRun.of(library, one.model, RunLimits.ofEffort(10), RunWatch.NOBODY);
        assertThat(answer.proven()).isTrue();
        assertThat(answer.end()).isEqualTo(End.DONE);
        assertThat(answer.objective()).isEqualTo(answer.bound());
    }

    @Test
    void should_say_infeasible_when_there_is_no_solution() {
        CpModel model = new CpModel();
        IntVar x = model.newIntVar(0, 3, "x");
        model.addGreaterOrEqual(x, 4);
        RunAnswer answer = SolverRun.of(library, model, RunLimits.ofEffort(1), RunWatch.NOBODY);
        assertThat(answer.infeasible()).isTrue();
        assertThat(answer.found()).isFalse();
        assertThatIllegalStateException().isThrownBy(() -> answer.value(x));
    }

    @Test
    void should_answer_alike_when_seed_and_effort_are_alike() {
        for (int workers : new int[] {1, 3}) {
            RunLimits limits = RunLimits.ofEffort(0.2).withSeed(5).withWorkersInTurns(workers);
            OneMachine one = OneMachine.of(30);
            OneMachine two = OneMachine.of(30);
            RunAnswer first = SolverRun.of(library, one.model, limits, RunWatch.NOBODY);
            RunAnswer second = SolverRun.of(library, two.model, limits, RunWatch.NOBODY);
            assertThat(first.end()).isEqualTo(End.EFFORT);
            assertThat(one.starts.stream().map(first::value).toList())
                    .isEqualTo(two.starts.stream().map(second::value).toList());
            assertThat(first.effortS()).isEqualTo(second.effortS());
        }
    }

    @Test
    void should_keep_the_best_when_stopped_after_the_first_solution() {
        OneMachine one = OneMachine.of(60);
        List<Double> seen = new ArrayList<>();
        RunAnswer answer = SolverRun.of(library, one.model, RunLimits.ofEffort(1_000), new RunWatch() {
            @Override
            public void improved(double objective, double bound, ToLongFunction<LinearArgument> values) {
                assertThat(values.applyAsLong(one.starts.get(0))).isNotNegative();
                assertThat(bound).isLessThanOrEqualTo(objective);
                synchronized (seen) {
                    seen.add(objective);
                }
            }

            @Override
            public boolean stop() {
                synchronized (seen) {
                    return !seen.isEmpty();
                }
            }
        });
        assertThat(answer.end()).isEqualTo(End.STOPPED);
        assertThat(answer.found()).isTrue();
        assertThat(answer.objective()).isEqualTo(seen.get(seen.size() - 1));
        assertThat(seen).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void should_tell_rising_bounds_below_the_best_when_minimising() {
        List<Double> bounds = new ArrayList<>();
        RunAnswer answer = SolverRun.of(library, OneMachine.of(12).model, RunLimits.ofEffort(2), new RunWatch() {
            @Override
            public void bounded(double bound) {
                bounds.add(bound);
            }
        });
        assertThat(bounds).isNotEmpty().isSorted().allMatch(b -> b <= answer.objective());
        assertThat(bounds.get(bounds.size() - 1)).isLessThanOrEqualTo(answer.bound());
    }

    @Test
    void should_end_by_the_processor_when_that_is_the_limit() {
        RunAnswer answer = SolverRun.of(library, OneMachine.of(60).model, RunLimits.ofCpu(2, 0.5), RunWatch.NOBODY);
        assertThat(answer.end()).isEqualTo(End.CPU);
    }

    @Test
    void should_throw_again_what_the_watch_throws() {
        assertThatIllegalStateException()
                .isThrownBy(() ->
                        SolverRun.of(library, OneMachine.of(60).model, RunLimits.ofEffort(1_000), new RunWatch() {
                            @Override
                            public void improved(double o, double b, ToLongFunction<LinearArgument> v) {
                                throw new IllegalStateException("the page is gone");
                            }
                        }))
                .withMessage("the page is gone");
    }
}
