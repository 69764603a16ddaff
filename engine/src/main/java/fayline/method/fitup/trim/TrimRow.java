package fayline.method.fitup.trim;

import fayline.method.fitup.FitRow;

/**
 * One station as trimming sees it.
 *
 * @param row gap, limits and edge
 * @param tributaryMm how much of its edge it speaks for
 * @param mostMm the most that may come off here; 0 where nothing may, infinite where nothing limits it
 * @param deviationMm standard uncertainty of the gap
 */
public record TrimRow(FitRow row, double tributaryMm, double mostMm, double deviationMm) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException naming the station
     */
    public TrimRow {
        if (!(tributaryMm >= 0) || Double.isInfinite(tributaryMm) || !(mostMm >= 0)) {
            throw new IllegalArgumentException("station " + row.station().id() + " speaks for " + tributaryMm
                    + " mm and may lose " + mostMm + " mm");
        }
        if (!(deviationMm >= 0) || Double.isInfinite(deviationMm)) {
            throw new IllegalArgumentException("station " + row.station().id() + " is sure to " + deviationMm + " mm");
        }
    }
}
