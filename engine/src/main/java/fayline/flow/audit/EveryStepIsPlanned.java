package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;

/** A plan is whole when nothing is left unplanned. Breaches are admitted: the plan itself gives the reason. */
final class EveryStepIsPlanned implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        audited.plan().unplanned().stream()
                .filter(u -> audited.step(u.step()).isPresent())
                .forEach(u -> found.add(broken(u.step(), u.step() + " is not planned: " + u.reason())));
        return found;
    }
}
