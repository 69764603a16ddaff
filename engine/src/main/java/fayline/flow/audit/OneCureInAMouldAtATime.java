package fayline.flow.audit;

import fayline.flow.plan.Place;
import java.util.List;

/** A mould holds one part from release to demould, nights included. */
final class OneCureInAMouldAtATime implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        return TakenPlaces.twice(audited, Place.Kind.MOULD, this);
    }
}
