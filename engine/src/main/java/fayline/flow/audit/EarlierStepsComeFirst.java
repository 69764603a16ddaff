package fayline.flow.audit;

import fayline.flow.plan.WorkStep.Link;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A step starts only when what it waits for has come so far, and is planned only if that is. */
final class EarlierStepsComeFirst implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            for (Link link : job.work().after()) {
                Optional<Instant> moment = audited.moment(link);
                if (moment.isEmpty() && audited.step(link.step()).isPresent()) {
                    found.add(broken(
                            job.id(),
                            link.step(),
                            job.id() + " is planned, but " + link.step() + " before it is not; expected both or none"));
                }
                moment.filter(job.planned().start()::isBefore)
                        .ifPresent(m -> found.add(broken(
                                job.id(),
                                link.step(),
                                job.id() + " starts at "
                                        + audited.tell(job.planned().start())
                                        + "; expected no earlier than the " + link.from() + " of " + link.step() + ", "
                                        + audited.tell(m))));
            }
        }
        return found;
    }
}
