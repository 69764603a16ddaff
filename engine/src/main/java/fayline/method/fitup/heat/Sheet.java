package fayline.method.fitup.heat;

/** What the part is, as far as cautions depend on it. */
public enum Sheet {
    /** Nothing to be said. */
    OTHER,
    /** Clear acrylic: swells with moisture, cracks when cut cold. */
    ACRYLIC,
    /** Dark acrylic: gets hotter in the sun besides. */
    DARK_ACRYLIC;

    /** Whether it is acrylic. */
    public boolean isAcrylic() {
        return this != OTHER;
    }
}
