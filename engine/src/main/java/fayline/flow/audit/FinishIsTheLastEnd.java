package fayline.flow.audit;

import fayline.flow.plan.Plan.PlannedStep;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The plan's finish is the latest end of its steps. */
final class FinishIsTheLastEnd implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        Optional<Instant> latest =
                audited.plan().steps().stream().map(PlannedStep::end).max(Comparator.naturalOrder());
        if (latest.equals(audited.plan().finish())) {
            return List.of();
        }
        String found = audited.plan().finish().map(audited::tell).orElse("none");
        return List.of(new BrokenRule(
                name(),
                List.of(),
                "the plan's finish is " + found + "; expected the latest end of its steps, "
                        + latest.map(audited::tell).orElse("none")));
    }
}
