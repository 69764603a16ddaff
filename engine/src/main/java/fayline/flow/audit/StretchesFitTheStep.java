package fayline.flow.audit;

import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** The stretches of a step's hands follow each other, begin with its start and end with its hands' end. */
final class StretchesFitTheStep implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.jobs()) {
            if (!job.begun() || job.handsAtIt()) {
                check(audited, job, found);
            }
        }
        return found;
    }

    private void check(Audited audited, Job job, List<BrokenRule> found) {
        List<Stretch> stretches = job.planned().stretches();
        Instant start = job.planned().start();
        Instant handsEnd = job.planned().handsEnd();
        if (job.work().hands().isEmpty()) {
            if (!stretches.isEmpty() || !handsEnd.equals(start)) {
                found.add(broken(
                        job.id(),
                        job.id() + " needs no hands and has " + stretches.size() + " stretches, its hands leaving at "
                                + audited.tell(handsEnd) + "; expected none, and "
                                + audited.tell(start)));
            }
            return;
        }
        if (stretches.isEmpty()) {
            found.add(broken(job.id(), job.id() + " has no stretch of work; expected at least one"));
            return;
        }
        Stretch first = stretches.get(0);
        Stretch last = stretches.get(stretches.size() - 1);
        if (!first.from().equals(start) || !last.to().equals(handsEnd)) {
            found.add(broken(
                    job.id(),
                    "the hands of " + job.id() + " work from " + audited.tell(first.from()) + " to "
                            + audited.tell(last.to()) + "; expected from its start, " + audited.tell(start)
                            + ", to its hands' end, " + audited.tell(handsEnd)));
        }
        Instant before = first.from();
        for (Stretch stretch : stretches) {
            if (stretch.from().isBefore(before) || !stretch.from().isBefore(stretch.to())) {
                found.add(broken(
                        job.id(),
                        job.id() + " has a stretch from " + audited.tell(stretch.from()) + " to "
                                + audited.tell(stretch.to())
                                + "; expected one that ends after it starts, no earlier than "
                                + audited.tell(before)));
            }
            before = stretch.to();
        }
    }
}
