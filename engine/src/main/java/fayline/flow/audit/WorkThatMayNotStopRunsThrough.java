package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;

/** Dry work that may not be interrupted is one stretch. */
final class WorkThatMayNotStopRunsThrough implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            int stretches = job.planned().stretches().size();
            if (!job.work().air().equals("wet") && !job.work().interruptible() && stretches > 1) {
                found.add(broken(
                        job.id(), job.id() + " may not stop and is split into " + stretches + "; expected 1 stretch"));
            }
        }
        return found;
    }
}
