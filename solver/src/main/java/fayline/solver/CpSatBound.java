package fayline.solver;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanBound;
import fayline.flow.planner.SerialPlanner;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Optional;

/**
 * A proven lower bound on a plan's finish from a relaxation: hands only when so many are in, earlier steps first, unattended
 * time at the clock's fastest, moulds, stands and ports, and people by their number and skills. It leaves out windows that
 * shut, air, watches, who does what, and that work may not stop for other work, so a real best plan may well end later. Steps
 * under way are taken to end as the plan says. Where pieces may be made in other sets, it is the least of all divisions.
 */
public final class CpSatBound implements PlanBound {
    private static final int SEED = 1;
    private static final double ROUND_OFF = 1e-6;

    private final CpSatLibrary library;
    private final double effort;

    /**
     * A bound by a library.
     *
     * @param library the native library, loaded when first needed
     * @param effort limit in the solver's deterministic time, of the order of seconds; positive
     */
    public CpSatBound(CpSatLibrary library, double effort) {
        this.library = library;
        this.effort = effort;
    }

    @Override
    public Optional<Instant> earliestFinish(Work work, Plan plan) {
        if (plan.finish().isEmpty()) {
            return Optional.empty();
        }
        try {
            library.load();
        } catch (UncheckedIOException | UnsatisfiedLinkError e) {
            return Optional.empty();
        }
        Work own = work.inSetsOf(plan);
        int divisions = 1 + own.sets().otherwise().size();
        Optional<Instant> least = bound(own, plan, effort / divisions);
        for (Work other : own.sets().otherwise()) {
            Work alone = own.inSetsOf(other);
            Plan its = new SerialPlanner().plan(alone);
            // A division of which nothing is known leaves the whole unknown.
            Optional<Instant> bound = its.finish().isEmpty() ? least : bound(alone, its, effort / divisions);
            least = least.flatMap(l -> bound.map(b -> b.isBefore(l) ? b : l));
        }
        return least.map(l -> l.isAfter(plan.finish().get()) ? plan.finish().get() : l);
    }

    private static Optional<Instant> bound(Work work, Plan plan, double effort) {
        Relaxation relaxation = new Relaxation(work, plan);
        CpModel model = relaxation.build();
        CpSolver solver = new CpSolver();
        solver.getParameters().setNumSearchWorkers(1).setRandomSeed(SEED).setMaxDeterministicTime(effort);
        CpSolverStatus status = solver.solve(model);
        // A plan that breaks rules may lie outside the relaxation; then nothing is known.
        if (status == CpSolverStatus.INFEASIBLE || status == CpSolverStatus.MODEL_INVALID) {
            return Optional.empty();
        }
        int minute = (int) Math.ceil(solver.bestObjectiveBound() - ROUND_OFF);
        return Optional.of(relaxation.at(minute));
    }
}
