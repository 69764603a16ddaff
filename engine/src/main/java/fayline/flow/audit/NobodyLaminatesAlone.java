package fayline.flow.audit;

import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.util.ArrayList;
import java.util.List;

/** While the hands of an accompanied step work, at least two people are in the shop at every moment. */
final class NobodyLaminatesAlone implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            if (!job.work().accompanied() || job.crew().size() >= 2) {
                continue;
            }
            Presence others = Presence.of(audited.work().people().stream()
                    .filter(w -> !job.crew().contains(w.id()))
                    .map(Worker::present)
                    .flatMap(List::stream)
                    .toList());
            for (Stretch stretch : job.planned().stretches()) {
                if (!others.covers(stretch)) {
                    found.add(broken(
                            job.id(),
                            job.crew() + " is alone in the shop for some of " + job.id() + " from "
                                    + audited.tell(stretch.from()) + " to " + audited.tell(stretch.to())
                                    + "; expected a second person there throughout"));
                }
            }
        }
        return found;
    }
}
