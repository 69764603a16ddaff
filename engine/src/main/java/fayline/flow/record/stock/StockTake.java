package fayline.flow.record.stock;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * A count of what is left.
 *
 * @param seq its entry
 * @param at when
 * @param by who
 * @param counts the lots counted, each once; a lot that is not among them was not counted
 */
public record StockTake(long seq, Instant at, String by, List<Count> counts) {
    /** Copies the list. */
    public StockTake {
        counts = List.copyOf(counts);
    }

    /** What was counted of a lot, where it was. */
    public Optional<Count> of(String lot) {
        return counts.stream().filter(c -> c.lot().equals(lot)).findFirst();
    }

    /**
     * One lot counted.
     *
     * @param lot the lot
     * @param left what is left, as typed with its unit
     */
    public record Count(String lot, String left) {}
}
