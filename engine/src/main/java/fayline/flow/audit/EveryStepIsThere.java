package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import java.util.ArrayList;
import java.util.List;

/** Every step of the work is planned once, or listed once as unplanned with a reason; what has begun is always planned. */
final class EveryStepIsThere implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (WorkStep step : audited.work().steps()) {
            long planned = audited.plan().steps().stream()
                    .filter(p -> p.step().equals(step.id()))
                    .count();
            List<String> reasons = audited.plan().unplanned().stream()
                    .filter(u -> u.step().equals(step.id()))
                    .map(u -> u.reason())
                    .toList();
            if (planned + reasons.size() != 1) {
                found.add(broken(
                        step.id(),
                        step.id() + " is planned " + planned + " times and unplanned " + reasons.size()
                                + " times; expected one of both, once"));
            } else if (planned == 0 && step.state() != WorkStep.State.TODO) {
                found.add(broken(
                        step.id(), step.id() + " has begun and is listed as unplanned; expected it as it happened"));
            } else if (reasons.stream().anyMatch(String::isBlank)) {
                found.add(broken(step.id(), step.id() + " is unplanned without a reason; expected why"));
            }
        }
        return found;
    }
}
