package fayline.flow.audit;

import fayline.flow.plan.Place;
import java.util.ArrayList;
import java.util.List;

/** Wet work is on a stand that allows wet work, dusty work on one that allows dust. */
final class StandsSuitTheWork implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            String air = job.work().air();
            for (String id : job.planned().places()) {
                audited.place(id)
                        .filter(p -> p.kind() == Place.Kind.STAND)
                        .filter(p -> (air.equals("wet") && !p.wet()) || (air.equals("dust") && !p.dust()))
                        .ifPresent(p -> found.add(broken(
                                job.id(),
                                job.id() + " makes " + (air.equals("wet") ? "wet work" : "dust") + " on " + p.id()
                                        + ", which does not allow it; expected a stand that does")));
            }
        }
        return found;
    }
}
