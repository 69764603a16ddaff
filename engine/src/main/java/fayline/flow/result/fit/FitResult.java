package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.flow.project.design.Hand;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitState;
import fayline.method.fitup.Station;
import fayline.method.fitup.heat.BondedHeatResult;
import fayline.method.fitup.heat.HeatResult;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.scheme.SchemeComparison;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything that follows from the readings of one fit.
 *
 * @param fit the fit
 * @param side the side of the part
 * @param outline the part's edge, where it is drawn and sound
 * @param places place and direction of each station for which they are known, by mark
 * @param edges the edge of each such station
 * @param states what was read, in the order of the states; only states with readings
 * @param later states to come that will disturb the gap
 * @param advice what to do now; empty where no gap was read or places are not known
 * @param beforehand the schemes side by side for a part set to its nominal gaps, where nothing is read yet
 * @param heat what heat does to the gaps now, for a part that is free
 * @param bonded what heat does to the bond, for a part that is bonded all round
 * @param cast the bond line as test castings of the state read last show it
 * @param after the bonded part against what was foretold
 * @param missing uncertainties that nobody has given, in words
 * @param assumed what was assumed instead, in words
 * @param findings what must be said
 */
public record FitResult(
        Fit fit,
        Side side,
        Optional<PartOutline> outline,
        Map<String, Station> places,
        Map<String, String> edges,
        List<StateReadings> states,
        List<LaterState> later,
        Optional<FitAdvice> advice,
        Optional<SchemeComparison> beforehand,
        Optional<HeatResult> heat,
        Optional<BondedHeatResult> bonded,
        Optional<CastLine> cast,
        Optional<FitAfter> after,
        List<String> missing,
        List<Phrase> assumed,
        List<Finding> findings) {
    /** The state in which a part is read when its adhesive has set. */
    public static final String BONDED = "bonded";

    /** Copies the collections. */
    public FitResult {
        places = Map.copyOf(places);
        edges = Map.copyOf(edges);
        states = List.copyOf(states);
        later = List.copyOf(later);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        findings = List.copyOf(findings);
    }

    /** The readings of the state read last. */
    public Optional<StateReadings> now() {
        return states.isEmpty() ? Optional.empty() : Optional.of(states.get(states.size() - 1));
    }

    /** The stations whose places are known, in the fit's order. */
    public List<Station> placed() {
        return fit.stations().stream()
                .flatMap(s -> Stream.ofNullable(places.get(s.id())))
                .toList();
    }

    /** Whether the part is curved, so that its flush counts beside its gaps. */
    public boolean curved() {
        return places.values().stream().anyMatch(Station::isCurved);
    }

    /** The same as they are drawn, seen from outside. */
    public List<Station> drawn() {
        return placed().stream().map(Station::drawn).toList();
    }

    /** The hand whose ways its words are in. */
    public Hand hand() {
        return side == Side.RIGHT ? Hand.RIGHT : Hand.LEFT;
    }

    /** Whether the adhesive has set by the state read last. */
    public boolean isSet() {
        return now().filter(n -> isSet(fit, n.state().id())).isPresent();
    }

    /**
     * Whether a fit's adhesive has set by a state: from the one called bonded on. Where the order begins with it, shells were bonded
     * before anything was read, and that is not this fit's adhesive.
     */
    static boolean isSet(Fit fit, String state) {
        List<String> order = fit.states().stream().map(FitState::id).toList();
        int bonded = order.indexOf(BONDED);
        return bonded > 0 && order.indexOf(state) >= bonded;
    }
}
