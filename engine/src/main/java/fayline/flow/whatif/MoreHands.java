package fayline.flow.whatif;

import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import java.util.ArrayList;
import java.util.List;

/**
 * A step done by more people than its recipe calls useful, who share its person-minutes evenly: the best that more hands can do.
 *
 * @param step which
 * @param people how many at once
 */
public record MoreHands(String step, int people) implements Change {
    @Override
    public Work in(Work w) {
        return w.withSteps(
                w.steps().stream().map(s -> s.id().equals(step) ? helped(s) : s).toList(), w.holds());
    }

    private WorkStep helped(WorkStep s) {
        if (s.hands().isEmpty()) {
            return s;
        }
        CrewTime most = s.hands().get(s.hands().size() - 1);
        if (most.people() >= people) {
            return s;
        }
        List<CrewTime> hands = new ArrayList<>(s.hands());
        hands.add(new CrewTime(people, (int) Math.ceil((double) most.people() * most.minutes() / people)));
        return s.withHands(hands);
    }
}
