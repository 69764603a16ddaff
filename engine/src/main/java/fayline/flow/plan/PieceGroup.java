package fayline.flow.plan;

import java.util.List;

/**
 * Like pieces that are made in sets.
 *
 * @param id the group: {@code project/part}
 * @param name what they are
 * @param pieces how many; they are numbered from 1
 * @param least how many are worth a set
 * @param most how many may be in one
 * @param why what limits a set, in words
 * @param sets the sets, of which each makes some pieces
 * @param limits what holds how many
 */
public record PieceGroup(
        String id, String name, int pieces, int least, int most, String why, List<PieceSet> sets, List<Limit> limits) {
    /** Copies the lists. */
    public PieceGroup {
        sets = List.copyOf(sets);
        limits = List.copyOf(limits);
    }

    /** The project that they are of; empty where the id names none. */
    public String project() {
        return id.substring(0, Math.max(0, id.indexOf('/')));
    }

    /**
     * Pieces that are made together.
     *
     * @param made what makes them, as in {@link WorkStep#made}
     * @param from number of the first piece
     * @param to number of the last one, included
     */
    public record PieceSet(String made, int from, int to) {
        /** How many pieces. */
        public int size() {
            return to - from + 1;
        }
    }

    /**
     * How many pieces fit.
     *
     * @param place the stand that holds so many; empty for one pot of a mix, wherever it is used
     * @param most how many
     */
    public record Limit(String place, int most) {}
}
