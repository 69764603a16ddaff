package fayline.method.fitup.reading;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.WantedLines;
import fayline.method.fitup.space.SpaceReading;
import fayline.method.fitup.space.SpaceRows;
import java.util.List;

/**
 * The readings to look through.
 *
 * @param rows in the order of the outline; rows of one edge stand together
 * @param deviationsMm standard uncertainty of each reading, and of each flush behind them
 * @param flushes flushes of a curved part, which must agree with the same move; none for a flat one
 * @param curved whether the part is curved, so that every motion counts
 */
public record SuspectReadings(
        List<FitRow> rows, List<Double> deviationsMm, List<SpaceReading> flushes, boolean curved) {
    /** The gaps of a flat part. */
    public SuspectReadings(List<FitRow> rows, List<Double> deviationsMm) {
        this(rows, deviationsMm, List.of(), false);
    }

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is not one deviation of 0 or more per row
     */
    public SuspectReadings {
        rows = List.copyOf(rows);
        deviationsMm = List.copyOf(deviationsMm);
        flushes = List.copyOf(flushes);
        int readings = rows.size() + flushes.size();
        if (readings != deviationsMm.size()) {
            throw new IllegalArgumentException(deviationsMm.size() + " deviations for " + readings + " readings");
        }
        for (double u : deviationsMm) {
            if (!(u >= 0) || Double.isInfinite(u)) {
                throw new IllegalArgumentException("a deviation of " + u + " mm");
            }
        }
    }

    /** The readings as straight lines in a move of the part. */
    WantedLines<?, ?> lines() {
        List<Station> stations = rows.stream().map(FitRow::station).toList();
        return curved
                ? SpaceRows.of(rows, flushes, Station.middleInSpace(stations))
                : MoveRows.of(rows, Station.middle(stations));
    }
}
