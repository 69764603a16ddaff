package fayline.method.uncertainty;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.RandomStream;
import fayline.method.uncertainty.MonteCarloResult.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Sorted values of trials, and the drawing of a block of them. */
final class Trials {
    private final double[] sorted;
    private final double mean;
    private final double deviation;

    private Trials(double[] sorted) {
        this.sorted = sorted;
        double sum = 0;
        for (double v : sorted) {
            sum += v;
        }
        this.mean = sum / sorted.length;
        double squares = 0;
        for (double v : sorted) {
            squares += (v - mean) * (v - mean);
        }
        this.deviation = Math.sqrt(squares / (sorted.length - 1));
    }

    /** Draws one block; depends on the seed and the block's number alone. */
    static Trials block(MonteCarlo question, List<Filler> fillers, int number, int size) {
        RandomStream stream = new RandomStream(question.seed(), number);
        double[] inputs = new double[question.formula().names().size()];
        double[] values = new double[size];
        for (int t = 0; t < size; t++) {
            for (Filler f : fillers) {
                f.fill(inputs, stream);
            }
            values[t] = question.formula().at(inputs);
            if (!Double.isFinite(values[t])) {
                throw new IllegalArgumentException(
                        "formula \"" + question.formula().text() + "\" has no value at " + Arrays.toString(inputs));
            }
        }
        Arrays.sort(values);
        return new Trials(values);
    }

    static Trials pooled(List<Trials> blocks) {
        double[] all = new double[blocks.stream().mapToInt(b -> b.sorted.length).sum()];
        int at = 0;
        for (Trials b : blocks) {
            System.arraycopy(b.sorted, 0, all, at, b.sorted.length);
            at += b.sorted.length;
        }
        Arrays.sort(all);
        return new Trials(all);
    }

    double mean() {
        return mean;
    }

    double deviation() {
        return deviation;
    }

    int count() {
        return sorted.length;
    }

    /** How many lie between two values, both included. */
    long inside(double low, double high) {
        return Arrays.stream(sorted).filter(v -> v >= low && v <= high).count();
    }

    private int held(double coverage) {
        return (int) Math.min(sorted.length - 1, Math.round(coverage * sorted.length));
    }

    Span symmetric(double coverage) {
        int q = held(coverage);
        int r = Math.min((sorted.length - q) / 2, sorted.length - 1 - q);
        return new Span(sorted[r], sorted[r + q]);
    }

    Span shortest(double coverage) {
        int q = held(coverage);
        int best = 0;
        for (int r = 1; r + q < sorted.length; r++) {
            if (sorted[r + q] - sorted[r] < sorted[best + q] - sorted[best]) {
                best = r;
            }
        }
        return new Span(sorted[best], sorted[best + q]);
    }

    /** Puts one drawing of some inputs in their places. */
    @FunctionalInterface
    interface Filler {
        void fill(double[] inputs, RandomStream stream);
    }

    static List<Filler> fillers(List<Draw> draws) {
        List<Filler> all = new ArrayList<>();
        int at = 0;
        for (Draw d : draws) {
            all.add(filler(d, at));
            at += d.names().size();
        }
        return all;
    }

    private static Filler filler(Draw draw, int at) {
        if (draw instanceof Draw.Single s) {
            Distribution d = s.distribution();
            return (x, stream) -> x[at] = d.draw(stream);
        }
        if (draw instanceof Draw.Disc d) {
            return (x, stream) -> {
                double radius = d.radius() * Math.sqrt(stream.nextUnit());
                double turn = 2 * Math.PI * stream.nextUnit();
                x[at] = d.meanX() + radius * StrictMath.cos(turn);
                x[at + 1] = d.meanY() + radius * StrictMath.sin(turn);
            };
        }
        Draw.Correlated c = (Draw.Correlated) draw;
        DenseMatrix factor = c.factor();
        double[][] f = factor.toRows();
        double[] means = c.means().stream().mapToDouble(Double::doubleValue).toArray();
        return (x, stream) -> {
            System.arraycopy(means, 0, x, at, means.length);
            for (int k = 0; k < factor.cols(); k++) {
                double z = stream.nextNormal();
                for (int i = 0; i < means.length; i++) {
                    x[at + i] += f[i][k] * z;
                }
            }
        };
    }
}
