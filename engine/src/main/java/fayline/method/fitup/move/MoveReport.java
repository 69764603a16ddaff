package fayline.method.fitup.move;

import fayline.basis.finding.Phrase;
import fayline.method.fitup.motion.Wanted;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What there is to tell about a best move, whether in the plane or in space.
 *
 * @param status how it came out
 * @param reading what is read: "gap" where nothing else is, else "reading"
 * @param outside readings outside their limits after the move
 * @param misfits proofs that no move can do it, worst first
 * @param relaxation the least easing of minimum gaps, where they contradict each other
 * @param refused the move that was refused as too large
 * @param free what is said of each motion that no reading notices
 * @param weak the motion that is known but badly, if there is one
 * @param best the move found
 * @param suspect the reading to doubt first, where the move of least squares lies far off
 */
public record MoveReport(
        MoveStatus status,
        String reading,
        List<Outside> outside,
        List<Misfit> misfits,
        Optional<? extends Relaxation<?>> relaxation,
        Optional<Refused> refused,
        List<Phrase> free,
        Optional<Weak> weak,
        Optional<Best> best,
        Optional<Suspect> suspect) {
    /** Keeps its own copies. */
    public MoveReport {
        outside = List.copyOf(outside);
        misfits = List.copyOf(misfits);
        free = List.copyOf(free);
    }

    /**
     * A reading outside its limits.
     *
     * @param wanted what was wanted
     * @param valueMm its value after the move, along the straight lines on which the move was judged
     */
    public record Outside(Wanted wanted, double valueMm) {
        /** How far below the lower limit (negative) or above the upper one (positive), in mm. */
        public double beyondMm() {
            return wanted.beyondMm(valueMm);
        }
    }

    /**
     * A move that is too large.
     *
     * @param shiftMm how far the pivot would shift
     * @param turnRad how far the part would turn; not negative
     */
    public record Refused(double shiftMm, double turnRad) {}

    /**
     * A motion that is known but badly.
     *
     * @param meaning in plain words
     * @param growth how many mm along it one mm of error in every reading may become
     * @param standardErrorMm where uncertainties are given
     */
    public record Weak(Phrase meaning, double growth, OptionalDouble standardErrorMm) {}

    /**
     * The move of smallest worst deviation.
     *
     * @param still whether it came to rest
     * @param deciding what decides it
     * @param worstDeviation the worst deviation
     * @param playMm over how far a shift may range without losing it; nothing where it is the only one
     */
    public record Best(boolean still, List<String> deciding, double worstDeviation, double playMm) {
        /** Keeps its own copy. */
        public Best {
            deciding = List.copyOf(deciding);
        }
    }

    /**
     * A reading to doubt.
     *
     * @param apart how many standard errors the two moves lie apart
     * @param named the reading
     */
    public record Suspect(double apart, String named) {}
}
