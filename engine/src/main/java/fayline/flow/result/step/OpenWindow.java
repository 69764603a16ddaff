package fayline.flow.result.step;

import fayline.flow.plan.WorkStep;
import java.time.Instant;
import java.util.Optional;

/**
 * A window that counts already, because what it counts from has happened, for a step that has not begun.
 *
 * @param step the step that waits
 * @param title its title
 * @param from the step it waits for
 * @param opens when it opens or has opened; empty if not within the horizon
 * @param shuts when it shuts; empty where it does not, or not within the horizon
 * @param open whether it is open now
 * @param missed whether it has shut
 * @param miss what a missed window costs, where it has a price
 */
public record OpenWindow(
        String step,
        String title,
        String from,
        Optional<Instant> opens,
        Optional<Instant> shuts,
        boolean open,
        boolean missed,
        Optional<WorkStep.Miss> miss) {}
