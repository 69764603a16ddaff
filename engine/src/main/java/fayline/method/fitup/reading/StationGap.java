package fayline.method.fitup.reading;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The gap at a station from all its readings.
 *
 * @param stationId the mark
 * @param gapMm mean of the readings
 * @param spreadMm standard deviation of the readings about their mean, from two on
 * @param deviationMm standard uncertainty of the mean, without the shared part
 * @param commonMm the part of the uncertainty shared with other stations; repeats do not lessen it
 * @param count how many readings
 * @param oneSided whether the true gap can only be larger
 * @param findings what is to be said; a reading to take again among it
 */
public record StationGap(
        String stationId,
        double gapMm,
        OptionalDouble spreadMm,
        double deviationMm,
        double commonMm,
        int count,
        boolean oneSided,
        List<Finding> findings) {
    /** Copies the list. */
    public StationGap {
        findings = List.copyOf(findings);
    }

    /** The whole standard uncertainty, the shared part included, in mm. */
    public double wholeDeviationMm() {
        return Math.hypot(deviationMm, commonMm);
    }
}
