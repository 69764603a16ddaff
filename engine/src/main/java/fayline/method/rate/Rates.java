package fayline.method.rate;

import java.util.List;
import java.util.Optional;

/**
 * What times teach.
 *
 * @param kinds each kind of work that was done, in the order of the alphabet
 * @param people each person who worked, in the order of the alphabet
 * @param scatter standard deviation of the logarithm of the ratio, of one piece of work against its kind
 * @param degreesOfFreedom of the t distribution that factors follow
 * @param counted what was learned from
 * @param leftOut times that cannot be right and teach nothing
 */
public record Rates(
        List<KindRate> kinds,
        List<PersonRate> people,
        double scatter,
        double degreesOfFreedom,
        List<BookedWork> counted,
        List<BookedWork> leftOut) {
    /** Nothing learned. */
    public static final Rates NONE = new Rates(
            List.of(), List.of(), RatePrior.USUAL.scatter(), RatePrior.USUAL.scatterWeight(), List.of(), List.of());

    /** Copies the lists. */
    public Rates {
        kinds = List.copyOf(kinds);
        people = List.copyOf(people);
        counted = List.copyOf(counted);
        leftOut = List.copyOf(leftOut);
    }

    /** What is learned of a kind. */
    public Optional<KindRate> kind(String kind) {
        return kinds.stream().filter(k -> k.kind().equals(kind)).findFirst();
    }

    /**
     * By what the recipe's time of a piece of work is to be multiplied.
     *
     * @param kind the kind of work
     * @param repeat how often this very work will have been done; from 1
     * @return the factor; 1 where nothing is learned
     */
    public double factor(String kind, int repeat) {
        return kind(kind).map(k -> k.factor(repeat)).orElse(1.0);
    }

    /**
     * A kind of work.
     *
     * @param kind the kind
     * @param works how many pieces of work
     * @param estimatedMin person-minutes by the recipes
     * @param bookedMin person-minutes that they took
     * @param factor by what the recipe's time is to be multiplied, the first time
     * @param low factor that the true one exceeds with 90 %
     * @param high factor that the true one does not exceed with 90 %
     * @param deviation standard scale of the factor's logarithm
     * @param repetition what repetition brings, where the times support it
     */
    public record KindRate(
            String kind,
            int works,
            double estimatedMin,
            double bookedMin,
            double factor,
            double low,
            double high,
            double deviation,
            Optional<Repetition> repetition) {
        /** The factor the n-th time. */
        public double factor(int repeat) {
            return factor * repetition.map(r -> Math.pow(repeat, r.exponent())).orElse(1.0);
        }
    }

    /**
     * A learning curve (Wright 1936 [wright1936], unit form): the n-th time takes n^exponent of the first.
     *
     * @param exponent negative
     * @param rate what a doubling of the count leaves, as 0.85
     * @param chance that repetition makes this kind of work faster at all
     * @param repeats pieces of work that were no first ones
     */
    public record Repetition(double exponent, double rate, double chance, int repeats) {}

    /**
     * A person against the crew.
     *
     * @param person the person
     * @param works how many pieces of work
     * @param factor above 1 takes longer than the crew as a whole
     * @param low factor that the true one exceeds with 90 %
     * @param high factor that the true one does not exceed with 90 %
     */
    public record PersonRate(String person, int works, double factor, double low, double high) {}
}
