package fayline.method.fitup.move;

import java.util.List;
import java.util.Optional;

/**
 * The move that leaves every gap farthest inside its limits; among equals the least.
 *
 * @param status OK where the margin is not negative, NO_FIT where it is, INFEASIBLE, MOVE_TOO_LARGE
 * @param marginMm the smallest distance to a limit; negative: by how much it fails; not a number without a move
 * @param move the move; empty where INFEASIBLE or MOVE_TOO_LARGE
 * @param gapsMm gaps after it, in space all readings; empty without a move
 * @param deciding the stations that decide it
 * @param <M> the kind of move
 */
public record MarginMove<M>(
        MoveStatus status, double marginMm, Optional<M> move, List<Double> gapsMm, List<String> deciding) {
    /** Keeps its own copies. */
    public MarginMove {
        gapsMm = List.copyOf(gapsMm);
        deciding = List.copyOf(deciding);
    }
}
