package fayline.method.plate;

/** How the edge of a plate is held. */
public enum Edges {
    /** Held against moving out of its plane, free to turn. */
    SUPPORTED("supported"),
    /** Held against moving and turning. */
    CLAMPED("clamped"),
    /** Somewhere between the two, as in a real frame: every figure is the worse of both. */
    BETWEEN("between");

    private final String words;

    Edges(String words) {
        this.words = words;
    }

    /** As it is written. */
    public String words() {
        return words;
    }
}
