package fayline.app.usecase.better;

import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.PlanImprover.Limits;
import fayline.flow.planner.PlanImprover.Watch;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.solver.CpSatLibrary;
import fayline.solver.CpuClock;
import fayline.solver.shop.ShopPlanner;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How fast plans of some work get better, with our start and search and with the solver's model alone. */
public final class MeasurePlanning {
    private final CpSatLibrary library;

    /**
     * Loads the solver's library at once, so that it counts for no search.
     *
     * @param folder into which the library is unpacked where it is not yet
     * @throws java.io.UncheckedIOException if it cannot be unpacked
     * @throws UnsatisfiedLinkError if it cannot be loaded
     */
    public MeasurePlanning(Path folder) {
        library = new CpSatLibrary(folder);
        library.load();
    }

    /**
     * A plan that keeps every rule, and when it was there.
     *
     * @param cpuS processor seconds of the whole process since the search began
     * @param objective what the plan scores; less is better
     * @param finish its end
     */
    public record Moment(double cpuS, double objective, Optional<Instant> finish) {}

    /**
     * Searches from a plan, with all that helps; the plan itself is the first moment.
     *
     * @param cpuS processor seconds after which it stops
     */
    public List<Moment> bettered(Work work, Plan base, PlanGoal goal, double cpuS) {
        List<Moment> moments = new ArrayList<>();
        moments.add(new Moment(0, new PlanScorer(work, goal).score(base).total(), base.finish()));
        moments.addAll(searched(new ShopPlanner(library), work, base, goal, cpuS, cpuS));
        return moments;
    }

    /**
     * Searches with the whole model alone, without a start. Where it has found nothing in time, it goes on to its first plan.
     *
     * @param cpuS processor seconds after which it stops, if it has a plan by then
     * @param mostCpuS processor seconds after which it stops in any case
     * @return its plans, the last of them after {@code cpuS} if it is the first; empty where it found none at all
     */
    public List<Moment> alone(Work work, Plan base, PlanGoal goal, double cpuS, double mostCpuS) {
        return searched(ShopPlanner.plain(library), work, base, goal, cpuS, Math.max(cpuS, mostCpuS));
    }

    private static List<Moment> searched(
            PlanImprover improver, Work work, Plan base, PlanGoal goal, double cpuS, double mostCpuS) {
        List<Moment> moments = new ArrayList<>();
        double beganS = CpuClock.usedS();
        Watch watch = new Watch() {
            @Override
            public boolean counts(Plan plan) {
                return new PlanAuditor().audit(work, plan).stream().allMatch(BrokenRule::admitted);
            }

            @Override
            public void better(Plan plan, PlanScore score) {
                moments.add(new Moment(CpuClock.usedS() - beganS, score.total(), plan.finish()));
            }

            @Override
            public boolean stop() {
                return CpuClock.usedS() - beganS > (moments.isEmpty() ? mostCpuS : cpuS);
            }
        };
        // Solver's effort runs slower than the processors here; the watch is what stops it.
        improver.improve(work, base, goal, new Limits(mostCpuS, 1), watch);
        return List.copyOf(moments);
    }
}
