package fayline.flow.record.stock;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Something ordered: a part made outside, or material. Texts are as typed.
 *
 * @param seq its entry
 * @param at when it was placed
 * @param by who placed it
 * @param project the project it is for; empty for the shop's stores
 * @param id its name, or that of a delivery of the definition
 * @param what the part, material or system by id, or in words
 * @param quantity how much
 * @param maker who makes or delivers it
 * @param drawing the drawing it is made to; may be empty
 * @param revision that drawing's revision; may be empty
 * @param due the promised day, as {@code 2026-03-02}
 * @param price what it costs in all, in the project's currency; may be empty
 * @param needed the parts, joints or steps that wait for it
 * @param features what is measured when it comes
 * @param arrivals what came, in order
 */
public record Order(
        long seq,
        Instant at,
        String by,
        String project,
        String id,
        String what,
        String quantity,
        String maker,
        String drawing,
        String revision,
        String due,
        String price,
        List<String> needed,
        List<Feature> features,
        List<Arrival> arrivals) {
    /** Copies the lists. */
    public Order {
        needed = List.copyOf(needed);
        features = List.copyOf(features);
        arrivals = List.copyOf(arrivals);
    }

    /** The arrival that was accepted, where one was. */
    public Optional<Arrival> accepted() {
        return arrivals.stream().filter(Arrival::accepted).findFirst();
    }

    /**
     * One measure of the drawing.
     *
     * @param name what is measured
     * @param drawn what the drawing says, with its unit
     * @param within how far it may be off either way, with its unit
     */
    public record Feature(String name, String drawn, String within) {}

    /**
     * What came.
     *
     * @param seq its entry
     * @param at when
     * @param by who received it
     * @param revision the revision that stands on what came; may be empty
     * @param measured what was measured
     * @param accepted whether it was accepted; otherwise it goes back
     * @param note why, or what else was seen; may be empty
     * @param due where it goes back, when the next one is promised; may be empty
     */
    public record Arrival(
            long seq,
            Instant at,
            String by,
            String revision,
            List<Measured> measured,
            boolean accepted,
            String note,
            String due) {
        /** Copies the list. */
        public Arrival {
            measured = List.copyOf(measured);
        }
    }

    /**
     * One measure as found.
     *
     * @param name what was measured
     * @param found the reading as typed
     */
    public record Measured(String name, String found) {}
}
