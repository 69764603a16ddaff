package fayline.flow.audit;

import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker.Stretch;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A step together with where the plan puts it.
 *
 * @param work the step
 * @param planned its place in the plan
 */
record Job(WorkStep work, PlannedStep planned) {
    String id() {
        return work.id();
    }

    boolean begun() {
        return work.state() != WorkStep.State.TODO;
    }

    /** Whether the hands of a running step have not left it. */
    boolean handsAtIt() {
        return work.state() == WorkStep.State.RUNNING
                && work.actual().handsEnded().isEmpty()
                && work.actual().ended().isEmpty()
                && !work.hands().isEmpty();
    }

    /** The stretches of the hands; for what has begun and lists none, one from start to the hands' end. */
    List<Stretch> stretches() {
        if (planned.stretches().isEmpty()
                && begun()
                && !work.hands().isEmpty()
                && planned.handsEnd().isAfter(planned.start())) {
            return List.of(new Stretch(planned.start(), planned.handsEnd()));
        }
        return planned.stretches();
    }

    Set<String> crew() {
        return new LinkedHashSet<>(planned.people());
    }

    /** Minutes of all stretches together. */
    long handsMinutes() {
        return stretches().stream()
                .mapToLong(s -> Minutes.between(s.from(), s.to()))
                .sum();
    }

    /** The minutes listed for exactly this many people. */
    OptionalInt listedMinutes(int people) {
        return work.hands().stream()
                .filter(c -> c.people() == people)
                .mapToInt(WorkStep.CrewTime::minutes)
                .findFirst();
    }
}
