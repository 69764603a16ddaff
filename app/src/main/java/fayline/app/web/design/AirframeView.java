package fayline.app.web.design;

import java.util.List;

/**
 * What Airframe shows.
 *
 * @param roots the tree
 * @param done share of hands-on time that is done, in words
 * @param note what the mass leaves out
 * @param laminates each laminate with what can be said of it
 */
public record AirframeView(List<Node> roots, String done, String note, List<Held> laminates) {
    /** Copies the lists. */
    public AirframeView {
        roots = List.copyOf(roots);
        laminates = List.copyOf(laminates);
    }

    /**
     * Whether a laminate bears what was entered.
     *
     * @param name the laminate
     * @param link its page
     * @param answer the answer in words
     * @param bad whether it is not within its allowables
     */
    public record Held(String name, String link, String answer, boolean bad) {}

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
