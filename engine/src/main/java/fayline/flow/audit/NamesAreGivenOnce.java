package fayline.flow.audit;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** In the work, every step, person, place, clock, delivery and hold has an id of its own. */
final class NamesAreGivenOnce implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        Work work = audited.work();
        List<BrokenRule> found = new ArrayList<>();
        check("step", work.steps(), WorkStep::id, found);
        check("person", work.people(), Worker::id, found);
        check("place", work.places(), Place::id, found);
        check("clock", work.clocks(), CureClock::id, found);
        check("delivery", work.deliveries(), Work.Awaited::id, found);
        check("hold", work.holds(), Hold::id, found);
        return found;
    }

    private <T> void check(String what, List<T> things, Function<T, String> id, List<BrokenRule> found) {
        Set<String> seen = new HashSet<>();
        for (T thing : things) {
            if (!seen.add(id.apply(thing))) {
                List<String> steps = what.equals("step") ? List.of(id.apply(thing)) : List.of();
                found.add(new BrokenRule(
                        name(), steps, "the work has the " + what + " " + id.apply(thing) + " twice; expected once"));
            }
        }
    }
}
