package fayline.method.fitup.scheme;

import fayline.method.fitup.Move;
import fayline.method.uncertainty.Distribution;
import java.util.List;
import java.util.Optional;

/**
 * How a scheme lets the part be off as a whole.
 *
 * @param errors independent errors of the part's place, each with its cause
 * @param shift how the part goes on the whole, where an error is likelier one way
 * @param free a motion that nothing prevents, where there is one; then the errors are not all there is
 * @param condition how evenly the stops hold
 * @param missing what nobody has given; then the errors are not all there is
 * @param assumed what was assumed
 */
public record SchemeMotion(
        List<MoveError> errors,
        Move shift,
        Optional<Move> free,
        double condition,
        List<Missing> missing,
        List<Assumption> assumed) {
    /** Copies the lists. */
    public SchemeMotion {
        errors = List.copyOf(errors);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
    }

    /** One cause that puts the part off, about the pivot of the question. */
    public sealed interface MoveError {
        /** What it is. */
        String name();

        /** The stop it belongs to. */
        String owner();
    }

    /**
     * A cause of one number.
     *
     * @param name what it is
     * @param owner what it belongs to
     * @param spread how the number is spread about zero
     * @param perMm how the part moves for one millimetre of it
     */
    public record Along(String name, String owner, Distribution spread, Move perMm) implements MoveError {}

    /**
     * A cause of two numbers in a disc.
     *
     * @param name what it is
     * @param owner what it belongs to
     * @param radiusMm of the disc
     * @param perMmX how the part moves for one millimetre of the first
     * @param perMmY of the second
     */
    public record InDisc(String name, String owner, double radiusMm, Move perMmX, Move perMmY) implements MoveError {}
}
