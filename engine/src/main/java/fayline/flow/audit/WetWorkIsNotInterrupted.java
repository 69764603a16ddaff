package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;

/** Wet work runs through from the first batch to the last: one stretch. */
final class WetWorkIsNotInterrupted implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            int stretches = job.planned().stretches().size();
            if (job.work().air().equals("wet") && stretches > 1) {
                found.add(broken(
                        job.id(),
                        "the wet work of " + job.id() + " is split into " + stretches + "; expected 1 stretch"));
            }
        }
        return found;
    }
}
