package fayline.app.usecase.better;

import fayline.app.usecase.view.PlanOrigin;
import fayline.flow.plan.Work;
import fayline.flow.planner.goal.PlanScore;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a search stands.
 *
 * @param running whether it goes on
 * @param work the work that is planned; what the search says holds for no other
 * @param before the plan when the search began
 * @param best the best plan so far
 * @param least the moment before which no plan can end; empty while or where that is not known
 * @param steps the better plans found, in order
 * @param origin how the best plan came about
 * @param fault what went wrong, in words; empty where nothing did
 */
public record Progress(
        boolean running,
        Work work,
        Reached before,
        Reached best,
        Optional<Instant> least,
        List<Reached> steps,
        PlanOrigin origin,
        String fault) {
    /** Copies the list. */
    public Progress {
        steps = List.copyOf(steps);
    }

    /**
     * A plan, by what it is worth.
     *
     * @param score its score
     * @param finish when all planned work ends by it
     */
    public record Reached(PlanScore score, Optional<Instant> finish) {}

    /** Whether what it says holds for some work; of the same work in other sets it does. */
    public boolean isOf(Work other) {
        return work.isSame(other);
    }

    Progress bounded(Optional<Instant> at) {
        return new Progress(running, work, before, best, at, steps, origin, fault);
    }

    Progress found(List<Reached> all, PlanOrigin by) {
        return new Progress(running, work, before, all.get(all.size() - 1), least, all, by, fault);
    }

    Progress over(PlanOrigin by, String words) {
        return new Progress(false, work, before, best, least, steps, by, words);
    }
}
