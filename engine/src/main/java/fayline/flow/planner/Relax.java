package fayline.flow.planner;

import fayline.flow.plan.ChangedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Requirements of a step let go, of which not all goes or more than one thing with it. */
final class Relax {
    private Relax() {}

    /** By one, who then needs every skill that is asked for. */
    static ChangedStep alone(WorkStep s) {
        Map<String, Integer> skills = new HashMap<>(s.skills());
        skills.replaceAll((skill, n) -> Math.min(1, n));
        return new ChangedStep(s)
                .hands(List.of(new CrewTime(1, s.hands().get(0).minutes())))
                .skills(skills);
    }

    static ChangedStep withoutSkill(WorkStep s, String skill) {
        Map<String, Integer> skills = new HashMap<>(s.skills());
        skills.remove(skill);
        return new ChangedStep(s).skills(skills);
    }

    static ChangedStep openWindow(WorkStep s, String earlier) {
        return new ChangedStep(s)
                .after(s.after().stream()
                        .map(l -> l.step().equals(earlier)
                                ? new Link(l.step(), l.from(), l.opens(), Optional.empty(), l.miss())
                                : l)
                        .toList());
    }
}
