package fayline.method.forecast;

import java.util.List;

/**
 * The question that {@link PaceForecastCalculator} answers.
 *
 * @param totalH estimated hours of all work, finished work included; positive
 * @param finished finished work, estimated against booked
 * @param monthsH hours really worked in each whole month so far, the first month leading
 * @param plannedPerMonthH hours a month as planned; positive
 * @param changes what the pace of coming months is multiplied by, where somebody said so; by month from now, 0 is the next
 *     month, and the last goes on
 * @param seed of the draws
 */
public record PaceForecast(
        double totalH,
        List<Finished> finished,
        List<Double> monthsH,
        double plannedPerMonthH,
        List<Double> changes,
        long seed) {
    /** Copies the lists and checks the numbers. */
    public PaceForecast {
        finished = List.copyOf(finished);
        monthsH = List.copyOf(monthsH);
        changes = List.copyOf(changes);
        if (!(totalH > 0) || !(plannedPerMonthH > 0)) {
            throw new IllegalArgumentException(
                    totalH + " h in all, " + plannedPerMonthH + " h a month planned; both must be positive");
        }
        if (monthsH.stream().anyMatch(h -> !(h >= 0)) || changes.stream().anyMatch(c -> !(c > 0))) {
            throw new IllegalArgumentException(
                    "hours of a month must not be negative, changes of pace must be positive");
        }
    }

    /**
     * Finished work.
     *
     * @param estimatedH hours by the estimate; positive
     * @param bookedH hours booked; positive
     */
    public record Finished(double estimatedH, double bookedH) {
        /** Checks the numbers. */
        public Finished {
            if (!(estimatedH > 0) || !(bookedH > 0)) {
                throw new IllegalArgumentException(
                        estimatedH + " h estimated, " + bookedH + " h booked; both must be positive");
            }
        }
    }
}
