package fayline.flow.result.fit;

import fayline.basis.finding.Finding;
import fayline.flow.project.fit.FitState;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was read in one state.
 *
 * @param state the state
 * @param stations every station of the fit, in order
 * @param since what changed since the state read before; empty for the first
 * @param temperatureDegC the last temperature noted with a reading; gaps read at another are brought to it
 * @param findings what is to be said of the temperatures
 */
public record StateReadings(
        FitState state,
        List<StationValue> stations,
        Optional<StateChange> since,
        OptionalDouble temperatureDegC,
        List<Finding> findings) {
    /** Copies the lists. */
    public StateReadings {
        stations = List.copyOf(stations);
        findings = List.copyOf(findings);
    }

    /** Readings of whose temperatures nothing is to be said. */
    public StateReadings(
            FitState state, List<StationValue> stations, Optional<StateChange> since, OptionalDouble temperatureDegC) {
        this(state, stations, since, temperatureDegC, List.of());
    }

    /** How many stations have a gap. */
    public long read() {
        return stations.stream().filter(s -> s.gap().isPresent()).count();
    }
}
