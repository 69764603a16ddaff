package fayline.method.vacuum;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Pressure;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * How long a pump takes and how far it gets.
 *
 * @param time time to the pressure wanted: a lower bound; empty where it is never reached or not asked
 * @param ultimate absolute pressure that pump and leak settle at
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record PumpDownResult(
        Optional<TimeSpan> time, Optional<Pressure> ultimate, List<Figure> figures, List<Finding> findings) {
    /** Copies the lists. */
    public PumpDownResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
