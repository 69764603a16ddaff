package fayline.flow.audit;

import fayline.flow.plan.OppositeHands.Follow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A step that is to have the crew of the first hand has it, as far as they are still in the shop. */
final class PractisedHandsDoTheSecond implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Follow same : audited.work().hands().follows()) {
            Optional<Job> second = audited.job(same.step()).filter(j -> !j.begun());
            Optional<Job> first = audited.job(same.first());
            if (second.isEmpty() || first.isEmpty()) {
                continue;
            }
            List<String> practised = first.get().crew().stream()
                    .filter(p -> audited.worker(p).isPresent())
                    .toList();
            int size = second.get().crew().size();
            long common =
                    second.get().crew().stream().filter(practised::contains).count();
            int wanted = same.crew().least(practised.size(), size);
            if (common < wanted) {
                found.add(broken(
                        same.step(),
                        second.get().crew() + " at " + same.step() + " are " + common + " of " + practised
                                + ", who did " + same.first() + "; expected at least " + wanted));
            }
        }
        return found;
    }
}
