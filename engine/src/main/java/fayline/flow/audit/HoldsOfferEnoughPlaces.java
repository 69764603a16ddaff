package fayline.flow.audit;

import fayline.flow.plan.Hold;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Every hold spans a step and offers as many different known places of its kind as it takes. */
final class HoldsOfferEnoughPlaces implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Hold hold : audited.work().holds()) {
            if (hold.steps().isEmpty()) {
                found.add(new BrokenRule(
                        name(), List.of(), "the hold " + hold.id() + " spans no step; expected at least one"));
            }
            List<String> strange = hold.candidates().stream()
                    .filter(c -> audited.place(c)
                            .filter(p -> p.kind() == hold.kind())
                            .isEmpty())
                    .toList();
            if (!strange.isEmpty()) {
                found.add(new BrokenRule(
                        name(),
                        hold.steps(),
                        "the hold " + hold.id() + " offers " + strange + "; expected places of the work of the kind "
                                + hold.kind()));
            }
            int different = Set.copyOf(hold.candidates()).size();
            if (hold.count() < 1 || different < hold.count()) {
                found.add(new BrokenRule(
                        name(),
                        hold.steps(),
                        "the hold " + hold.id() + " takes " + hold.count() + " of " + different
                                + " places offered; expected at least 1, and no more than are offered"));
            }
        }
        return found;
    }
}
