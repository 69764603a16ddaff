package fayline.method.uncertainty;

import fayline.method.uncertainty.ToleranceStack.Dimension;
import java.util.List;

/**
 * A linear stack of toleranced dimensions: worst case, root sum of squares, and the latter inflated by
 * 1 + (worst - rss) / (2 rss (root n - 1)), all about the middle of each tolerance [scholz1995].
 */
public final class ToleranceStackCalculator {
    private ToleranceStackCalculator() {}

    /** Adds the stack up. */
    public static ToleranceStackResult calculate(ToleranceStack stack) {
        List<Dimension> all = stack.dimensions();
        double nominal = 0;
        double mean = 0;
        double worst = 0;
        double squares = 0;
        for (Dimension d : all) {
            nominal += d.sensitivity() * d.nominal();
            mean += d.sensitivity() * (d.nominal() + d.shift());
            worst += d.half();
            squares += d.half() * d.half();
        }
        double rss = Math.sqrt(squares);
        double total = squares;
        List<Double> shares = all.stream()
                .map(d -> total > 0 ? d.half() * d.half() / total : 0.0)
                .toList();
        return new ToleranceStackResult(
                nominal, mean, worst, rss, rss * inflation(worst, rss, all.size()), mean - worst, mean + worst, shares);
    }

    private static double inflation(double worst, double rss, int n) {
        return n < 2 || rss == 0 ? 1 : 1 + (worst - rss) / (2 * rss * (Math.sqrt(n) - 1));
    }
}
