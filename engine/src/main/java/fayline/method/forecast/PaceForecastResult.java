package fayline.method.forecast;

import java.util.List;
import java.util.Optional;

/**
 * What history says about the end, each cause apart and then joined.
 *
 * @param rateFactor booked over estimated hours of finished work
 * @param rateDeviation its standard error; empty for fewer than {@value PaceForecastCalculator#LEAST_WORKS} finished works
 * @param paceH hours a month, mean of the months so far
 * @param paceDeviationH standard deviation of one month about it; empty for fewer than two months
 * @param totalH hours in all at the rate factor
 * @param remainingH hours to go at the rate factor
 * @param months months in all, at factor and pace as they stand; those so far included
 * @param monthsIfEstimatesHeld the same with the real pace, had the estimates been right
 * @param monthsIfPaceHeld the same with the real rates, had the planned pace been kept
 * @param monthsPlanned the same as planned: estimates right, planned pace
 * @param spread months in all with their uncertainty; empty where one is not known
 * @param missing what the spread is missing, in sentences; empty where it is there
 */
public record PaceForecastResult(
        double rateFactor,
        Optional<Double> rateDeviation,
        double paceH,
        Optional<Double> paceDeviationH,
        double totalH,
        double remainingH,
        double months,
        double monthsIfEstimatesHeld,
        double monthsIfPaceHeld,
        double monthsPlanned,
        Optional<Spread> spread,
        List<String> missing) {
    /** Copies the list. */
    public PaceForecastResult {
        missing = List.copyOf(missing);
    }

    /**
     * Months in all that are not exceeded with a probability.
     *
     * @param p10 with 10 %
     * @param p50 with 50 %
     * @param p80 with 80 %
     * @param p90 with 90 %
     * @param p80Rates with 80 %, were the pace sure
     * @param p80Pace with 80 %, were the rates sure
     */
    public record Spread(double p10, double p50, double p80, double p90, double p80Rates, double p80Pace) {}
}
