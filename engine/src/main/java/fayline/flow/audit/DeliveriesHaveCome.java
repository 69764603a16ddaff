package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;

/** A step starts only when every delivery it awaits is expected to be there. */
final class DeliveriesHaveCome implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            for (String awaited : job.work().awaits()) {
                audited.delivery(awaited)
                        .filter(d -> job.planned().start().isBefore(d.expected()))
                        .ifPresent(d -> found.add(broken(
                                job.id(),
                                job.id() + " starts at "
                                        + audited.tell(job.planned().start()) + ", before "
                                        + d.what() + " (" + d.id() + ") has come; expected no earlier than "
                                        + audited.tell(d.expected()))));
            }
        }
        return found;
    }
}
