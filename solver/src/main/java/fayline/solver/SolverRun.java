package fayline.solver;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.SatParameters;
import fayline.solver.RunAnswer.End;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One run of CP-SAT on a model, within limits, watched, and stopped when its watch says so. A start is given to the solver by the
 * model's own hints. What the watch throws ends the run and is thrown again from here.
 */
public final class SolverRun {
    private static final long LOOK_MS = 20;
    private static final Pattern BOUND = Pattern.compile("^#Bound.* next:\\[([-+.0-9e]+),");

    private final CpModel model;
    private final RunLimits limits;
    private final RunWatch watch;
    private final CpSolver solver = new CpSolver();
    private final double startedS = CpuClock.usedS();
    private final AtomicReference<@Nullable End> asked = new AtomicReference<>();
    private final AtomicReference<@Nullable RuntimeException> fault = new AtomicReference<>();

    private SolverRun(CpModel model, RunLimits limits, RunWatch watch) {
        this.model = model;
        this.limits = limits;
        this.watch = watch;
    }

    /**
     * Runs.
     *
     * @param library loaded first if it is not yet
     * @param model the model, with hints where there is a start
     * @param limits how far
     * @param watch who looks on and may stop it
     * @throws java.io.UncheckedIOException if the library cannot be unpacked
     * @throws UnsatisfiedLinkError if it cannot be loaded
     * @throws IllegalStateException if the solver finds the model malformed, which is our mistake
     */
    public static RunAnswer of(CpSatLibrary library, CpModel model, RunLimits limits, RunWatch watch) {
        return of(library, model, limits, watch, p -> {});
    }

    /**
     * Runs with more of the solver's own parameters.
     *
     * @param tune sets them, after seed, workers and limit
     */
    public static RunAnswer of(
            CpSatLibrary library,
            CpModel model,
            RunLimits limits,
            RunWatch watch,
            Consumer<SatParameters.Builder> tune) {
        library.load();
        return new SolverRun(model, limits, watch).run(tune);
    }

    private RunAnswer run(Consumer<SatParameters.Builder> tune) {
        SatParameters.Builder p = solver.getParameters();
        p.setNumWorkers(limits.workers()).setRandomSeed(limits.seed()).setInterleaveSearch(limits.inTurns());
        if (Double.isFinite(limits.effortS())) {
            p.setMaxDeterministicTime(limits.effortS());
        }
        p.setLogSearchProgress(true).setLogToStdout(false);
        tune.accept(p);
        Thread looker = new Thread(this::look, "solver-watch");
        looker.setDaemon(true);
        looker.start();
        CpSolverStatus status;
        try {
            solver.setLogCallback(logReader());
            status = solver.solve(model, callback());
        } finally {
            looker.interrupt();
        }
        RuntimeException thrown = fault.get();
        if (thrown != null) {
            throw thrown;
        }
        if (status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the solver refuses the model: " + model.validate());
        }
        return new RunAnswer(solver, status, end(status));
    }

    private End end(CpSolverStatus status) {
        if (status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.INFEASIBLE) {
            return End.DONE;
        }
        End stopped = asked.get();
        return stopped == null ? End.EFFORT : stopped;
    }

    private CpSolverSolutionCallback callback() {
        return new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                guarded(() -> watch.improved(objectiveValue(), bestObjectiveBound(), this::value));
            }
        };
    }

    /**
     * Bounds are read from the search log: the library's own callback for bounds passes a bare double where Java expects an
     * object and brings the virtual machine down (seen with 9.14.6206). A class with a method that takes a String, since
     * native code looks for just that and finds none in a lambda.
     */
    private Consumer<String> logReader() {
        return new Consumer<>() {
            @Override
            public void accept(String line) {
                Matcher m = BOUND.matcher(line);
                if (m.find()) {
                    guarded(() -> watch.bounded(Double.parseDouble(m.group(1))));
                }
            }
        };
    }

    /** Nothing may be thrown into native code. */
    private void guarded(Runnable call) {
        try {
            call.run();
        } catch (RuntimeException e) {
            fault.compareAndSet(null, e);
        }
    }

    /** Asks again and again, since a stop before the search has begun is lost on the solver. */
    private void look() {
        try {
            while (true) {
                Thread.sleep(LOOK_MS);
                guarded(this::ask);
                if (asked.get() != null || fault.get() != null) {
                    solver.stopSearch();
                }
            }
        } catch (InterruptedException e) {
            // The run is over.
            Thread.currentThread().interrupt();
        }
    }

    private void ask() {
        if (watch.stop()) {
            asked.compareAndSet(null, End.STOPPED);
        } else if (CpuClock.usedS() - startedS > limits.cpuS()) {
            asked.compareAndSet(null, End.CPU);
        }
    }
}
