package fayline.app.usecase.better;

import fayline.app.usecase.view.PlanOrigin;
import fayline.flow.planner.goal.PlanScore;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a search stands.
 *
 * @param running whether it goes on
 * @param before the plan's score when it began
 * @param best the best plan's score
 * @param finish when all planned work ends by the best plan
 * @param least the moment before which no plan can end; empty where that is not known
 * @param steps the better plans found, in order
 * @param origin how the best plan came about
 * @param fault what went wrong, in words; empty where nothing did
 */
public record Progress(
        boolean running,
        PlanScore before,
        PlanScore best,
        Optional<Instant> finish,
        Optional<Instant> least,
        List<Found> steps,
        PlanOrigin origin,
        String fault) {
    /** Copies the list. */
    public Progress {
        steps = List.copyOf(steps);
    }

    /**
     * A better plan.
     *
     * @param total its score, in hours
     * @param finish when all planned work ends by it
     */
    public record Found(double total, Optional<Instant> finish) {}
}
