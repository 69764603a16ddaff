package fayline.method.laminate.strength;

import fayline.method.laminate.Laminate;
import java.util.List;
import java.util.Optional;

/**
 * When the first ply fails.
 *
 * @param laminate the stack
 * @param first the failure that comes first; empty if forces and moments never make any ply fail
 * @param together plies that fail at the same load, the first included, counted from 0
 * @param byPly the failure of each ply that would come first in it, in the order of the plies; without those that never fail
 */
public record FirstPlyResult(
        Laminate laminate, Optional<PlyFailure> first, List<Integer> together, List<PlyFailure> byPly) {
    /** Copies the lists. */
    public FirstPlyResult {
        together = List.copyOf(together);
        byPly = List.copyOf(byPly);
    }
}
