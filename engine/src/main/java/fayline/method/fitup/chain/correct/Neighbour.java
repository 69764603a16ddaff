package fayline.method.fitup.chain.correct;

import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;

/**
 * A neighbour that can still be moved.
 *
 * @param name as stations call what lies opposite
 * @param pivot pivot of its moves, in the final frame
 * @param room how far it can go, in the final frame
 */
public record Neighbour(String name, Spot pivot, MoveLimits room) {}
