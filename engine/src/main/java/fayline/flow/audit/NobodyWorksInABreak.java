package fayline.flow.audit;

import fayline.flow.plan.Worker.Stretch;
import java.util.ArrayList;
import java.util.List;

/** The hands of work that may stop rest in the breaks of everyone in the crew. */
final class NobodyWorksInABreak implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.jobs()) {
            if (!job.work().interruptible()) {
                continue;
            }
            for (Stretch stretch : PeopleWorkInTheirHours.judged(audited, job)) {
                for (String person : job.crew()) {
                    audited.worker(person).stream()
                            .flatMap(w -> w.breaks().stream())
                            .filter(b -> b.from().isBefore(stretch.to())
                                    && stretch.from().isBefore(b.to()))
                            .findFirst()
                            .ifPresent(b -> found.add(broken(
                                    job.id(),
                                    person + " works at " + job.id() + " from " + audited.tell(stretch.from()) + " to "
                                            + audited.tell(stretch.to()) + ", through the break at "
                                            + audited.tell(b.from()) + "; expected this work to stop for its "
                                            + Minutes.tell(Minutes.between(b.from(), b.to())))));
                }
            }
        }
        return found;
    }
}
