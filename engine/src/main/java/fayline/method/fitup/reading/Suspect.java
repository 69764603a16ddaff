package fayline.method.fitup.reading;

import fayline.basis.finding.Phrase;

/**
 * A reading to take again. It still counts until it is.
 *
 * @param stationId where
 * @param flush whether it is the flush there, else the gap
 * @param against what it does not agree with
 * @param offMm how much more it reads than expected; negative for less
 * @param limitMm from where on it is suspect
 * @param sentence what to tell the builder
 */
public record Suspect(String stationId, boolean flush, Against against, double offMm, double limitMm, Phrase sentence) {
    /** What a reading does not agree with. */
    public enum Against {
        /** The stations beside it on the same edge. */
        NEIGHBOURS,
        /** All other stations, after the best move of the part as a whole. */
        BEST_FIT
    }
}
