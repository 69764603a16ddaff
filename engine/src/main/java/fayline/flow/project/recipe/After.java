package fayline.flow.project.recipe;

import java.util.List;
import java.util.Optional;

/**
 * What a step waits for within its recipe, with a window that opens and may shut.
 *
 * @param step key of the earlier step
 * @param from from which moment of the earlier step the window counts
 * @param opens when the window opens; at once where nothing is said
 * @param shuts when it shuts; never where nothing is said
 * @param miss what a missed window costs; a window without it is hard and may not be missed
 */
public record After(String step, Moment from, Optional<Alone> opens, Optional<Alone> shuts, Optional<Miss> miss) {

    /** Moments of a step. */
    public enum Moment {
        /** When the hands begin. */
        START,
        /** When the hands leave. */
        HANDS_END,
        /** When the unattended time is over. */
        END
    }

    /**
     * The price of a missed window.
     *
     * @param does what must be done instead
     * @param hands extra person-minutes
     */
    public record Miss(String does, List<HandsRate> hands) {
        /** Copies the list. */
        public Miss {
            hands = List.copyOf(hands);
        }
    }
}
