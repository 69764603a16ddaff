package fayline.flow.result.series;

import fayline.method.chart.IndividualsChart;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Values of one sort in the order in which they were measured, with limits where there are enough of them. Limits from fewer than
 * {@link #LEAST} values are not told, those from fewer than {@link #FIRM} are told as such that still move (common practice, no source;
 * the formulas are those of {@link IndividualsChart}).
 *
 * @param sort what it is of
 * @param group what it is grouped by, as a locating scheme; empty for one of all
 * @param points the values, the earliest first
 * @param chart mean and limits; empty where there are too few values
 */
public record Series(SeriesSort sort, String group, List<SeriesPoint> points, Optional<IndividualsChart> chart) {
    /** Values from which limits are told. */
    public static final int LEAST = 8;

    /** Values from which limits hardly move. */
    public static final int FIRM = 20;

    /** Copies the list. */
    public Series {
        points = List.copyOf(points);
    }

    /**
     * A series of values in any order.
     *
     * @param sort what it is of
     * @param group what it is grouped by; empty for one of all
     * @param points the values
     */
    public static Series of(SeriesSort sort, String group, List<SeriesPoint> points) {
        List<SeriesPoint> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.comparing(SeriesPoint::at));
        return new Series(
                sort,
                group,
                sorted,
                sorted.size() < LEAST
                        ? Optional.empty()
                        : Optional.of(IndividualsChart.of(
                                sorted.stream().map(SeriesPoint::value).toList())));
    }

    /** How many values are missing for limits; nothing where they are told. */
    public int missing() {
        return Math.max(0, LEAST - points.size());
    }

    /** Whether the limits may be trusted to stay. */
    public boolean firm() {
        return points.size() >= FIRM;
    }

    /**
     * The lower limit: the chart's, or the least value that can be where the chart's lies below that.
     *
     * @return in the unit of the sort; empty where no limits are told
     */
    public OptionalDouble lower() {
        return chart.map(c -> OptionalDouble.of(Math.max(c.lower(), sort.least().orElse(Double.NEGATIVE_INFINITY))))
                .orElse(OptionalDouble.empty());
    }

    /** Whether the chart's own lower limit lies where no value can be, so that nothing can be too low. */
    public boolean nothingTooLow() {
        return chart.filter(c -> c.lower() < sort.least().orElse(Double.NEGATIVE_INFINITY))
                .isPresent();
    }

    /** The values beyond a limit; none where no limits are told. */
    public List<SeriesPoint> beyond() {
        return chart.map(c -> c.beyond().stream().map(points::get).toList()).orElse(List.of());
    }
}
