package fayline.method.fitup.chain.correct;

import fayline.basis.finding.Finding;
import fayline.method.fitup.Move;
import java.util.List;
import java.util.Optional;

/**
 * Where a correction can go.
 *
 * @param ways each open link alone, the last one first; then all open links together; each with and without the neighbours that
 *     can move
 * @param chosen the way to take: the first of the list that brings every gap inside; where none does, the one of least largest
 *     deviation
 * @param findings what must be said
 */
public record CorrectionResult(List<Way> ways, Optional<Way> chosen, List<Finding> findings) {
    /** Copies the lists. */
    public CorrectionResult {
        ways = List.copyOf(ways);
        findings = List.copyOf(findings);
    }

    /**
     * One way.
     *
     * @param name what moves, in words
     * @param moves what moves by how much; a link's move is told in its own frame about its own pivot, a neighbour's in the
     *     final frame
     * @param gapsMm the gaps that it reaches, in order
     * @param worstStation the station of largest weighted deviation from nominal
     * @param worstGapMm the gap there
     * @param worstDeviation the weighted deviation there
     * @param outside stations that stay outside their limits
     */
    public record Way(
            String name,
            List<Part> moves,
            List<Double> gapsMm,
            String worstStation,
            double worstGapMm,
            double worstDeviation,
            List<String> outside) {
        /** Copies the lists. */
        public Way {
            moves = List.copyOf(moves);
            gapsMm = List.copyOf(gapsMm);
            outside = List.copyOf(outside);
        }

        /** Whether every gap comes inside. */
        public boolean fits() {
            return outside.isEmpty();
        }
    }

    /**
     * One thing that moves.
     *
     * @param name the link or the neighbour
     * @param move by how much
     */
    public record Part(String name, Move move) {}
}
