package fayline.store.file.picture;

/** A picture that is not taken: what was found, what is taken, and what can be done. */
public final class PictureRefusedException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String found;
    private final String expected;
    private final String remedy;

    PictureRefusedException(String found, String expected, String remedy) {
        super("found " + found + ", expected " + expected);
        this.found = found;
        this.expected = expected;
        this.remedy = remedy;
    }

    /** What was found. */
    public String found() {
        return found;
    }

    /** What is taken. */
    public String expected() {
        return expected;
    }

    /** What can be done; empty where nothing can be said. */
    public String remedy() {
        return remedy;
    }
}
