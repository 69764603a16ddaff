package fayline.method.cure.reaction;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Temperature;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Answers on the glass transition, in the order of the questions.
 *
 * @param transitions glass transition for each degree of cure asked
 * @param degrees degree of cure for each glass transition asked; empty where it lies outside the constants
 * @param vitrified degree of cure at which the glass transition reaches each cure temperature
 * @param stalled degree of cure at which the reaction stalls at each cure temperature, 1 where it does not
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record GlassStateResult(
        List<Temperature> transitions,
        List<OptionalDouble> degrees,
        List<OptionalDouble> vitrified,
        List<OptionalDouble> stalled,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public GlassStateResult {
        transitions = List.copyOf(transitions);
        degrees = List.copyOf(degrees);
        vitrified = List.copyOf(vitrified);
        stalled = List.copyOf(stalled);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
