package fayline.app.web.orders;

import java.util.List;

/**
 * One order.
 *
 * @param refused why a form was not taken
 * @param id its name
 * @param facts what is known
 * @param revision the drawing's revision; empty where none is named
 * @param features what is measured when it comes
 * @param arrivals what came
 * @param opens steps that wait for it, in words and addresses
 * @param open whether it is still open
 */
public record OrderView(
        List<String> refused,
        String id,
        List<Fact> facts,
        String revision,
        List<Feature> features,
        List<Arrival> arrivals,
        List<Link> opens,
        boolean open) {
    /** Copies the lists. */
    public OrderView {
        refused = List.copyOf(refused);
        facts = List.copyOf(facts);
        features = List.copyOf(features);
        arrivals = List.copyOf(arrivals);
        opens = List.copyOf(opens);
    }

    /** A name and a value. */
    public record Fact(String name, String value) {}

    /** Words that lead somewhere. */
    public record Link(String words, String address) {}

    /** A measure of the drawing, and what was typed of it. */
    public record Feature(int number, String name, String drawn, String typed) {}

    /**
     * What came.
     *
     * @param when when and by whom
     * @param verdict accepted or sent back
     * @param good whether it was accepted
     * @param note why
     * @param says measures against the drawing
     */
    public record Arrival(String when, String verdict, boolean good, String note, List<String> says) {
        /** Copies the list. */
        public Arrival {
            says = List.copyOf(says);
        }
    }
}
