package fayline.flow.result.stock;

import fayline.basis.units.Quantity;
import fayline.flow.project.stock.Lot;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What is left of a lot, and why.
 *
 * @param lot the lot; its own quantity is what there was when it was received
 * @param left what is left now
 * @param lastDay the last day on which it may be used, by its date, its opened life or its time out of the cold
 * @param out how long it has been out of the cold, where that counts
 * @param moves what moved it, the first its opening
 */
public record LotStanding(
        Lot lot, Quantity left, Optional<LocalDate> lastDay, Optional<OutOfCold> out, List<Move> moves) {
    /** Copies the list. */
    public LotStanding {
        moves = List.copyOf(moves);
    }

    /** What moves a lot. */
    public enum Sort {
        /** What there was when it was received. */
        OPENING("received"),
        /** Drawn for a step, as booked. */
        DRAWN("drawn"),
        /** Mixed for a step, as read off the scale. */
        MIXED("mixed"),
        /** Drawn for a step of which nobody booked how much: what was computed. */
        RECKONED("reckoned"),
        /** Counted: what was found besides. */
        COUNTED("counted");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        /** In a word for pages. */
        public String words() {
            return words;
        }
    }

    /**
     * One move.
     *
     * @param at when
     * @param sort what it was
     * @param step the step that drew it, {@code made/make-number/key}, of another project {@code project/made/make-number/key}; empty
     *     for none
     * @param seq its entry in the record; 0 where there is none
     * @param change what came in, negative what went out
     * @param left what was left then
     */
    public record Move(Instant at, Sort sort, String step, long seq, Quantity change, Quantity left) {}
}
