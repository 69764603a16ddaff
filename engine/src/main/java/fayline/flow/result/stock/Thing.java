package fayline.flow.result.stock;

import fayline.basis.units.Quantity;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.List;

/**
 * What is known of one thing while the stores are checked.
 *
 * @param of the material or system
 * @param component {@code resin} or {@code hardener} of a system; empty otherwise
 * @param kind an amount of the kind in which it is needed
 * @param done what begun steps take by computation; grows while steps are looked through
 * @param todo what steps to do still take; grows likewise
 */
record Thing(String of, String component, Quantity kind, List<Draw> done, List<Draw> todo) {
    /** What a step takes; {@code dated} where it is known when. */
    record Draw(StepResult step, Instant at, boolean dated, double amount) {}
}
