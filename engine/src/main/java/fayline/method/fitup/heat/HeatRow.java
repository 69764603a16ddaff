package fayline.method.fitup.heat;

import fayline.method.fitup.Station;
import java.util.OptionalDouble;

/**
 * One station whose gap was read.
 *
 * @param station where
 * @param gapMm the gap as read
 * @param nominalMm the gap wanted at the reference temperature
 * @param heightMm how high the part's face stands here over the anchor along z, where the flush is asked
 */
public record HeatRow(Station station, double gapMm, double nominalMm, OptionalDouble heightMm) {
    /** Refuses what is no number. */
    public HeatRow {
        if (!Double.isFinite(gapMm) || !Double.isFinite(nominalMm)) {
            throw new IllegalArgumentException(
                    "station " + station.id() + " has no gap: " + gapMm + " of " + nominalMm);
        }
    }

    /** A row whose flush is not asked. */
    public static HeatRow of(Station station, double gapMm, double nominalMm) {
        return new HeatRow(station, gapMm, nominalMm, OptionalDouble.empty());
    }
}
