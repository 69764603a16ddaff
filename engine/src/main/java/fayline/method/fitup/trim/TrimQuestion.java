package fayline.method.fitup.trim;

import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.space.PartQuestion;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What to take off so that the part fits.
 *
 * @param rows at least one, ids differ
 * @param pairs stations side by side; ids of rows
 * @param pivot pivot of the move
 * @param limits how far the part may be moved
 * @param rules what may be cut
 * @param curved of a curved part the question where it must sit, whose gaps are those of the rows; empty for a flat one
 */
public record TrimQuestion(
        List<TrimRow> rows,
        List<NeighbourPair> pairs,
        Spot pivot,
        MoveLimits limits,
        TrimRules rules,
        Optional<PartQuestion> curved) {
    /**
     * A flat part.
     *
     * @throws IllegalArgumentException if there is no row, an id stands twice, or a pair names no row
     */
    public TrimQuestion(List<TrimRow> rows, List<NeighbourPair> pairs, Spot pivot, MoveLimits limits, TrimRules rules) {
        this(rows, pairs, pivot, limits, rules, Optional.empty());
    }

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is no row, an id stands twice, or a pair names no row
     */
    public TrimQuestion {
        rows = List.copyOf(rows);
        pairs = List.copyOf(pairs);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no stations to trim at");
        }
        Set<String> ids = new HashSet<>();
        for (TrimRow r : rows) {
            if (!ids.add(r.row().station().id())) {
                throw new IllegalArgumentException(
                        "station " + r.row().station().id() + " stands twice");
            }
        }
        for (NeighbourPair p : pairs) {
            if (!ids.contains(p.one()) || !ids.contains(p.other())) {
                throw new IllegalArgumentException("no such pair of stations: " + p.one() + " and " + p.other());
            }
        }
    }

    /** The gaps of a flat part as straight-line functions of the move. */
    MoveRows moving() {
        return MoveRows.of(rows.stream().map(TrimRow::row).toList(), pivot);
    }

    /** The same question with every edge free to cut to any depth. */
    TrimQuestion unbounded() {
        List<TrimRow> free = rows.stream()
                .map(r -> new TrimRow(r.row(), r.tributaryMm(), Double.POSITIVE_INFINITY, r.deviationMm()))
                .toList();
        List<String> all = rows.stream().map(r -> r.row().edge()).distinct().toList();
        return new TrimQuestion(
                free, pairs, pivot, limits, new TrimRules(all, rules.slope(), rules.guard(), rules.goal()), curved);
    }
}
