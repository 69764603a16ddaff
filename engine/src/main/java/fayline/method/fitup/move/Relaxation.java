package fayline.method.fitup.move;

import java.util.List;

/**
 * The least total by which minimum gaps must be eased for some move within its limits to hold them.
 *
 * @param status OK where nothing must be eased, else INFEASIBLE
 * @param totalMm the sum of all easings
 * @param shares which stations carry it at the move; another move may share the same total otherwise
 * @param move a move that needs no more
 * @param <M> the kind of move
 */
public record Relaxation<M>(MoveStatus status, double totalMm, List<Share> shares, M move) {
    /** Keeps its own copies. */
    public Relaxation {
        shares = List.copyOf(shares);
    }

    /**
     * One minimum gap that is eased.
     *
     * @param station its id; in space with "flush" behind it where it is one
     * @param easedMm by how much
     */
    public record Share(String station, double easedMm) {}
}
