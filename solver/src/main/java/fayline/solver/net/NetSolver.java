package fayline.solver.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.NetAnswer;
import fayline.solver.CpSatLibrary;
import fayline.solver.CpuClock;
import fayline.solver.RunLimits;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Finds a short schedule of a net and a bound on the shortest. A population of orders gives the start where no maximum lag
 * stands in the way; then two searches share the best: CP-SAT on the whole net with the horizon cut to the best, and beside it
 * more populations or, with maximum lags, CP-SAT on parts of the best schedule.
 */
public final class NetSolver {
    /** Stale islands without a better schedule after which the processor is left to the proof, per activity. */
    private static final double PATIENCE = 0.2;

    /** Deterministic effort of a try on a part of the schedule. */
    private static final double TRY_S = 0.05;

    /** Steps of an island that count as one deterministic second, about what a second holds. */
    private static final int STEPS_IN_1_S = 100;

    /** Kept back, since CP-SAT does not stop at once. */
    private static final double STOP_CPU_S = 0.08;

    private final CpSatLibrary library;

    /**
     * A solver.
     *
     * @param library the native library, loaded when first needed
     */
    public NetSolver(CpSatLibrary library) {
        this.library = library;
    }

    /**
     * Solves.
     *
     * @param net the net
     * @param limits how long it may take
     * @return the best schedule found, if any, and a bound
     * @throws java.io.UncheckedIOException if the native library cannot be unpacked
     * @throws UnsatisfiedLinkError if it cannot be loaded
     */
    public NetAnswer solve(Net net, NetLimits limits) {
        double startS = CpuClock.usedS();
        Compact compact = new Compact(net);
        if (!compact.possible()) {
            return NetAnswer.none(0);
        }
        if (compact.n == 0) {
            return NetAnswer.of(net, List.of(), 0);
        }
        Incumbent best = new Incumbent(compact, compact.least());
        Search search = new Search(compact, best, limits.seed());
        if (limits.byEffort()) {
            search.byEffort(limits.effortS());
        } else {
            search.byCpu(startS + Math.max(limits.cpuS() / 2, limits.cpuS() - STOP_CPU_S));
        }
        return answer(net, best);
    }

    private static NetAnswer answer(Net net, Incumbent best) {
        if (best.infeasible()) {
            return NetAnswer.none(best.bound());
        }
        if (!best.found()) {
            return NetAnswer.unknown(best.bound());
        }
        int bound = Math.min(best.bound(), best.end());
        return NetAnswer.of(net, Arrays.stream(best.start()).boxed().toList(), bound);
    }

    /** One search of one net. */
    private final class Search {
        private final Compact net;
        private final Incumbent best;
        private final int seed;
        private final boolean placeable;
        private final Proof proof;
        private final Windows windows;

        Search(Compact net, Incumbent best, int seed) {
            this.net = net;
            this.best = best;
            this.seed = seed;
            placeable = net.placeable();
            proof = new Proof(library, net, best, seed);
            windows = new Windows(library, net, best, seed);
        }

        void byCpu(double deadlineS) {
            if (!placeable) {
                sideBySide(deadlineS, () -> improveParts(deadlineS));
                return;
            }
            Islands islands = new Islands(net, seed);
            best.offer(islands.best().start);
            while (!best.closed() && islands.staleSince() < 1 && CpuClock.usedS() < deadlineS) {
                islands.step();
                best.offer(islands.best().start);
            }
            sideBySide(deadlineS, () -> breed(islands, deadlineS));
        }

        private void sideBySide(double deadlineS, Runnable improve) {
            if (best.closed()) {
                return;
            }
            library.load();
            FutureTask<Void> proving = new FutureTask<>(() -> proof.untilCpu(deadlineS), null);
            Thread thread = new Thread(proving, "net-proof");
            thread.setDaemon(true);
            thread.start();
            improve.run();
            try {
                proving.get();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            } catch (ExecutionException e) {
                throw new IllegalStateException("the proof failed", e.getCause());
            }
        }

        private void breed(Islands islands, double deadlineS) {
            int known = best.end();
            while (!best.closed() && CpuClock.usedS() < deadlineS && islands.staleSince() < 2 + PATIENCE * net.n) {
                islands.step();
                best.offer(islands.best().start);
                if (best.end() < Math.min(known, islands.best().end)) {
                    islands.visit(best.start());
                }
                known = best.end();
            }
        }

        private void improveParts(double deadlineS) {
            double left = deadlineS - CpuClock.usedS();
            if (left > 0) {
                FirstSchedule.search(
                        library, net, best, RunLimits.ofCpu(1, left).withSeed(seed));
            }
            left = deadlineS - CpuClock.usedS();
            while (!best.closed() && left > 0) {
                windows.step(RunLimits.ofEffort(TRY_S).withCpu(left));
                left = deadlineS - CpuClock.usedS();
            }
        }

        void byEffort(double effortS) {
            if (placeable) {
                Islands islands = new Islands(net, seed);
                best.offer(islands.best().start);
                for (int x = 0; x < STEPS_IN_1_S * effortS && !best.closed(); x++) {
                    islands.step();
                    best.offer(islands.best().start);
                }
            }
            double left = effortS;
            if (!best.closed()) {
                left -= proof.forEffort(effortS / 2);
            }
            while (!best.closed() && best.found() && left > effortS / 4) {
                left -= Math.max(TRY_S / 10, windows.step(RunLimits.ofEffort(TRY_S)));
            }
            if (!best.closed() && left > 0) {
                proof.forEffort(left);
            }
        }
    }
}
