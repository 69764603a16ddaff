package fayline.method.fitup.frame.trial;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The straight line through trials, clamped width against bare width: through two exactly, through more by least squares.
 * Uncertainties to first order in every reading [jcgm100].
 */
final class TrialLine {
    private static final double STEP_MM = 1e-4;

    private final double[] readings;
    private final double readingMm;

    /**
     * Takes the readings.
     *
     * @param trials at least two
     * @param readingMm standard uncertainty of one width
     */
    TrialLine(List<Trial> trials, double readingMm) {
        this.readings = trials.stream()
                .flatMap(t -> List.of(t.bareMm(), t.clampedMm()).stream())
                .mapToDouble(Double::doubleValue)
                .toArray();
        this.readingMm = readingMm;
    }

    /** The slope; not finite where all bare widths are equal. */
    double follow() {
        return follow(readings);
    }

    /** The bare width at which the line has a clamped width. */
    double bareFor(double clampedMm) {
        return bareFor(readings, clampedMm);
    }

    /** Standard uncertainty of the slope. */
    double followStd() {
        return std(TrialLine::follow);
    }

    /** Standard uncertainty of {@link #bareFor(double)}. */
    double bareStd(double clampedMm) {
        return std(r -> bareFor(r, clampedMm));
    }

    /** Standard uncertainty of the clamped width where the bare width is set exactly to a value. */
    double clampedStd(double bareMm) {
        return std(r -> mean(r, 1) + follow(r) * (bareMm - mean(r, 0)));
    }

    /** The farthest clamped reading off the line, where more than two trials were made. */
    OptionalDouble worstOffMm() {
        if (readings.length <= 4) {
            return OptionalDouble.empty();
        }
        double worst = 0;
        for (int k = 0; k < readings.length; k += 2) {
            double line = mean(readings, 1) + follow() * (readings[k] - mean(readings, 0));
            worst = Math.max(worst, Math.abs(readings[k + 1] - line));
        }
        return OptionalDouble.of(worst);
    }

    private double std(ToDoubleFunction<double[]> of) {
        double sum = 0;
        for (int k = 0; k < readings.length; k++) {
            double[] up = readings.clone();
            double[] down = readings.clone();
            up[k] += STEP_MM;
            down[k] -= STEP_MM;
            double slope = (of.applyAsDouble(up) - of.applyAsDouble(down)) / (2 * STEP_MM);
            sum += slope * slope;
        }
        return Math.sqrt(sum) * readingMm;
    }

    private static double mean(double[] r, int from) {
        double sum = 0;
        for (int k = from; k < r.length; k += 2) {
            sum += r[k];
        }
        return sum * 2 / r.length;
    }

    private static double follow(double[] r) {
        double bare = mean(r, 0);
        double clamped = mean(r, 1);
        double across = 0;
        double square = 0;
        for (int k = 0; k < r.length; k += 2) {
            across += (r[k] - bare) * (r[k + 1] - clamped);
            square += (r[k] - bare) * (r[k] - bare);
        }
        return across / square;
    }

    private static double bareFor(double[] r, double clampedMm) {
        return mean(r, 0) + (clampedMm - mean(r, 1)) / follow(r);
    }
}
