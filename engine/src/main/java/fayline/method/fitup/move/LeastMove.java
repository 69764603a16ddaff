package fayline.method.fitup.move;

import java.util.List;
import java.util.Optional;

/**
 * The smallest move that brings every gap inside its limits.
 *
 * @param status OK; NO_FIT where no move does; INFEASIBLE where minimum gaps contradict each other; MOVE_TOO_LARGE
 * @param move the move; empty unless OK
 * @param normMm its size, the turn brought to a shift by the scale length; not a number unless OK
 * @param scaleLengthMm root mean square distance of the stations from the pivot
 * @param gapsMm gaps after it, in space all readings; empty unless OK
 * @param <M> the kind of move
 */
public record LeastMove<M>(
        MoveStatus status, Optional<M> move, double normMm, double scaleLengthMm, List<Double> gapsMm) {
    /** Keeps its own copies. */
    public LeastMove {
        gapsMm = List.copyOf(gapsMm);
    }
}
