package fayline.app.web.design;

import java.util.List;

/**
 * What Airframe shows.
 *
 * @param roots the tree
 * @param done share of hands-on time that is done, in words
 * @param note what the mass leaves out
 */
public record AirframeView(List<Node> roots, String done, String note) {
    /** Copies the list. */
    public AirframeView {
        roots = List.copyOf(roots);
    }

    /**
     * A node.
     *
     * @param name the name
     * @param link its page; empty for assemblies
     * @param kind {@code assembly}, {@code part} or {@code joint}
     * @param hand left or right; empty for neither
     * @param state how far it is, in words
     * @param mark the state's mark
     * @param percent share of hands-on time that is done
     * @param mass mass against target, in words
     * @param bar the same drawn; empty where there is no target
     * @param below what it is made of
     */
    public record Node(
            String name,
            String link,
            String kind,
            String hand,
            String state,
            fayline.app.drawing.Mark mark,
            int percent,
            String mass,
            String bar,
            List<Node> below) {
        /** Copies the list. */
        public Node {
            below = List.copyOf(below);
        }
    }
}
