package fayline.method.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * Single readings in the order in which they were taken, with limits from the ranges between neighbours [nist-handbook], section
 * 6.3.2.2: the mean moving range over 1.128 estimates the spread that the work has from one piece to the next, and readings
 * further than three of those from the mean have a cause of their own. The ranges themselves are judged by 3.267 times their
 * mean. Fewer than some twenty readings make limits that will still move.
 *
 * @param values the readings, at least 2, in any unit
 * @param centre their mean, same unit
 * @param ranges distances of neighbours, one fewer
 * @param meanRange their mean
 */
public record IndividualsChart(List<Double> values, double centre, List<Double> ranges, double meanRange) {
    /** Mean range of two, as the handbook and tables of the trade round it. */
    private static final double D2_OF_TWO = 1.128;

    /** Upper limit of ranges of two over their mean. */
    private static final double UPPER_OF_TWO = 3.267;

    private static final double LIMIT_SIGMAS = 3;

    /** Copies the lists. */
    public IndividualsChart {
        values = List.copyOf(values);
        ranges = List.copyOf(ranges);
    }

    /**
     * The chart of readings.
     *
     * @param values at least 2
     * @throws IllegalArgumentException if there are fewer
     */
    public static IndividualsChart of(List<Double> values) {
        if (values.size() < 2) {
            throw new IllegalArgumentException("found " + values.size() + " readings, expected at least 2");
        }
        List<Double> ranges = new ArrayList<>();
        for (int i = 1; i < values.size(); i++) {
            ranges.add(Math.abs(values.get(i) - values.get(i - 1)));
        }
        return new IndividualsChart(values, mean(values), ranges, mean(ranges));
    }

    private static double mean(List<Double> all) {
        return all.stream().mapToDouble(Double::doubleValue).sum() / all.size();
    }

    /** The spread from one piece to the next, one standard deviation. */
    public double sigma() {
        return meanRange / D2_OF_TWO;
    }

    /** Upper limit of readings. */
    public double upper() {
        return centre + LIMIT_SIGMAS * sigma();
    }

    /** Lower limit of readings. */
    public double lower() {
        return centre - LIMIT_SIGMAS * sigma();
    }

    /** Upper limit of ranges; their lower one is 0. */
    public double upperRange() {
        return UPPER_OF_TWO * meanRange;
    }

    /** Places, from 0, of readings beyond a limit. */
    public List<Integer> beyond() {
        return MovingAverageChart.beyond(values, lower(), upper());
    }
}
