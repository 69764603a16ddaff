package fayline.flow.planner;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A step with one requirement let go. */
final class Relax {
    private Relax() {}

    static WorkStep anyDay(WorkStep s) {
        return of(
                s,
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.after(),
                true,
                s.awaits(),
                s.watchMin(),
                s.accompanied());
    }

    static WorkStep withoutDeliveries(WorkStep s) {
        return of(
                s,
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.after(),
                false,
                List.of(),
                s.watchMin(),
                s.accompanied());
    }

    static WorkStep unwatched(WorkStep s) {
        return of(
                s,
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.after(),
                false,
                s.awaits(),
                List.of(),
                s.accompanied());
    }

    static WorkStep unaccompanied(WorkStep s) {
        return of(
                s,
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.after(),
                false,
                s.awaits(),
                s.watchMin(),
                false);
    }

    static WorkStep stopping(WorkStep s) {
        return of(s, s.hands(), s.skills(), s.air(), true, s.after(), false, s.awaits(), s.watchMin(), s.accompanied());
    }

    static WorkStep quiet(WorkStep s) {
        return of(
                s,
                s.hands(),
                s.skills(),
                "quiet",
                s.interruptible(),
                s.after(),
                false,
                s.awaits(),
                s.watchMin(),
                s.accompanied());
    }

    static WorkStep alone(WorkStep s) {
        List<CrewTime> one = List.of(new CrewTime(1, s.hands().get(0).minutes()));
        Map<String, Integer> skills = new HashMap<>(s.skills());
        skills.replaceAll((skill, n) -> Math.min(1, n));
        return of(
                s,
                one,
                skills,
                s.air(),
                s.interruptible(),
                s.after(),
                false,
                s.awaits(),
                s.watchMin(),
                s.accompanied());
    }

    static WorkStep withoutSkill(WorkStep s, String skill) {
        Map<String, Integer> skills = new HashMap<>(s.skills());
        skills.remove(skill);
        return of(
                s,
                s.hands(),
                skills,
                s.air(),
                s.interruptible(),
                s.after(),
                false,
                s.awaits(),
                s.watchMin(),
                s.accompanied());
    }

    static WorkStep openWindow(WorkStep s, String after) {
        List<Link> links = s.after().stream()
                .map(l -> l.step().equals(after)
                        ? new Link(l.step(), l.from(), l.opens(), Optional.empty(), l.miss())
                        : l)
                .toList();
        return of(
                s,
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                links,
                false,
                s.awaits(),
                s.watchMin(),
                s.accompanied());
    }

    private static WorkStep of(
            WorkStep s,
            List<CrewTime> hands,
            Map<String, Integer> skills,
            String air,
            boolean interruptible,
            List<Link> after,
            boolean anyDay,
            List<String> awaits,
            List<Integer> watch,
            boolean accompanied) {
        return new WorkStep(
                s.id(),
                s.project(),
                s.made(),
                s.title(),
                s.kind(),
                hands,
                skills,
                air,
                interruptible,
                s.alone(),
                after,
                anyDay ? Optional.empty() : s.notBefore(),
                awaits,
                watch,
                accompanied,
                s.state(),
                s.actual());
    }
}
