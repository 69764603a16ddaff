package fayline.method.fitup.shim;

/** What is wrong with the index points. */
public enum ShimFlag {
    /** They leave a motion free. */
    INDEX_UNDETERMINED,
    /** They hold, but small errors of the shims become large ones of the part: condition number above 50. */
    POOR_INDEXING,
    /** A stop stands where the part must go; it must be relieved. */
    STOP_IN_THE_WAY
}
