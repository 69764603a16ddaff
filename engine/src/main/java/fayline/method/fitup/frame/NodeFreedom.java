package fayline.method.fitup.frame;

/**
 * One freedom of one node: where a support holds, a clamp acts or somebody watches.
 *
 * @param node counted from 0
 * @param freedom which way
 */
public record NodeFreedom(int node, Freedom freedom) {
    /** Refuses a node below 0. */
    public NodeFreedom {
        if (node < 0) {
            throw new IllegalArgumentException("node " + node + ": nodes are counted from 0");
        }
    }

    /** In words, as {@code node 3 ux}. */
    public String words() {
        return words(NodeNames.NUMBERED);
    }

    /** The same with names for node and freedom. */
    public String words(NodeNames names) {
        return names.node(node) + " " + names.freedom(freedom);
    }
}
