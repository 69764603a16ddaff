package fayline.flow.project.recipe;

/** Sorts of work; each has a mark of its own on the pages. */
public enum StepKind {
    SHAPE,
    RELEASE,
    COAT,
    CUT,
    LAY_UP,
    CORE,
    BAG,
    CURE,
    DEBAG,
    DEMOULD,
    TRIM,
    PREPARE,
    DRY_FIT,
    BOND,
    INSPECT,
    CLOSE_OUT,
    SYSTEM,
    WEIGH,
    RECEIVE;

    /** The word for files, as {@code lay-up}. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
