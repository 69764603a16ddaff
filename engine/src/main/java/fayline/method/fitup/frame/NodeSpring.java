package fayline.method.fitup.frame;

/**
 * A spring that resists the difference of one freedom between two nodes.
 *
 * @param a one node
 * @param b the other
 * @param freedom which way, along the axes of the frame
 * @param stiffness N/mm, or N mm/rad for a turn; not negative
 */
public record NodeSpring(int a, int b, Freedom freedom, double stiffness) {
    /** Refuses a negative stiffness and a spring from a node to itself. */
    public NodeSpring {
        if (!(stiffness >= 0) || Double.isInfinite(stiffness)) {
            throw new IllegalArgumentException("a spring's stiffness is zero or more, found " + stiffness);
        }
        if (a == b) {
            throw new IllegalArgumentException("a spring joins two nodes, found " + a + " twice");
        }
    }
}
