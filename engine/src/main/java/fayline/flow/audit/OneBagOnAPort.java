package fayline.flow.audit;

import fayline.flow.plan.Place;
import java.util.List;

/** A vacuum port pulls on one bag at a time. */
final class OneBagOnAPort implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        return TakenPlaces.twice(audited, Place.Kind.PORT, this);
    }
}
