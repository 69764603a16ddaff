package fayline.method.fitup.frame.spring;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A watched shift after release.
 *
 * @param watch what was asked
 * @param shiftMm off nominal after release (rad for a turn)
 * @param stdMm its standard deviation, where the covariance of the deviations is known
 * @param shares one for each clamp, in order
 */
public record Watched(Watch watch, double shiftMm, OptionalDouble stdMm, List<Share> shares) {
    /** Copies the list. */
    public Watched {
        shares = List.copyOf(shares);
    }

    /** The clamp whose deviation does most; the first of equals. */
    public Share most() {
        return shares.stream()
                .max(Comparator.comparingDouble(s -> Math.abs(s.shareMm())))
                .orElseThrow();
    }
}
