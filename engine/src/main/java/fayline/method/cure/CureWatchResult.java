package fayline.method.cure;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * When each state is reached, and why.
 *
 * @param arrivals one per state that the sheet knows, in the order of {@link CureState}
 * @param findings what must be said
 */
public record CureWatchResult(List<Arrival> arrivals, List<Finding> findings) {
    /** Copies the lists. */
    public CureWatchResult {
        arrivals = List.copyOf(arrivals);
        findings = List.copyOf(findings);
    }

    /** The arrival at a state; empty where the sheet says nothing of it. */
    public Optional<Arrival> at(CureState state) {
        return arrivals.stream().filter(a -> a.state() == state).findFirst();
    }

    /**
     * The arrival at one state.
     *
     * @param state the state
     * @param law the law behind it
     * @param probe the probe that rules: the coldest where the state permits something, the hottest where it ends something
     * @param age equivalent age now, at the law's reference temperature, at the ruling probe
     * @param reachedAt time since mixing at which it is or will be reached
     * @param reached whether it is reached now
     * @param remaining time from now, zero when reached
     * @param figure how it comes about
     */
    public record Arrival(
            CureState state,
            CureLaw law,
            String probe,
            TimeSpan age,
            TimeSpan reachedAt,
            boolean reached,
            TimeSpan remaining,
            Figure figure) {}
}
