package fayline.method.fitup.motion;

import fayline.basis.finding.Phrase;
import fayline.method.fitup.Move;
import java.util.List;
import java.util.Optional;

/**
 * Which motions the stations can know.
 *
 * @param rank how many of the three motions are known
 * @param singularValues of the rows with the turn brought to a shift, largest first
 * @param scaleLengthMm the length that did so
 * @param free the motions that no station notices
 * @param weak the motion that is known but badly, if there is one
 * @param minimumNorm the least move that brings the gaps nearest to nominal, without weights and limits
 * @param minimumNormSumSquares the sum of squares it leaves, in mm²
 */
public record Determinacy(
        int rank,
        List<Double> singularValues,
        double scaleLengthMm,
        List<FreeMotion> free,
        Optional<WeakMotion> weak,
        Move minimumNorm,
        double minimumNormSumSquares) {
    /** Keeps its own copies. */
    public Determinacy {
        singularValues = List.copyOf(singularValues);
        free = List.copyOf(free);
    }

    /** Whether every motion is known. */
    public boolean determined() {
        return free.isEmpty();
    }

    /**
     * A motion that changes no gap.
     *
     * @param direction as a move about the pivot: a shift of 1 mm or a turn of 1 degree
     * @param meaning in plain words
     */
    public record FreeMotion(Move direction, Phrase meaning) {}

    /**
     * A motion that hardly changes the gaps.
     *
     * @param direction as a move about the pivot: a shift of 1 mm or a turn of 1 degree
     * @param meaning in plain words
     * @param ratio smallest over largest singular value
     * @param growth how many mm along it one mm of error in every reading may become (root of sum of squares)
     */
    public record WeakMotion(Move direction, Phrase meaning, double ratio, double growth) {}
}
