package fayline.method.laminate.optimum;

/**
 * How plies may be stacked; every stack is symmetric.
 *
 * @param mostPlies how many plies at most, 1 to 40
 * @param balanced whether each ply turned one way has one of its kind turned the other way
 * @param mostTogether how many plies of one direction may lie on each other, the middle included; at least 1
 * @param oddMiddle whether one ply may lie in the middle by itself
 */
public record StackRules(int mostPlies, boolean balanced, int mostTogether, boolean oddMiddle) {
    private static final int MOST = 40;

    /**
     * Refuses rules that no stack keeps.
     *
     * @throws IllegalArgumentException if a number is outside
     */
    public StackRules {
        if (mostPlies < 1 || mostPlies > MOST) {
            throw new IllegalArgumentException("most plies: found " + mostPlies + ", expected 1 to " + MOST);
        }
        if (mostTogether < 1) {
            throw new IllegalArgumentException("most together: found " + mostTogether + ", expected 1 or more");
        }
    }
}
