package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;

/** What has not begun starts now or later. */
final class NothingStartsInThePast implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            if (job.planned().start().isBefore(audited.work().now())) {
                found.add(broken(
                        job.id(),
                        job.id() + " starts at " + audited.tell(job.planned().start())
                                + "; expected no earlier than now, "
                                + audited.tell(audited.work().now())));
            }
        }
        return found;
    }
}
