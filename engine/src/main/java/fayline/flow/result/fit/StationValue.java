package fayline.flow.result.fit;

import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.method.fitup.reading.StationGap;
import fayline.method.fitup.reading.Suspect;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was read at one station in one state.
 *
 * @param station the station
 * @param gap the gap of all its readings; empty where none was taken
 * @param flushMm mean of its flush readings
 * @param typed the readings, in the order taken
 * @param suspects why it should be read again; empty where nothing speaks against it
 */
public record StationValue(
        FitStation station,
        Optional<StationGap> gap,
        OptionalDouble flushMm,
        List<FitReading> typed,
        List<Suspect> suspects) {
    /** Copies the lists. */
    public StationValue {
        typed = List.copyOf(typed);
        suspects = List.copyOf(suspects);
    }
}
