package fayline.solver.net;

import fayline.solver.CpSatLibrary;
import fayline.solver.RunAnswer;
import fayline.solver.RunLimits;
import fayline.solver.RunWatch;
import fayline.solver.SolverRun;
import fayline.solver.net.Incumbent.Standing;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;

/**
 * Re-arranges part of the best schedule with CP-SAT so that the whole becomes shorter: activities about one or two moments are
 * free, the others keep their chains [godard2005]. The part grows when it is often proven to hold nothing better, and shrinks
 * when the effort often runs out.
 */
final class Windows {
    private static final double LEAST = 0.05;
    private static final double STEP = 1.1;

    private final CpSatLibrary library;
    private final Compact net;
    private final Incumbent best;
    private final Random random;
    private double share = 0.3;

    Windows(CpSatLibrary library, Compact net, Incumbent best, long seed) {
        this.library = library;
        this.net = net;
        this.best = best;
        random = new Random(seed);
    }

    /** One try within limits; the deterministic effort used. */
    double step(RunLimits limits) {
        Standing now = best.standing();
        int horizon = now.end - 1;
        if (horizon < now.bound) {
            return 0;
        }
        boolean[] free = chosen(now);
        NetModel model = new NetModel(net, horizon);
        for (int[] pair : Chains.of(net, now.start, free)) {
            model.apart(pair[0], pair[1], net.duration[pair[0]]);
        }
        model.shorten(now.bound, horizon);
        model.hint(now.start);
        RunAnswer answer = SolverRun.of(
                library,
                model.model(),
                limits.withSeed(1 + random.nextInt(1 << 20)),
                new Overtaken(horizon),
                p -> p.setLinearizationLevel(0).setCpModelProbingLevel(0).setSymmetryLevel(0));
        if (answer.found()) {
            best.offer(model.starts(answer::value));
        } else if (answer.infeasible()) {
            share = Math.min(1, share * STEP);
        } else {
            share = Math.max(LEAST, share / STEP);
        }
        return answer.effortS();
    }

    private final class Overtaken implements RunWatch {
        private final int horizon;

        Overtaken(int horizon) {
            this.horizon = horizon;
        }

        @Override
        public boolean stop() {
            return best.closed() || best.end() <= horizon;
        }
    }

    private boolean[] chosen(Standing now) {
        int[] at = now.start;
        boolean[] free = new boolean[net.n];
        int moments = 1 + random.nextInt(2);
        int count = Math.max(2, (int) (share * net.n / moments));
        for (int x = 0; x < moments; x++) {
            int moment = random.nextInt(now.end + 1);
            Integer[] near = new Integer[net.n];
            Arrays.setAll(near, i -> i);
            Arrays.sort(near, Comparator.comparingInt(i -> Math.abs(2 * at[i] + net.duration[i] - 2 * moment)));
            for (int y = 0; y < Math.min(count, net.n); y++) {
                free[near[y]] = true;
            }
        }
        return free;
    }
}
