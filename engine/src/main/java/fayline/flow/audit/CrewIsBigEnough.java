package fayline.flow.audit;

import fayline.flow.plan.WorkStep.CrewTime;
import java.util.ArrayList;
import java.util.List;

/** A step's crew is one of the sizes its work is listed for, nobody counted twice. */
final class CrewIsBigEnough implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            List<Integer> sizes =
                    job.work().hands().stream().map(CrewTime::people).toList();
            int crew = job.crew().size();
            if (job.planned().people().size() != crew) {
                found.add(broken(
                        job.id(), job.id() + " names " + job.planned().people() + "; expected nobody named twice"));
            }
            if (sizes.isEmpty() ? crew != 0 : !sizes.contains(crew)) {
                found.add(broken(
                        job.id(),
                        job.id() + " has a crew of " + crew + "; expected "
                                + (sizes.isEmpty() ? "nobody, for it needs no hands" : "one of " + sizes)));
            }
        }
        return found;
    }
}
