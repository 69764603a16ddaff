package fayline.flow.audit;

import fayline.flow.plan.Plan.PlannedStep;
import java.util.ArrayList;
import java.util.List;

/** A plan speaks only of steps, people, places and earlier steps that the work knows; what has begun may name who has left. */
final class OnlyKnownNames implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (PlannedStep planned : audited.plan().steps()) {
            if (audited.step(planned.step()).isEmpty()) {
                found.add(
                        broken(planned.step(), "step " + planned.step() + " is planned; expected a step of the work"));
            }
        }
        audited.plan().unplanned().stream()
                .filter(u -> audited.step(u.step()).isEmpty())
                .forEach(u -> found.add(
                        broken(u.step(), "step " + u.step() + " is listed as unplanned; expected a step of the work")));
        for (Job job : audited.todo()) {
            job.crew().stream()
                    .filter(person -> audited.worker(person).isEmpty())
                    .forEach(person -> found.add(broken(
                            job.id(), job.id() + " is given to " + person + "; expected one of the crew of the work")));
            job.planned().places().stream()
                    .filter(place -> audited.place(place).isEmpty())
                    .forEach(place -> found.add(
                            broken(job.id(), job.id() + " is put at " + place + "; expected a place of the work")));
        }
        return found;
    }
}
