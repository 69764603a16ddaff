package fayline.solver;

import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearArgument;

/** What one run of CP-SAT found. */
public final class RunAnswer {
    private final CpSolver solver;
    private final CpSolverStatus status;
    private final End end;

    /** Why a run ended. */
    public enum End {
        /** It was done: the best is proven, or that there is none. */
        DONE,
        /** Its deterministic limit. */
        EFFORT,
        /** Its CPU limit. */
        CPU,
        /** Its watch said stop. */
        STOPPED
    }

    RunAnswer(CpSolver solver, CpSolverStatus status, End end) {
        this.solver = solver;
        this.status = status;
        this.end = end;
    }

    /** Whether there is a solution. */
    public boolean found() {
        return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    }

    /** Whether the solution is proven the best. */
    public boolean proven() {
        return status == CpSolverStatus.OPTIMAL;
    }

    /** Whether it is proven that there is no solution. */
    public boolean infeasible() {
        return status == CpSolverStatus.INFEASIBLE;
    }

    /** Why the run ended. */
    public End end() {
        return end;
    }

    /** The solution's objective; only where one was found. */
    public double objective() {
        return solver.objectiveValue();
    }

    /** The objective that no solution is better than; the solver's least number where nothing is known. */
    public double bound() {
        return solver.bestObjectiveBound();
    }

    /** The value of a variable or expression; only where a solution was found. */
    public long value(LinearArgument of) {
        if (!found()) {
            throw new IllegalStateException("no solution: " + status);
        }
        return solver.value(of);
    }

    /** The solver's deterministic time that was used. */
    public double effortS() {
        return solver.response().getDeterministicTime();
    }
}
