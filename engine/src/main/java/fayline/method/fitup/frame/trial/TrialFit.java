package fayline.method.fitup.frame.trial;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The question to which bare width a frame is set so that it has the wanted width with its sheet on.
 *
 * @param trials at least one, in the order in which they were made
 * @param wantedMm width wanted with the sheet bonded
 * @param toleranceMm how far off it may be; positive
 * @param readingMm standard uncertainty of one width; not negative
 * @param follow by how much the clamped width follows the bare width, per millimetre, where it is known from a like frame or
 *     from its stiffness: frame/(frame + sheet)
 */
public record TrialFit(
        List<Trial> trials, double wantedMm, double toleranceMm, double readingMm, OptionalDouble follow) {
    /**
     * Copies the list and checks the ranges.
     *
     * @throws IllegalArgumentException naming the value
     */
    public TrialFit {
        trials = List.copyOf(trials);
        if (trials.isEmpty()) {
            throw new IllegalArgumentException("at least one trial is needed");
        }
        if (!(wantedMm > 0) || !(toleranceMm > 0) || !(readingMm >= 0) || !Double.isFinite(wantedMm + readingMm)) {
            throw new IllegalArgumentException("wanted " + wantedMm + " mm, tolerance " + toleranceMm
                    + " mm, uncertainty of a reading " + readingMm + " mm");
        }
        if (follow.isPresent() && !(follow.getAsDouble() > 0 && follow.getAsDouble() <= 1)) {
            throw new IllegalArgumentException(
                    "the clamped width follows by more than 0 and at most 1, found " + follow.getAsDouble());
        }
    }
}
