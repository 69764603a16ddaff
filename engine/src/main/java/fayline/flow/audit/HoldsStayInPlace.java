package fayline.flow.audit;

import fayline.flow.plan.Hold;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** All steps of a hold happen at the same places, as many as it takes, and steps are at no other places. */
final class HoldsStayInPlace implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>(audited.displaced());
        for (Job job : audited.todo()) {
            List<Hold> holds = audited.work().holds().stream()
                    .filter(h -> h.steps().contains(job.id()))
                    .toList();
            Set<String> offered =
                    holds.stream().flatMap(h -> h.candidates().stream()).collect(Collectors.toSet());
            List<String> places = job.planned().places();
            int needed = holds.stream().mapToInt(Hold::count).sum();
            if (!offered.containsAll(places) || places.size() > needed) {
                found.add(broken(
                        job.id(),
                        job.id() + " is at " + places + "; expected " + needed + " of those that its holds offer, "
                                + offered.stream().sorted().toList()));
            }
        }
        return found;
    }
}
