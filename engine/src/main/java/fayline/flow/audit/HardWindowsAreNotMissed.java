package fayline.flow.audit;

import fayline.flow.plan.WorkStep.Link;
import java.util.ArrayList;
import java.util.List;

/** A window without a price is never missed. */
final class HardWindowsAreNotMissed implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            for (Link link : job.work().after()) {
                if (link.miss().isEmpty()) {
                    Shutting.of(audited, job, link)
                            .filter(Shutting::missed)
                            .ifPresent(s -> found.add(broken(
                                    job.id(),
                                    link.step(),
                                    s.sentence() + "; expected no later, for this window has no price")));
                }
            }
        }
        return found;
    }
}
