package fayline.flow.project.design;

/** Which hand a part is. */
public enum Hand {
    /** Left, seen from the pilot's seat looking forward. */
    LEFT,
    /** Right, seen from the pilot's seat looking forward. */
    RIGHT,
    /** Neither. */
    NONE;

    /** The word for files, as {@code left}. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** The other hand; {@link #NONE} has none. */
    public Hand opposite() {
        return switch (this) {
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case NONE -> NONE;
        };
    }
}
