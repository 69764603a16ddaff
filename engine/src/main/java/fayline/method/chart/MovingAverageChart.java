package fayline.method.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A moving average in which older readings count less and less [nist-handbook], section 6.3.2.4: z = w x + (1 - w) z before it,
 * beginning at the target. It sees a slow drift that no single reading shows. The limits are those it has after many readings.
 *
 * @param averages the average after each reading
 * @param lower lower limit
 * @param upper upper limit
 */
public record MovingAverageChart(List<Double> averages, double lower, double upper) {
    /** Copies the list. */
    public MovingAverageChart {
        averages = List.copyOf(averages);
    }

    /**
     * The chart of readings.
     *
     * @param values the readings in order, in any unit
     * @param weight of the newest reading, above 0 and at most 1; 0.2 to 0.3 is usual
     * @param target where the average begins and its limits lie around, same unit
     * @param sigma standard deviation of readings, same unit, above 0
     * @param width distance of the limits in standard deviations of the average, above 0; 3 is usual
     * @throws IllegalArgumentException if weight, sigma or width is out of range
     */
    public static MovingAverageChart of(List<Double> values, double weight, double target, double sigma, double width) {
        if (!(weight > 0 && weight <= 1)) {
            throw new IllegalArgumentException("weight " + weight + ", expected above 0 and at most 1");
        }
        if (!(sigma > 0) || !(width > 0)) {
            throw new IllegalArgumentException("sigma " + sigma + " and width " + width + ", expected above 0");
        }
        List<Double> averages = new ArrayList<>();
        double now = target;
        for (double v : values) {
            now = weight * v + (1 - weight) * now;
            averages.add(now);
        }
        double half = width * sigma * Math.sqrt(weight / (2 - weight));
        return new MovingAverageChart(averages, target - half, target + half);
    }

    /** Places, from 0, of averages beyond a limit. */
    public List<Integer> beyond() {
        return beyond(averages, lower, upper);
    }

    static List<Integer> beyond(List<Double> values, double lower, double upper) {
        return IntStream.range(0, values.size())
                .filter(i -> values.get(i) < lower || values.get(i) > upper)
                .boxed()
                .toList();
    }
}
