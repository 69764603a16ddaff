package fayline.flow.result.series;

import java.util.OptionalDouble;

/** What a series is of. */
public enum SeriesSort {
    /** Vacuum lost in a minute of a leak-down test, in Pa. */
    LEAK,
    /** Mass of a part as made over the computed one, less one; a ratio. */
    MASS_OVER_COMPUTED,
    /** Mass of a part over its target, less one; a ratio. */
    MASS_OVER_TARGET,
    /** What of a part as made is neither cloth nor core, over the whole by mass; a ratio. */
    RESIN,
    /** A gap as bonded less the one foretold, in mm. */
    GAP_ERROR;

    /** The least value that can be, in the same unit; empty where there is none. */
    public OptionalDouble least() {
        return switch (this) {
            case LEAK, RESIN -> OptionalDouble.of(0);
            case MASS_OVER_COMPUTED, MASS_OVER_TARGET -> OptionalDouble.of(-1);
            case GAP_ERROR -> OptionalDouble.empty();
        };
    }
}
