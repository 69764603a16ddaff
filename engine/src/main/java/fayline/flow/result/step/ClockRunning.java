package fayline.flow.result.step;

import fayline.basis.finding.Figure;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.CureState;
import java.time.Instant;
import java.util.Optional;

/**
 * A cure that runs, or has just run, and one state on its way.
 *
 * @param step the step whose mix cures
 * @param made the part or joint
 * @param title the step's title
 * @param system the system
 * @param state the state
 * @param from the moment from which it counts: the first batch for what shuts, the last for what must have cured
 * @param soFar equivalent time at the reference temperature up to now
 * @param needed equivalent time at which the state is reached
 * @param at when it was or will be reached; empty if not within the horizon
 * @param reached whether that lies before now, by computation; the card still asks for the physical check
 * @param remaining time from now until then; zero where it is reached, empty where it is not within the horizon
 * @param measured share of the time up to now that is covered by readings rather than by expected air, from 0 to 1
 * @param why how the moment came about
 */
public record ClockRunning(
        String step,
        String made,
        String title,
        String system,
        CureState state,
        Instant from,
        TimeSpan soFar,
        TimeSpan needed,
        Optional<Instant> at,
        boolean reached,
        Optional<TimeSpan> remaining,
        double measured,
        Figure why) {
    /** By which the same clock is known again, wherever and whenever it is computed. */
    public String key() {
        return step + " " + state.key();
    }
}
