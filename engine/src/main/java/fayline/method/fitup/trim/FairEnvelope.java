package fayline.method.fitup.trim;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * The least value at every station that is nowhere below what the stations ask and changes from one to the next by no more than
 * its pair allows. A station asks for a straight line in the move, c + a · q, or a floor where that is more; so every value is the
 * largest of straight lines: its own, or another station's less the slopes on the way there. Of all fair values that are large
 * enough it is the least at every station at once, since of two such the smaller at each station is one again.
 */
final class FairEnvelope {
    private final double[][] slope;
    private final double[] level;
    private final double[] floor;
    private final List<Pair> pairs;
    private final List<Pair> backward;

    /**
     * Two stations side by side.
     *
     * @param one place of the one
     * @param other place of the other
     * @param most how far their values may lie apart
     */
    record Pair(int one, int other, double most) {}

    FairEnvelope(double[][] slope, double[] level, double[] floor, List<Pair> pairs) {
        this.slope = slope;
        this.level = level;
        this.floor = floor;
        // In the order round the part two passes do: one there, one back.
        this.pairs = pairs.stream()
                .map(p -> new Pair(Math.min(p.one, p.other), Math.max(p.one, p.other), p.most))
                .sorted(Comparator.comparingInt(Pair::one).thenComparingInt(Pair::other))
                .toList();
        backward = new ArrayList<>(this.pairs);
        Collections.reverse(backward);
    }

    /** The values at a move. */
    At at(double[] q) {
        return new At(q);
    }

    /** Values at one move, each with the straight line that it lies on. */
    final class At {
        private final double[] value = new double[level.length];
        private final int[] from = new int[level.length];
        private final double[] less = new double[level.length];
        private final boolean[] onFloor = new boolean[level.length];

        private At(double[] q) {
            for (int i = 0; i < value.length; i++) {
                double line = level[i];
                for (int k = 0; k < q.length; k++) {
                    line += slope[i][k] * q[k];
                }
                onFloor[i] = floor[i] >= line;
                value[i] = Math.max(line, floor[i]);
                from[i] = i;
            }
            boolean raised = true;
            while (raised) {
                raised = pass(pairs);
                raised |= pass(backward);
            }
        }

        private boolean pass(List<Pair> way) {
            boolean raised = false;
            for (Pair p : way) {
                raised |= raise(p.one, p.other, p.most) || raise(p.other, p.one, p.most);
            }
            return raised;
        }

        private boolean raise(int by, int what, double most) {
            if (!(value[by] - most > value[what])) {
                return false;
            }
            value[what] = value[by] - most;
            from[what] = from[by];
            less[what] = less[by] + most;
            return true;
        }

        double value(int i) {
            return value[i];
        }

        double[] values() {
            return value.clone();
        }

        /** How the value's straight line rises with the move. */
        double[] slope(int i) {
            return onFloor[from[i]] ? new double[slope[i].length] : slope[from[i]].clone();
        }

        /** The value's straight line at no move. */
        double level(int i) {
            return (onFloor[from[i]] ? floor[from[i]] : level[from[i]]) - less[i];
        }

        /** The sum of weight times what is above zero, as a straight line: its slopes, then its level. */
        double[] sumAbove(double[] weight) {
            double[] line = new double[slope[0].length + 1];
            for (int i = 0; i < value.length; i++) {
                if (value[i] > 0 && weight[i] > 0) {
                    if (!onFloor[from[i]]) {
                        for (int k = 0; k + 1 < line.length; k++) {
                            line[k] += weight[i] * slope[from[i]][k];
                        }
                    }
                    line[line.length - 1] += weight[i] * level(i);
                }
            }
            return line;
        }

        /** The place of the largest value less another number at each station. */
        int worst(double[] other) {
            int worst = 0;
            for (int i = 1; i < value.length; i++) {
                if (value[i] - other[i] > value[worst] - other[worst]) {
                    worst = i;
                }
            }
            return worst;
        }
    }
}
