package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;

/** A step with a set earliest start keeps to it. */
final class NothingStartsBeforeItsDay implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            job.work()
                    .notBefore()
                    .filter(day -> job.planned().start().isBefore(day))
                    .ifPresent(day -> found.add(broken(
                            job.id(),
                            job.id() + " starts at "
                                    + audited.tell(job.planned().start()) + "; expected no earlier than "
                                    + audited.tell(day))));
        }
        return found;
    }
}
