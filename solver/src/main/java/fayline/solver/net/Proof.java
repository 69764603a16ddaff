package fayline.solver.net;

import com.google.ortools.sat.LinearArgument;
import fayline.solver.CpSatLibrary;
import fayline.solver.CpuClock;
import fayline.solver.RunAnswer;
import fayline.solver.RunLimits;
import fayline.solver.RunWatch;
import fayline.solver.SolverRun;
import fayline.solver.net.Incumbent.Standing;
import java.util.function.ToLongFunction;

/**
 * Looks with CP-SAT for a shorter schedule than the best until there is none: the horizon is cut to one less than the best, the
 * best is the hint. Begins again when somebody else has found a better one and the horizon has become too wide. Without linear
 * relaxation, which cost more than it gave on these nets (docs/benchmarks.md).
 */
final class Proof {
    /** Others find their improvements in quick succession; a new run waits until they pause. */
    private static final double SETTLED_CPU_S = 0.25;

    private static final double ROUND_OFF = 1e-6;

    private final CpSatLibrary library;
    private final Compact net;
    private final Incumbent best;
    private final int seed;

    Proof(CpSatLibrary library, Compact net, Incumbent best, int seed) {
        this.library = library;
        this.net = net;
        this.best = best;
        this.seed = seed;
    }

    /** Runs until closed, or until a CPU time on the process's clock. */
    void untilCpu(double deadlineS) {
        double left = deadlineS - CpuClock.usedS();
        while (!best.closed() && left > 0) {
            run(RunLimits.ofCpu(1, left).withSeed(seed), true);
            left = deadlineS - CpuClock.usedS();
        }
    }

    /** One run with a deterministic limit; what it used of it. */
    double forEffort(double effortS) {
        return run(RunLimits.ofEffort(effortS).withSeed(seed), false);
    }

    private double run(RunLimits limits, boolean restart) {
        Standing now = best.standing();
        int horizon = now.found() ? now.end - 1 : net.most();
        if (horizon < now.bound) {
            return 0;
        }
        NetModel model = new NetModel(net, horizon);
        model.shorten(now.bound, horizon);
        if (now.found()) {
            model.hint(now.start);
        }
        RunAnswer answer = SolverRun.of(
                library, model.model(), limits, new Watch(model, horizon, restart), p -> p.setLinearizationLevel(0));
        learn(answer, model, horizon);
        return answer.effortS();
    }

    private void learn(RunAnswer answer, NetModel model, int horizon) {
        if (answer.found()) {
            best.offer(model.starts(answer::value));
            best.raise((int) Math.ceil(answer.bound() - ROUND_OFF));
        } else if (answer.infeasible() && horizon >= net.most()) {
            best.none();
        } else if (answer.infeasible()) {
            best.raise(horizon + 1);
        }
    }

    /** Hands on what is found, and stops a run that has been overtaken. */
    private final class Watch implements RunWatch {
        private final NetModel model;
        private final boolean restart;
        private int own;
        private int seen;
        private double seenAtS;

        Watch(NetModel model, int horizon, boolean restart) {
            this.model = model;
            this.restart = restart;
            own = horizon + 1;
            seen = own;
        }

        @Override
        public synchronized void improved(double objective, double bound, ToLongFunction<LinearArgument> values) {
            int[] found = model.starts(values);
            own = net.makespan(found);
            best.offer(found);
            best.raise((int) Math.ceil(bound - ROUND_OFF));
        }

        @Override
        public void bounded(double bound) {
            best.raise((int) Math.ceil(bound - ROUND_OFF));
        }

        @Override
        public synchronized boolean stop() {
            if (best.closed()) {
                return true;
            }
            if (!restart || best.end() >= own) {
                return false;
            }
            if (best.end() < seen) {
                seen = best.end();
                seenAtS = CpuClock.usedS();
            }
            return CpuClock.usedS() - seenAtS > SETTLED_CPU_S;
        }
    }
}
