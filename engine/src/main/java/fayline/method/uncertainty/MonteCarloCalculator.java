package fayline.method.uncertainty;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.method.uncertainty.MonteCarloResult.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Draws blocks of trials until mean, standard deviation and interval ends stand still to the digits asked, after the adaptive
 * procedure of [jcgm101], clause 7.9: a block is at least 10 000 trials and at least 100 beyond the interval; with h blocks,
 * two standard errors over the blocks must be below half a unit of the last digit of the standard uncertainty, for all four.
 * One digit needs three blocks, since two may agree by luck. Blocks are drawn side by side, each from a stream of its own, and
 * judged in order: the answer does not depend on how many threads there are.
 */
public final class MonteCarloCalculator {
    private static final int LEAST_BLOCK = 10_000;
    private static final double BEYOND = 100;
    private static final int MOST_BLOCKS = 200;
    private static final int MOST_TRIALS = 10_000_000;
    private static final int AT_ONCE = 4;
    private static final double CHANCE_STANDS = 0.005;

    private MonteCarloCalculator() {}

    /**
     * Draws and sums up.
     *
     * @throws IllegalArgumentException if the formula has no value at a trial
     */
    public static MonteCarloResult calculate(MonteCarlo question) {
        int size = (int) Math.max(LEAST_BLOCK, Math.ceil(BEYOND / (1 - question.coverage())));
        int most = Math.min(MOST_BLOCKS, MOST_TRIALS / size);
        List<Trials.Filler> fillers = Trials.fillers(question.inputs());
        int least = question.significantDigits() == 1 ? 3 : 2;
        List<Trials> drawn = new ArrayList<>();
        int blocks = 0;
        boolean settled = false;
        while (!settled && blocks < most) {
            int from = drawn.size();
            int to = Math.min(most, from + (from == 0 ? least : AT_ONCE));
            drawn.addAll(IntStream.range(from, to)
                    .parallel()
                    .mapToObj(b -> Trials.block(question, fillers, b, size))
                    .toList());
            for (blocks = Math.max(least, from + 1); blocks < to; blocks++) {
                if (settled(question, drawn.subList(0, blocks))) {
                    break;
                }
            }
            settled = settled(question, drawn.subList(0, blocks));
        }
        return result(question, drawn.subList(0, blocks), settled);
    }

    private static MonteCarloResult result(MonteCarlo question, List<Trials> blocks, boolean settled) {
        Trials all = Trials.pooled(blocks);
        List<Finding> findings = new ArrayList<>();
        if (!settled) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "trials",
                    String.format(
                            Locale.ROOT,
                            "After %d trials the figures still move in the digits asked: ask for fewer digits.",
                            all.count()),
                    "[jcgm101] 7.9"));
        }
        Optional<Chance> inside = hasLimits(question)
                ? Optional.of(Chance.counted(inside(question, all), all.count(), question.seed()))
                : Optional.empty();
        if (inside.isPresent() && inside.get().isAll()) {
            findings.add(new Finding(
                    Severity.NOTE,
                    "chance",
                    String.format(
                            Locale.ROOT,
                            "No trial fell outside; %d trials can only show that the chance is %s.",
                            all.count(),
                            inside.get().text()),
                    "common practice, no source"));
        }
        return new MonteCarloResult(
                all.mean(),
                all.deviation(),
                all.symmetric(question.coverage()),
                all.shortest(question.coverage()),
                inside,
                blocks.size(),
                all.count(),
                question.seed(),
                settled,
                findings);
    }

    private static boolean hasLimits(MonteCarlo q) {
        return q.lower().isPresent() || q.upper().isPresent();
    }

    private static long inside(MonteCarlo q, Trials t) {
        return t.inside(q.lower().orElse(Double.NEGATIVE_INFINITY), q.upper().orElse(Double.POSITIVE_INFINITY));
    }

    private static boolean settled(MonteCarlo q, List<Trials> blocks) {
        double u = Math.sqrt(blocks.stream()
                .mapToDouble(b -> b.deviation() * b.deviation())
                .average()
                .orElse(0));
        if (u == 0) {
            return true;
        }
        double allowed = halfDigit(u, q.significantDigits());
        List<Span> spans = blocks.stream()
                .map(b -> q.interval() == MonteCarlo.Interval.SYMMETRIC
                        ? b.symmetric(q.coverage())
                        : b.shortest(q.coverage()))
                .toList();
        boolean still = twiceError(blocks, Trials::mean) < allowed
                && twiceError(blocks, Trials::deviation) < allowed
                && twiceError(spans, Span::low) < allowed
                && twiceError(spans, Span::high) < allowed;
        if (still && hasLimits(q)) {
            long n = blocks.stream().mapToLong(Trials::count).sum();
            long in = blocks.stream().mapToLong(b -> inside(q, b)).sum();
            return 2 * Chance.counted(in, n, q.seed()).standardError() < CHANCE_STANDS;
        }
        return still;
    }

    private static <T> double twiceError(List<T> blocks, ToDoubleFunction<T> figure) {
        double mean = blocks.stream().mapToDouble(figure).average().orElse(0);
        double squares = 0;
        for (T b : blocks) {
            double off = figure.applyAsDouble(b) - mean;
            squares += off * off;
        }
        int h = blocks.size();
        return 2 * Math.sqrt(squares / (h - 1) / h);
    }

    /** Half a unit of the last of the digits with which a number is written: 2.0 gives 0.05, 0.13 gives 0.005. */
    static double halfDigit(double u, int digits) {
        int power = (int) Math.floor(Math.log10(u)) - digits + 1;
        if (Math.rint(u / Math.pow(10, power)) >= Math.pow(10, digits)) {
            power++;
        }
        return Math.pow(10, power) / 2;
    }
}
