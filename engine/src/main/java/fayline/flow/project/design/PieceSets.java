package fayline.flow.project.design;

import java.util.Optional;

/**
 * Like pieces that are made in sets. What the part states is for one piece.
 *
 * @param pieces how many
 * @param mark what stands before a piece's number, as {@code B}
 * @param least how many are worth a set
 * @param most how many may be in one
 * @param limit what limits a set
 * @param why the limit in words, for the lead
 * @param inTurn whether a set waits for the one before it
 * @param as the part whose sets these follow, made with what that part makes; its count, mark and limits hold then
 */
public record PieceSets(
        int pieces, String mark, int least, int most, Limit limit, String why, boolean inTurn, Optional<String> as) {
    /** What limits a set. */
    public enum Limit {
        /** A stand with shelves, as a warm box. */
        SHELVES,
        /** What is mixed in one pot serves the whole set. */
        ONE_POT,
        /** Something else, told in words. */
        OTHER
    }
}
