package fayline.method.fitup.scheme;

import fayline.method.fitup.Spot;
import fayline.method.fitup.odds.GapSource;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The question how schemes compare.
 *
 * @param pivot pivot of the part's motion; the answer does not depend on it
 * @param gaps at least one
 * @param commonReadingMm standard uncertainty that all readings share; empty where not given
 * @param later states to come, whose doubt adds to every gap
 * @param besides causes that act on all gaps at once whatever holds the part, as a thermometer does
 * @param schemes to compare
 * @param assumed what may be assumed where an uncertainty is not given
 * @param seed of the points of the joint chance
 */
public record SchemeQuestion(
        Spot pivot,
        List<ReadGap> gaps,
        OptionalDouble commonReadingMm,
        List<LaterDoubt> later,
        List<GapSource> besides,
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
        later = List.copyOf(later);
        besides = List.copyOf(besides);
        schemes = List.copyOf(schemes);
        assumed = Set.copyOf(assumed);
        if (gaps.isEmpty()) {
            throw new IllegalArgumentException("no gaps to judge a scheme by");
        }
    }

    /** Readings alone: no states to come, nothing besides. */
    public SchemeQuestion(
            Spot pivot,
            List<ReadGap> gaps,
            OptionalDouble commonReadingMm,
            List<Scheme> schemes,
            Set<Assumption> assumed,
            long seed) {
        this(pivot, gaps, commonReadingMm, List.of(), List.of(), schemes, assumed, seed);
    }

    /** The same question with everything assumed that may be. */
    public SchemeQuestion assumingAll() {
        return new SchemeQuestion(
                pivot, gaps, commonReadingMm, later, besides, schemes, Set.of(Assumption.values()), seed);
    }
}
