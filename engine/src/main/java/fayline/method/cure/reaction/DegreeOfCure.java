package fayline.method.cure.reaction;

import fayline.basis.units.TimeSpan;
import fayline.method.cure.GlassTransition;
import fayline.method.cure.TemperatureHistory;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The question how far a resin has reacted over a temperature history.
 *
 * @param law the rate law
 * @param history resin temperature since mixing; the resin's own heat is not added
 * @param start degree of cure at mixing, 0 to 1
 * @param times the times asked for, rising
 * @param level a degree of cure whose time is asked for
 * @param glass where given, the reaction stops when the glass transition has risen by its {@code stallAbove} over the
 *     temperature of the moment
 */
public record DegreeOfCure(
        RateLaw law,
        TemperatureHistory history,
        double start,
        List<TimeSpan> times,
        OptionalDouble level,
        Optional<GlassTransition> glass) {
    /** Copies the list. */
    public DegreeOfCure {
        times = List.copyOf(times);
    }
}
