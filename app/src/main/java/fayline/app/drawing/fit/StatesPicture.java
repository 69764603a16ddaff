package fayline.app.drawing.fit;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The gaps of a fit over its states, as they are drawn.
 *
 * @param title what it shows, for those who cannot see it
 * @param states the states in their order, those read first
 * @param stations the stations, each with a gap for every state
 */
public record StatesPicture(String title, List<State> states, List<Row> stations) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a station has not as many gaps as there are states
     */
    public StatesPicture {
        states = List.copyOf(states);
        stations = List.copyOf(stations);
        for (Row r : stations) {
            if (r.gapsMm().size() != states.size()) {
                throw new IllegalArgumentException(
                        "station " + r.id() + " has " + r.gapsMm().size() + " gaps for " + states.size() + " states");
            }
        }
    }

    /**
     * A state.
     *
     * @param name its name
     * @param foretold whether its gaps are foretold, not read
     */
    public record State(String name, boolean foretold) {}

    /**
     * A station.
     *
     * @param id its mark
     * @param lowerMm least gap allowed in the end
     * @param nominalMm gap wanted in the end
     * @param upperMm largest gap allowed in the end
     * @param gapsMm the gap in each state; empty where it is not known
     * @param lastRead the gap read last, in the reader's units
     * @param last the gap foretold for the last state, in the reader's units; empty where none is
     */
    public record Row(
            String id,
            double lowerMm,
            double nominalMm,
            double upperMm,
            List<OptionalDouble> gapsMm,
            String lastRead,
            String last) {
        /** Copies the list. */
        public Row {
            gapsMm = List.copyOf(gapsMm);
        }

        boolean isOutside(int state) {
            OptionalDouble gap = gapsMm.get(state);
            return gap.isPresent() && (gap.getAsDouble() < lowerMm - 1e-9 || gap.getAsDouble() > upperMm + 1e-9);
        }
    }
}
