package fayline.method.fitup.scheme;

import fayline.method.fitup.Station;
import java.util.OptionalDouble;

/**
 * A gap as it is expected after the move, from a reading.
 *
 * @param station where
 * @param predictedMm expected gap
 * @param lowerMm least allowed
 * @param upperMm most allowed
 * @param readingMm standard uncertainty of the reading, apart from what all readings share; empty where not given
 */
public record ReadGap(Station station, double predictedMm, double lowerMm, double upperMm, OptionalDouble readingMm) {}
