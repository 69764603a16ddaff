package fayline.flow.audit;

import fayline.flow.plan.Place;
import java.util.List;

/** A stand holds one job at a time, nights included. */
final class OneJobOnAStandAtATime implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        return TakenPlaces.twice(audited, Place.Kind.STAND, this);
    }
}
