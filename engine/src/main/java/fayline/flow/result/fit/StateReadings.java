package fayline.flow.result.fit;

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
 * @param temperatureDegC the last temperature noted with a reading
 */
public record StateReadings(
        FitState state, List<StationValue> stations, Optional<StateChange> since, OptionalDouble temperatureDegC) {
    /** Copies the list. */
    public StateReadings {
        stations = List.copyOf(stations);
    }

    /** How many stations have a gap. */
    public long read() {
        return stations.stream().filter(s -> s.gap().isPresent()).count();
    }
}
