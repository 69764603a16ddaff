package fayline.method.fitup.reading;

import fayline.method.fitup.FitRow;
import java.util.List;

/**
 * The readings to look through.
 *
 * @param rows in the order of the outline; rows of one edge stand together
 * @param deviationsMm standard uncertainty of each reading
 */
public record SuspectReadings(List<FitRow> rows, List<Double> deviationsMm) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is not one deviation of 0 or more per row
     */
    public SuspectReadings {
        rows = List.copyOf(rows);
        deviationsMm = List.copyOf(deviationsMm);
        if (rows.size() != deviationsMm.size()) {
            throw new IllegalArgumentException(deviationsMm.size() + " deviations for " + rows.size() + " readings");
        }
        for (double u : deviationsMm) {
            if (!(u >= 0) || Double.isInfinite(u)) {
                throw new IllegalArgumentException("a deviation of " + u + " mm");
            }
        }
    }
}
