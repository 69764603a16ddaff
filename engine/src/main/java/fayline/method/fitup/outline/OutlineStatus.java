package fayline.method.fitup.outline;

/** Whether the edge could be drawn. */
public enum OutlineStatus {
    /** Drawn. */
    OK,
    /** The tangent lengths of two blends do not fit on the side between them. */
    BLEND_TOO_LARGE,
    /** The line crosses or touches itself, or encloses nothing. */
    SELF_CROSSING
}
