package fayline.app.usecase.better;

import fayline.app.usecase.view.ReadFolder;
import fayline.app.usecase.view.ShopView;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanSolver;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import fayline.solver.CpuClock;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How long a shop waits for a first plan. The first one that it makes is cold: where the process has planned nothing before, the
 * planner's classes are loaded and not compiled yet. Those after it are warm.
 */
public final class FirstPlans {
    private static final double MS_PER_S = 1000;
    private static final double NS_PER_MS = 1e6;

    private static final int PASSES = 9;

    private final Timed planner = new Timed(new SerialPlanner());

    /**
     * One plan's time.
     *
     * @param wallMs by the clock, in milliseconds
     * @param cpuMs of the processors, all threads of the process together, in milliseconds
     */
    public record Took(double wallMs, double cpuMs) {}

    /**
     * Reads a folder as the program does, its plan being the first.
     *
     * @param folder the definition
     * @throws IOException if it cannot be read
     */
    public ShopView read(Path folder) throws IOException {
        return ReadFolder.open(folder, Optional.empty(), Clock.systemUTC(), planner)
                .look("")
                .orElseThrow();
    }

    /** Plans a work, and notes how long it took. */
    public Plan plan(Work work) {
        return planner.plan(work, PlanGoal.USUAL);
    }

    /** The middle one of some plans made in one pass: all that is needed for one that keeps every rule, if not the best. */
    public Took onePass(Work work) {
        Timed quick = new Timed(SerialPlanner.quick());
        for (int i = 0; i < PASSES; i++) {
            quick.plan(work);
        }
        return middle(quick.took);
    }

    /** The first plan of all; empty while there is none. */
    public Optional<Took> cold() {
        return planner.took.stream().findFirst();
    }

    /** The middle one of the others by the clock, and the middle one by the processors; empty while there are none. */
    public Optional<Took> warm() {
        List<Took> warm = planner.took.subList(Math.min(1, planner.took.size()), planner.took.size());
        return warm.isEmpty() ? Optional.empty() : Optional.of(middle(warm));
    }

    private static Took middle(List<Took> took) {
        return new Took(
                middleOf(took.stream().map(Took::wallMs).toList()),
                middleOf(took.stream().map(Took::cpuMs).toList()));
    }

    private static double middleOf(List<Double> times) {
        return times.stream().sorted(Comparator.naturalOrder()).toList().get(times.size() / 2);
    }

    /** A planner under the clock. */
    private static final class Timed implements PlanSolver {
        private final PlanSolver planner;
        private final List<Took> took = new ArrayList<>();

        Timed(PlanSolver planner) {
            this.planner = planner;
        }

        @Override
        public Plan plan(Work work) {
            return plan(work, PlanGoal.USUAL);
        }

        @Override
        public Plan plan(Work work, PlanGoal goal) {
            double cpuS = CpuClock.usedS();
            long ns = System.nanoTime();
            Plan plan = planner.plan(work, goal);
            took.add(new Took((System.nanoTime() - ns) / NS_PER_MS, (CpuClock.usedS() - cpuS) * MS_PER_S));
            return plan;
        }
    }
}
