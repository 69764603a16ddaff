package fayline.flow.planner;

import fayline.flow.plan.WishWords;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.PlanReasons.Candidate;
import fayline.flow.planner.PlanReasons.Cause;
import fayline.flow.planner.serial.TimeLine;
import java.util.Optional;
import java.util.stream.Stream;

/** What the lead wishes of steps, as far as it is why they begin when they do. */
final class WishReasons {
    private final Work work;
    private final TimeLine time;

    WishReasons(Work work, TimeLine time) {
        this.work = work;
        this.time = time;
    }

    /** The last start not after t before which the lead does not want a step begun; of several the first listed. */
    Optional<Candidate> start(WorkStep step, int t) {
        return of(step, WorkWish.Kind.START)
                .flatMap(w -> w.from().map(from -> candidate(w, time.ceil(from))).stream())
                .filter(c -> c.until() <= t)
                .reduce((a, b) -> b.until() > a.until() ? b : a);
    }

    private Candidate candidate(WorkWish w, int from) {
        String words = (w.before().isPresent() ? "is kept there: " : "waits because ") + WishWords.clause(work, w);
        return new Candidate(from, Cause.WISH, w.id(), "", words);
    }

    /** What the lead wishes of a person or place that a step waits for, to be said behind the reason; empty for nothing. */
    String clause(WorkStep step, WorkWish.Kind kind, String on) {
        return of(step, kind)
                .filter(w -> w.on().equals(on))
                .findFirst()
                .map(w -> "; " + WishWords.clause(work, w))
                .orElse("");
    }

    private Stream<WorkWish> of(WorkStep step, WorkWish.Kind kind) {
        return work.wishes().stream()
                .filter(w -> w.step().equals(step.id()) && w.kind() == kind && !w.isPast(work.now()));
    }
}
