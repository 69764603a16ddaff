package fayline.flow.record;

/**
 * What of the state an entry touches.
 *
 * @param what the sort of thing
 * @param scope the project of a file, empty for the shop's
 * @param key path, step, or sequence number
 */
public record Touched(What what, String scope, String key) {
    /** Nothing that is kept by key. */
    static final Touched NOTHING = new Touched(What.NOTHING, "", "");

    static Touched file(String scope, String path) {
        return new Touched(What.FILE, scope, path);
    }

    static Touched step(String step) {
        return new Touched(What.STEP, "", step);
    }

    static Touched reading(long seq) {
        return new Touched(What.READING, "", Long.toString(seq));
    }

    static Touched conflict(long seq) {
        return new Touched(What.CONFLICT, "", Long.toString(seq));
    }

    /** Sorts of things. */
    public enum What {
        NOTHING,
        FILE,
        STEP,
        /** All steps whose ids begin with the key. */
        STEPS,
        READING,
        CONFLICT
    }
}
