package fayline.method.fitup.scheme;

import fayline.method.fitup.Spot;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The question how schemes compare.
 *
 * @param pivot pivot of the part's motion; the answer does not depend on it
 * @param gaps at least one
 * @param commonReadingMm standard uncertainty that all readings share; empty where not given
 * @param schemes to compare
 * @param assumed what may be assumed where an uncertainty is not given
 * @param seed of the points of the joint chance
 */
public record SchemeQuestion(
        Spot pivot,
        List<ReadGap> gaps,
        OptionalDouble commonReadingMm,
        List<Scheme> schemes,
        Set<Assumption> assumed,
        long seed) {
    /**
     * Copies the collections.
     *
     * @throws IllegalArgumentException if there are no gaps
     */
    public SchemeQuestion {
        gaps = List.copyOf(gaps);
        schemes = List.copyOf(schemes);
        assumed = Set.copyOf(assumed);
        if (gaps.isEmpty()) {
            throw new IllegalArgumentException("no gaps to judge a scheme by");
        }
    }

    /** The same question with everything assumed that may be. */
    public SchemeQuestion assumingAll() {
        return new SchemeQuestion(pivot, gaps, commonReadingMm, schemes, Set.of(Assumption.values()), seed);
    }
}
