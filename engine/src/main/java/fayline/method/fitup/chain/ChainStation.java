package fayline.method.fitup.chain;

import fayline.method.fitup.FitRow;
import java.util.OptionalDouble;

/**
 * A gap that the chain ends in, in the final frame.
 *
 * @param row gap, limits and place; the gap is what is expected with every link where it is meant to be
 * @param on the part whose edge it is
 * @param against what lies opposite: a carrier of the chain, or a neighbour that stands on the last carrier
 * @param readingMm standard uncertainty of the gap's reading, apart from what readings share; empty where not given
 */
public record ChainStation(FitRow row, String on, String against, OptionalDouble readingMm) {
    /** The station's mark. */
    public String id() {
        return row.station().id();
    }

    /** The same station with another gap. */
    public ChainStation withGap(double gapMm) {
        return new ChainStation(row.withGap(gapMm), on, against, readingMm);
    }
}
