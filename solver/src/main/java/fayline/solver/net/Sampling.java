package fayline.solver.net;

import java.util.Random;

/**
 * Orders drawn by regret [kolisch1996]: of the activities whose predecessors are all in, one is drawn, the likelier the better it
 * stands by a rule.
 */
final class Sampling {
    private final Compact net;
    private final Random random;
    private final int[][] after;
    private final int[] waits;

    /** By which rule the next activity is drawn; the smallest number is best. */
    enum Rule {
        LATEST_START,
        LATEST_FINISH,
        MOST_FOLLOWERS,
        MOST_WORK_NEXT
    }

    Sampling(Compact net, Random random) {
        this.net = net;
        this.random = random;
        waits = new int[net.n];
        int[] counts = new int[net.n];
        for (int[] l : net.lags) {
            waits[l[1]]++;
            counts[l[0]]++;
        }
        after = new int[net.n][];
        for (int i = 0; i < net.n; i++) {
            after[i] = new int[counts[i]];
        }
        for (int[] l : net.lags) {
            after[l[0]][--counts[l[0]]] = l[1];
        }
    }

    /** One order; the sharper, the closer to the rule. */
    int[] order(Rule rule, double sharpness) {
        double[] key = keys(rule);
        int[] wait = waits.clone();
        int[] ready = new int[net.n];
        int count = 0;
        for (int i = 0; i < net.n; i++) {
            if (wait[i] == 0) {
                ready[count++] = i;
            }
        }
        int[] order = new int[net.n];
        for (int x = 0; x < net.n; x++) {
            int c = drawn(ready, count, key, sharpness);
            order[x] = ready[c];
            ready[c] = ready[--count];
            for (int j : after[order[x]]) {
                if (--wait[j] == 0) {
                    ready[count++] = j;
                }
            }
        }
        return order;
    }

    private double[] keys(Rule rule) {
        double[] key = new double[net.n];
        for (int i = 0; i < net.n; i++) {
            key[i] = switch (rule) {
                case LATEST_START -> -net.tail[i];
                case LATEST_FINISH -> net.duration[i] - net.tail[i];
                case MOST_FOLLOWERS -> -followers(i);
                case MOST_WORK_NEXT -> -workNext(i);
            };
        }
        return key;
    }

    private int followers(int i) {
        int count = 0;
        for (int j = 0; j < net.n; j++) {
            count += j != i && net.distance[i][j] != Compact.NONE ? 1 : 0;
        }
        return count;
    }

    private int workNext(int i) {
        int sum = net.duration[i];
        for (int j : after[i]) {
            sum += net.duration[j];
        }
        return sum;
    }

    private int drawn(int[] ready, int count, double[] key, double sharpness) {
        double worst = Double.NEGATIVE_INFINITY;
        for (int y = 0; y < count; y++) {
            worst = Math.max(worst, key[ready[y]]);
        }
        double[] weight = new double[count];
        double sum = 0;
        for (int y = 0; y < count; y++) {
            weight[y] = Math.pow(worst - key[ready[y]] + 1, sharpness);
            sum += weight[y];
        }
        double left = random.nextDouble() * sum;
        int c = 0;
        while (c < count - 1 && left > weight[c]) {
            left -= weight[c++];
        }
        return c;
    }
}
