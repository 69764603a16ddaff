package fayline.method.vacuum;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Force;
import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import java.util.List;
import java.util.Optional;

/**
 * How hard a bag presses; empty where it is not covered.
 *
 * @param ambient the air pressure used
 * @param clamp pressure of the air on the part
 * @param ofAmbient clamp pressure as a fraction of ambient
 * @param force force on the area; {@link Force#kilogramsForce()} gives it as a weight
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record ClampPressureResult(
        Optional<Pressure> ambient,
        Optional<Pressure> clamp,
        Optional<Fraction> ofAmbient,
        Optional<Force> force,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public ClampPressureResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
