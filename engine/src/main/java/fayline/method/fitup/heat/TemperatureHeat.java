package fayline.method.fitup.heat;

import java.util.List;

/**
 * The gaps at one temperature.
 *
 * @param degC the temperature
 * @param gapsMm one for each station, in order
 * @param minimumMm the smallest
 * @param maximumMm the largest
 * @param belowMinimum ids of the stations whose gap is below the least allowed
 */
public record TemperatureHeat(
        double degC, List<Double> gapsMm, double minimumMm, double maximumMm, List<String> belowMinimum) {
    /** Copies the lists. */
    public TemperatureHeat {
        gapsMm = List.copyOf(gapsMm);
        belowMinimum = List.copyOf(belowMinimum);
    }
}
