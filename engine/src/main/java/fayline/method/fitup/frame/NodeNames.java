package fayline.method.fitup.frame;

/** What nodes and their freedoms are called in sentences. */
public interface NodeNames {
    /** By number and symbol, as {@code node 3} and {@code ux}. */
    NodeNames NUMBERED = new NodeNames() {
        @Override
        public String node(int node) {
            return "node " + node;
        }

        @Override
        public String freedom(Freedom freedom) {
            return freedom.symbol();
        }
    };

    /**
     * A node.
     *
     * @param node counted from 0
     */
    String node(int node);

    /** A freedom. */
    String freedom(Freedom freedom);
}
