package fayline.method.fitup.reading;

import java.util.List;

/**
 * Everything read at one station in one state of the fit.
 *
 * @param stationId the mark
 * @param readings at least one, in the order taken
 * @param commonMm standard uncertainty that all readings of this hand share
 */
public record StationReadings(String stationId, List<GaugeReading> readings, double commonMm) {
    /** What feeler readings of one hand share where nothing is stated, in mm (common practice, no source). */
    public static final double COMMON_MM = 0.05;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no reading, or the shared part is negative
     */
    public StationReadings {
        readings = List.copyOf(readings);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("station " + stationId + " has no reading");
        }
        if (!(commonMm >= 0) || Double.isInfinite(commonMm)) {
            throw new IllegalArgumentException("station " + stationId + " shares an error of " + commonMm + " mm");
        }
    }
}
