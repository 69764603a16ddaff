package fayline.flow.planner.serial;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.serial.Blocks.Block;
import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Several passes over the blocks, each by another priority, of which the best makes the plan. */
public final class ChainSchedule {
    /** Passes with a disturbed priority beside the plain ones. */
    private static final int DISTURBED = 6;

    private static final double HANDS_DEAR = 0.6;
    private static final double HANDS_CHEAP = 0.15;

    private ChainSchedule() {}

    /**
     * The best plan of the passes. What looks like chance in the priorities is a fixed sequence: equal work, equal plan.
     *
     * @param work the work
     * @return its plan
     */
    public static Plan of(Work work) {
        return of(work, Integer.MAX_VALUE);
    }

    /**
     * The best plan of the first passes only: less good, and that much sooner.
     *
     * @param work the work
     * @param passes how many at most; positive
     * @return its plan
     */
    public static Plan of(Work work, int passes) {
        Net net = new Net(work);
        Map<Integer, String> lacking = new LinkedHashMap<>();
        new Shortfalls(net).find(lacking);
        Run.spreadOverHolds(net, lacking);
        boolean[] alive = new boolean[net.tasks.size()];
        for (Task task : net.tasks) {
            alive[task.index] = !lacking.containsKey(task.index);
        }
        List<Block> blocks = Blocks.of(net, alive);
        Optional<Run> best = Optional.empty();
        for (Priority p : priorities(net, blocks).stream().limit(passes).toList()) {
            Run run = new Run(net, blocks, p.of, p.waitPerHands, lacking).go();
            if (best.isEmpty() || run.cost() < best.get().cost() - 1e-6) {
                best = Optional.of(run);
            }
        }
        Run run = best.orElseThrow();
        return PlanText.of(net, run.placements(), run.reasons());
    }

    /** An order of the blocks, the highest first, and what waiting is worth. */
    private static final class Priority {
        private final double[] of;
        private final double waitPerHands;

        private Priority(double[] of, double waitPerHands) {
            this.of = of;
            this.waitPerHands = waitPerHands;
        }
    }

    private static List<Priority> priorities(Net net, List<Block> blocks) {
        double[] tails = Blocks.tails(net);
        int n = blocks.size();
        double[] longest = new double[n];
        double[] listed = new double[n];
        double[] crowded = new double[n];
        double[] load = new double[net.places.size()];
        for (Task task : net.tasks) {
            for (int k : task.keeps) {
                for (int place : net.keep(k).usable) {
                    load[place] +=
                            task.step.alone().minutes() / net.keep(k).usable.size();
                }
            }
        }
        for (Block b : blocks) {
            int i = b.index();
            listed[i] = -i;
            for (int t : b.tasks()) {
                longest[i] = Math.max(longest[i], tails[t]);
                for (int k : net.task(t).keeps) {
                    for (int place : net.keep(k).usable) {
                        crowded[i] = Math.max(crowded[i], load[place]);
                    }
                }
            }
            crowded[i] += longest[i] / 2;
        }
        List<Priority> all = new ArrayList<>();
        all.add(new Priority(longest, HANDS_DEAR));
        all.add(new Priority(longest, HANDS_CHEAP));
        all.add(new Priority(listed, HANDS_DEAR));
        all.add(new Priority(crowded, HANDS_DEAR));
        for (int d = 0; d < DISTURBED; d++) {
            double[] disturbed = new double[n];
            for (int i = 0; i < n; i++) {
                disturbed[i] = longest[i] * (0.7 + 0.6 * fraction(i, d));
            }
            all.add(new Priority(disturbed, d % 2 == 0 ? HANDS_DEAR : HANDS_CHEAP));
        }
        return all;
    }

    /** An even, fixed spread over 0 to 1: multiples of the golden ratio. */
    private static double fraction(int i, int d) {
        double x = (i + 1) * (d + 1) * 0.6180339887498949;
        return x - Math.floor(x);
    }
}
