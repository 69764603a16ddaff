package fayline.method.fitup.trim;

/** What the builder would rather spare. */
public enum TrimGoal {
    /** Least area first; of equal areas the fewest edges. */
    LEAST_AREA,
    /** Fewest edges first; of equally many the least area. */
    FEWEST_EDGES
}
