package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker.Stretch;
import java.util.ArrayList;
import java.util.List;

/** Everyone at a step is in the shop while the hands work. */
final class PeopleWorkInTheirHours implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.jobs()) {
            for (Stretch stretch : judged(audited, job)) {
                for (String person : job.crew()) {
                    if (audited.worker(person).isPresent()
                            && !audited.presence(person).covers(stretch)) {
                        found.add(broken(
                                job.id(),
                                person + " is put to " + job.id() + " from " + audited.tell(stretch.from()) + " to "
                                        + audited.tell(stretch.to())
                                        + " but is not in the shop all that time; expected "
                                        + "hours that cover these "
                                        + Minutes.tell(Minutes.between(stretch.from(), stretch.to()))));
                    }
                }
            }
        }
        return found;
    }

    /** The stretches that keep to hours: all of what has not begun, the coming ones of what runs and may stop. */
    static List<Stretch> judged(Audited audited, Job job) {
        if (!job.begun()) {
            return job.planned().stretches();
        }
        if (job.work().state() != WorkStep.State.RUNNING || !job.work().interruptible()) {
            return List.of();
        }
        return job.planned().stretches().stream()
                .filter(s -> !s.from().isBefore(audited.work().now()))
                .toList();
    }
}
