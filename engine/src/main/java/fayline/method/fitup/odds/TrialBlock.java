package fayline.method.fitup.odds;

import fayline.basis.numeric.RandomStream;
import java.util.List;

/** Trials of the whole fit, counted: one block, or several added up. */
final class TrialBlock {
    /** Steps of the count for each gap, over so many standard deviations to either side. */
    static final int STEPS = 2048;

    private static final double REACH = 8;

    private final double[] fromMm;
    private final double[] stepMm;
    private final double[] predictedMm;
    private final int[][] counts;
    private final long[] inside;
    private final double[] sums;
    private final double[] squares;
    private long allInside;
    private long trials;

    TrialBlock(GapSpread spread) {
        int n = spread.gaps().size();
        fromMm = new double[n];
        stepMm = new double[n];
        predictedMm = new double[n];
        counts = new int[n][STEPS];
        inside = new long[n];
        sums = new double[n];
        squares = new double[n];
        for (int i = 0; i < n; i++) {
            double u = spread.deviationMm(i);
            predictedMm[i] = spread.gaps().get(i).predictedMm();
            fromMm[i] = -REACH * u;
            stepMm[i] = 2 * REACH * u / STEPS;
        }
    }

    /** Draws trials from a stream. */
    void draw(GapSpread spread, List<Axis> axes, double[][] effects, RandomStream stream, int number) {
        double[] causes = new double[effects[0].length];
        List<ExpectedGap> gaps = spread.gaps();
        int n = gaps.size();
        double[] own = gaps.stream().mapToDouble(ExpectedGap::independentMm).toArray();
        double[] low =
                gaps.stream().mapToDouble(g -> g.lowerMm() - g.predictedMm()).toArray();
        double[] high =
                gaps.stream().mapToDouble(g -> g.upperMm() - g.predictedMm()).toArray();
        for (int t = 0; t < number; t++) {
            int at = 0;
            for (Axis a : axes) {
                a.draw(stream, causes, at);
                at += a.dimensions();
            }
            boolean all = true;
            for (int i = 0; i < n; i++) {
                double off = own[i] > 0 ? own[i] * stream.nextNormal() : 0;
                double[] e = effects[i];
                for (int k = 0; k < e.length; k++) {
                    off += e[k] * causes[k];
                }
                all &= count(i, off, off >= low[i] && off <= high[i]);
            }
            allInside += all ? 1 : 0;
        }
        trials += number;
    }

    private boolean count(int gap, double off, boolean in) {
        sums[gap] += off;
        squares[gap] += off * off;
        inside[gap] += in ? 1 : 0;
        int step = stepMm[gap] > 0 ? (int) ((off - fromMm[gap]) / stepMm[gap]) : 0;
        counts[gap][Math.min(STEPS - 1, Math.max(0, step))]++;
        return in;
    }

    /** Adds another block to this one. */
    void add(TrialBlock other) {
        for (int i = 0; i < counts.length; i++) {
            for (int k = 0; k < STEPS; k++) {
                counts[i][k] += other.counts[i][k];
            }
            inside[i] += other.inside[i];
            sums[i] += other.sums[i];
            squares[i] += other.squares[i];
        }
        allInside += other.allInside;
        trials += other.trials;
    }

    long trials() {
        return trials;
    }

    long allInside() {
        return allInside;
    }

    long inside(int gap) {
        return inside[gap];
    }

    double meanMm(int gap) {
        return predictedMm[gap] + sums[gap] / trials;
    }

    double deviationMm(int gap) {
        double mean = sums[gap] / trials;
        return Math.sqrt(Math.max(0, squares[gap] / trials - mean * mean) * trials / (trials - 1));
    }

    /** The gap below which a part of the trials lies, straight within a step. */
    double quantileMm(int gap, double part) {
        double wanted = part * trials;
        double below = 0;
        for (int k = 0; k < STEPS; k++) {
            double here = counts[gap][k];
            if (below + here >= wanted) {
                double share = here > 0 ? (wanted - below) / here : 0;
                return predictedMm[gap] + fromMm[gap] + (k + share) * stepMm[gap];
            }
            below += here;
        }
        return predictedMm[gap] + fromMm[gap] + STEPS * stepMm[gap];
    }

    int count(int gap, int step) {
        return counts[gap][step];
    }

    double fromMm(int gap) {
        return predictedMm[gap] + fromMm[gap];
    }

    double stepMm(int gap) {
        return stepMm[gap];
    }
}
