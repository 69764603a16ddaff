package fayline.flow.audit;

import fayline.flow.plan.WorkStep.CrewTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The hands stay exactly as long as is listed for their number; at a running step no shorter. */
final class StepsLastTheirTime implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.jobs()) {
            if (job.handsAtIt()) {
                running(job, found);
            } else if (!job.begun() && job.planned().missed().isEmpty()) {
                OptionalInt listed = job.listedMinutes(job.crew().size());
                if (listed.isPresent() && listed.getAsInt() != job.handsMinutes()) {
                    found.add(broken(
                            job.id(),
                            job.id() + " keeps " + job.crew().size() + " people busy for "
                                    + Minutes.tell(job.handsMinutes()) + "; expected "
                                    + Minutes.tell(listed.getAsInt())));
                }
            }
        }
        return found;
    }

    private void running(Job job, List<BrokenRule> found) {
        int crew = job.crew().size();
        CrewTime listed = job.work().hands().get(0);
        for (CrewTime time : job.work().hands()) {
            if (time.people() <= crew && time.people() > listed.people()) {
                listed = time;
            }
        }
        if (job.handsMinutes() < listed.minutes()) {
            found.add(broken(
                    job.id(),
                    job.id() + " is running and planned to take " + Minutes.tell(job.handsMinutes()) + " in all with "
                            + crew + " people; expected no less than " + Minutes.tell(listed.minutes())));
        }
    }
}
