package fayline.method.fitup.trim;

/** Whether trimming makes it fit. */
public enum TrimStatus {
    /** It fits after the move and the cuts. */
    OK,
    /** No allowed cut makes it fit. */
    INFEASIBLE,
    /** It fits, but only more than 10 mm or 2 degrees from where it lies: set it right and read again. */
    MOVE_TOO_LARGE
}
