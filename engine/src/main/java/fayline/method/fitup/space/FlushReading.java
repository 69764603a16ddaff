package fayline.method.fitup.space;

import fayline.method.fitup.Spot;

/**
 * A flush reading on a flat part.
 *
 * @param station the mark at the bench
 * @param at where, in mm
 * @param flushMm positive where the part stands proud
 * @param nominalMm wanted
 * @param weight how much a millimetre here counts; positive
 */
public record FlushReading(String station, Spot at, double flushMm, double nominalMm, double weight) {
    /** Of weight one. */
    public static FlushReading of(String station, Spot at, double flushMm, double nominalMm) {
        return new FlushReading(station, at, flushMm, nominalMm, 1);
    }
}
