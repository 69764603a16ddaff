package fayline.flow.audit;

import fayline.flow.plan.WorkStep.Link;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A step starts only when the windows of the steps before it have opened. */
final class WindowsAreOpen implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            for (Link link : job.work().after()) {
                audited.moment(link)
                        .filter(m -> !job.planned().start().isBefore(m))
                        .ifPresent(m -> audited.time(link.opens())
                                .ifPresent(time -> check(audited, job, link, m, time, found)));
            }
        }
        return found;
    }

    private void check(
            Audited audited, Job job, Link link, Instant moment, EquivalentTime time, List<BrokenRule> found) {
        Instant start = job.planned().start();
        double opens = link.opens().minutes();
        if (!time.reached(moment, start, opens)) {
            found.add(broken(
                    job.id(),
                    link.step(),
                    job.id() + " starts at " + audited.tell(start) + ", "
                            + ClocksRun.tell(time.between(moment, start), link.opens()) + " after the " + link.from()
                            + " of " + link.step() + "; expected at least " + ClocksRun.tell(opens, link.opens())
                            + ", so no earlier than " + audited.tell(time.over(moment, opens))));
        }
    }
}
