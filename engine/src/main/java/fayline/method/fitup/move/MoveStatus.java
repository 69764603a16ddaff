package fayline.method.fitup.move;

/** How the search for a move came out. */
public enum MoveStatus {
    /** Every station ends inside its limits. */
    OK,
    /** What must hold can be held, but stations stay outside their limits. */
    NO_FIT,
    /** What must hold contradicts itself: no move within the limits keeps all minimum gaps. */
    INFEASIBLE,
    /** The stations do not know every motion, and a move was asked for only if they do. */
    UNDETERMINED_MOVE,
    /** The part lies so far off that small motions no longer describe it: read it again where it belongs. */
    MOVE_TOO_LARGE
}
