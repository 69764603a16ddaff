package fayline.method.bag;

import fayline.basis.finding.Finding;
import fayline.basis.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * Strips of a roll in both directions; empty where it is not covered.
 *
 * @param along strips along the length
 * @param across strips across, along the needed width
 * @param findings what must be said
 */
public record StripsResult(Optional<Lay> along, Optional<Lay> across, List<Finding> findings) {
    /** Copies the list. */
    public StripsResult {
        findings = List.copyOf(findings);
    }

    /** The direction that takes less from the roll; along where both take the same. */
    public Optional<Lay> shorter() {
        return along.flatMap(a -> across.map(b -> b.run().compareTo(a.run()) < 0 ? b : a));
    }

    /**
     * One way to lay strips.
     *
     * @param strips their number
     * @param run length taken from the roll
     */
    public record Lay(int strips, Length run) {}
}
