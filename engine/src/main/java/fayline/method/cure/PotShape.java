package fayline.method.cure;

/** How a mixed mass stands: a shallow tray gives off its heat and lives longer than a cup. */
public enum PotShape {
    /** A cup or pot, about as deep as wide. */
    CUP,
    /** A shallow tray, a few millimetres deep. */
    TRAY
}
