package fayline.flow.result.fit;

import fayline.flow.project.fit.FitState;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.scheme.LaterDoubt;
import java.util.OptionalDouble;

/**
 * A state still to come that will disturb the gap.
 *
 * @param state the state
 * @param move how the part will move
 * @param pivot the pivot of that move
 * @param gapMm what every gap changes by beside it
 * @param deviationMm standard uncertainty of the change at a station, where it is known
 * @param learned whether it was learned from readings; else it was entered
 * @param origin who says so, in words
 */
public record LaterState(
        FitState state,
        SpaceMove move,
        Vector pivot,
        double gapMm,
        OptionalDouble deviationMm,
        boolean learned,
        String origin) {
    /** How well it is known what it does. */
    public LaterDoubt doubt() {
        return new LaterDoubt(state.name(), deviationMm);
    }
}
