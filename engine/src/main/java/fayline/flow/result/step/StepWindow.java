package fayline.flow.result.step;

import fayline.flow.plan.WorkStep;
import java.util.Optional;

/**
 * A window in which a step must begin, both as the planner takes it and as a person reads it.
 *
 * @param link the same for the planner: the earlier step and the spans
 * @param fromTitle the earlier step's title
 * @param opens when it opens, in words; empty where it opens at once
 * @param shuts when it shuts, in words; empty where it never does
 * @param why what rules each end: the state, the law, the reference time
 */
public record StepWindow(WorkStep.Link link, String fromTitle, String opens, String shuts, String why) {
    /** The price of missing it, where there is one; a window that shuts without a price may not be missed. */
    public Optional<WorkStep.Miss> miss() {
        return link.miss();
    }
}
