package fayline.method.cure;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cure clock: when each state of a mix is reached, by the equivalent age over each probe's own history. Of several probes
 * the one that reaches a state last rules where the state permits something (handling, demould), and the one that reaches it
 * first where the state ends something (pot life, gel, recoat window). Temperatures are never averaged, neither over time nor
 * over probes. After the end of a history its last temperature holds.
 */
public final class CureClockCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final double TOO_LONG_S = 3650.0 * 86400;

    private CureClockCalculator() {}

    /** Answers the question. */
    public static CureWatchResult calculate(CureWatch watch) {
        List<CureWatchResult.Arrival> arrivals = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        boolean assumed = false;
        for (CureState state : CureState.values()) {
            Optional<CureLaw> law = CureLaw.of(watch.sheet(), state);
            if (law.isEmpty()) {
                continue;
            }
            assumed |= law.get().rule().origin() == RateRule.Origin.DOUBLING;
            CureWatchResult.Arrival arrival = arrival(watch, law.get(), findings);
            if (arrival.reachedAt().seconds() < TOO_LONG_S) {
                arrivals.add(arrival);
            } else {
                findings.add(new Finding(
                        Severity.STOP,
                        state.key(),
                        "At these temperatures " + state.words() + " is never reached: not covered, warm the part.",
                        "the definition"));
            }
        }
        if (assumed) {
            findings.add(new Finding(
                    Severity.NOTE,
                    "cure",
                    "The factor of two per 10 K is assumed; a data sheet with two temperatures or an activation energy"
                            + " would replace it.",
                    "common practice, no source"));
        }
        if (arrivals.isEmpty() && findings.isEmpty()) {
            findings.add(new Finding(
                    Severity.STOP,
                    "cure",
                    "The data sheet of this system has no point with a time: not covered.",
                    "the definition"));
        }
        return new CureWatchResult(arrivals, findings);
    }

    private static CureWatchResult.Arrival arrival(CureWatch watch, CureLaw law, List<Finding> findings) {
        boolean first = law.state().runsOut();
        double best = Double.NaN;
        CureWatch.Probe ruling = watch.probes().get(0);
        for (CureWatch.Probe probe : watch.probes()) {
            double at = EquivalentAgeCalculator.timeOfAge(
                    probe.history(), law.rule(), law.time().seconds());
            if (Double.isNaN(best) || (first ? at < best : at > best)) {
                best = at;
                ruling = probe;
            }
        }
        double reached = Math.min(best, TOO_LONG_S);
        double now = watch.now().seconds();
        double age = EquivalentAgeCalculator.ageAt(ruling.history(), law.rule(), now);
        TimeSpan until = new TimeSpan(reached);
        findings.addAll(law.cautionsAt(
                first ? ruling.history().hottestUntil(until) : ruling.history().coldestUntil(until)));
        TimeSpan wait = new TimeSpan(Math.max(0, reached - now));
        Figure figure = new Figure(
                "Time of " + law.state().words(),
                FORMAT.span(until) + " after mixing",
                "the time at which the sum of dt x rate factor reaches " + FORMAT.span(law.time()) + " at "
                        + FORMAT.temperature(law.reference()),
                List.of(
                        new Figure.Input("data-sheet time", FORMAT.span(law.time()), Figure.Origin.DATA_SHEET),
                        new Figure.Input(
                                "dependence on temperature",
                                law.rule().sentence(),
                                law.rule().origin() == RateRule.Origin.DOUBLING
                                        ? Figure.Origin.ASSUMED
                                        : Figure.Origin.DATA_SHEET),
                        new Figure.Input("ruling probe", ruling.name(), Figure.Origin.MEASURED),
                        new Figure.Input("equivalent age now", FORMAT.span(new TimeSpan(age)), Figure.Origin.COMPUTED)),
                "[arrhenius1889]",
                List.of());
        return new CureWatchResult.Arrival(
                law.state(), law, ruling.name(), new TimeSpan(age), until, now >= reached, wait, figure);
    }
}
