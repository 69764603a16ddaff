package fayline.method.forecast;

import fayline.basis.numeric.RandomStream;
import fayline.method.forecast.PaceForecast.Finished;
import fayline.method.forecast.PaceForecastResult.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Forecasts from history. The rate factor is the ratio of summed booked to summed estimated hours, with the standard error of a
 * ratio estimate (Cochran 1977 [cochran1977], 6.4, samples small against the population); the pace is the mean of the months.
 * Both are drawn from normal distributions, the factor on a logarithmic scale so that it stays positive, months to come with
 * their own scatter beside the uncertainty of the mean; what is left is worked off month by month.
 */
public final class PaceForecastCalculator {
    /** Fewer finished works say nothing about the spread of the factor. */
    public static final int LEAST_WORKS = 3;

    private static final int DRAWS = 20_000;
    /** A month yields at least this share of the mean pace: otherwise a draw might never end. */
    private static final double LEAST_SHARE = 0.05;
    /** A century: beyond it nobody counts. */
    private static final int MOST_MONTHS = 1200;

    private PaceForecastCalculator() {}

    /**
     * Forecasts.
     *
     * @param q the question
     * @throws IllegalArgumentException if nothing is finished or no hour was worked yet: then history says nothing
     */
    public static PaceForecastResult calculate(PaceForecast q) {
        double estimated =
                q.finished().stream().mapToDouble(Finished::estimatedH).sum();
        double booked = q.finished().stream().mapToDouble(Finished::bookedH).sum();
        double worked = q.monthsH().stream().mapToDouble(h -> h).sum();
        if (!(estimated > 0) || !(worked > 0)) {
            throw new IllegalArgumentException(
                    "nothing is finished or no whole month was worked; history says nothing yet");
        }
        int so = q.monthsH().size();
        double factor = booked / estimated;
        double left = Math.max(0, q.totalH() - estimated);
        double pace = worked / so;
        Optional<Double> factorError = ratioError(q.finished(), factor, estimated);
        Optional<Double> scatter = deviation(q.monthsH(), pace);
        List<String> missing = new ArrayList<>();
        if (factorError.isEmpty()) {
            missing.add("at least " + LEAST_WORKS + " finished pieces of work for the spread of the rate factor, found "
                    + q.finished().size());
        }
        if (scatter.isEmpty()) {
            missing.add("at least 2 whole months for the spread of the pace, found " + so);
        }
        Path path = new Path(q, so);
        Optional<Spread> spread = factorError.isEmpty() || scatter.isEmpty()
                ? Optional.empty()
                : Optional.of(path.spread(left, factor, factorError.get(), pace, scatter.get()));
        return new PaceForecastResult(
                factor,
                factorError,
                pace,
                scatter,
                booked + factor * left,
                factor * left,
                path.months(factor * left, pace),
                estimated / pace + path.months(left, pace) - so,
                (booked + factor * left) / q.plannedPerMonthH(),
                q.totalH() / q.plannedPerMonthH(),
                spread,
                missing);
    }

    private static Optional<Double> ratioError(List<Finished> works, double factor, double estimated) {
        int n = works.size();
        if (n < LEAST_WORKS) {
            return Optional.empty();
        }
        double sum = 0;
        for (Finished w : works) {
            double off = w.bookedH() - factor * w.estimatedH();
            sum += off * off;
        }
        return Optional.of(Math.sqrt(n * sum / (n - 1)) / estimated);
    }

    private static Optional<Double> deviation(List<Double> values, double mean) {
        if (values.size() < 2) {
            return Optional.empty();
        }
        double sum = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
        return Optional.of(Math.sqrt(sum / (values.size() - 1)));
    }

    /** Works hours off, month by month. */
    private static final class Path {
        private final PaceForecast q;
        private final int so;

        Path(PaceForecast q, int so) {
            this.q = q;
            this.so = so;
        }

        private double change(int month) {
            return q.changes().isEmpty()
                    ? 1
                    : q.changes().get(Math.min(month, q.changes().size() - 1));
        }

        /** Months in all until the hours are worked off at a steady pace. */
        double months(double hours, double pace) {
            double left = hours;
            int month = 0;
            while (month < MOST_MONTHS && left > pace * change(month)) {
                left -= pace * change(month);
                month++;
            }
            return so + month + left / (pace * change(month));
        }

        private double drawn(double hours, double mean, double scatter, RandomStream chance, double pace) {
            double left = hours;
            for (int month = 0; month < MOST_MONTHS; month++) {
                double done = Math.max(LEAST_SHARE * pace, mean + scatter * chance.nextNormal()) * change(month);
                if (left <= done) {
                    return so + month + left / done;
                }
                left -= done;
            }
            return so + MOST_MONTHS;
        }

        Spread spread(double left, double factor, double factorError, double pace, double scatter) {
            double[] both = new double[DRAWS];
            double[] rates = new double[DRAWS];
            double[] paces = new double[DRAWS];
            double logError = factorError / factor;
            for (int i = 0; i < DRAWS; i++) {
                RandomStream chance = new RandomStream(q.seed(), i);
                double f = factor * Math.exp(logError * chance.nextNormal());
                double mean = Math.max(LEAST_SHARE * pace, pace + scatter / Math.sqrt(so) * chance.nextNormal());
                both[i] = drawn(f * left, mean, scatter, chance, pace);
                rates[i] = months(f * left, pace);
                paces[i] = drawn(factor * left, mean, scatter, chance, pace);
            }
            Arrays.sort(both);
            Arrays.sort(rates);
            Arrays.sort(paces);
            return new Spread(
                    at(both, 0.1), at(both, 0.5), at(both, 0.8), at(both, 0.9), at(rates, 0.8), at(paces, 0.8));
        }

        private static double at(double[] sorted, double share) {
            return sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
        }
    }
}
