package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Done and running steps stand in the plan as they happened, and what still goes on is not over before now. */
final class WhatHappenedStays implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.jobs()) {
            if (!job.begun()) {
                continue;
            }
            WorkStep.Actual actual = job.work().actual();
            time(audited, job, "start", job.planned().start(), actual.started(), found);
            time(audited, job, "end of hands", job.planned().handsEnd(), actual.handsEnded(), found);
            time(audited, job, "end", job.planned().end(), actual.ended(), found);
            if (!actual.people().isEmpty() && !Set.copyOf(actual.people()).equals(job.crew())) {
                found.add(broken(
                        job.id(),
                        job.id() + " is planned with " + job.crew() + "; expected " + actual.people()
                                + ", who did it"));
            }
            if (!job.planned().places().containsAll(actual.places())) {
                found.add(broken(
                        job.id(),
                        job.id() + " is planned at " + job.planned().places() + "; expected " + actual.places()
                                + ", where it happened"));
            }
            if (job.handsAtIt()
                    && job.planned().handsEnd().isBefore(audited.work().now())) {
                found.add(broken(
                        job.id(),
                        "the hands leave " + job.id() + " at "
                                + audited.tell(job.planned().handsEnd())
                                + " but are still at it; expected no earlier than now, "
                                + audited.tell(audited.work().now())));
            }
        }
        return found;
    }

    private void time(
            Audited audited, Job job, String what, Instant planned, Optional<Instant> real, List<BrokenRule> found) {
        if (real.isPresent() && !real.get().equals(planned)) {
            found.add(broken(
                    job.id(),
                    "the " + what + " of " + job.id() + " is planned at " + audited.tell(planned) + "; expected "
                            + audited.tell(real.get()) + ", when it happened"));
        }
    }
}
