package fayline.method.vacuum;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Vacuum;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a bag is tight; empty where it is not covered.
 *
 * @param drop drop of the reading
 * @param perMinute drop in a minute
 * @param leakPaM3PerS leak Q = V dp/dt in Pa m3/s (1 hPa L/s = 0.1 Pa m3/s), where the volume is given
 * @param ok whether every limit that is given is kept; empty where none is given
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record LeakDownResult(
        Optional<Vacuum> drop,
        Optional<Vacuum> perMinute,
        OptionalDouble leakPaM3PerS,
        Optional<Boolean> ok,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public LeakDownResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
