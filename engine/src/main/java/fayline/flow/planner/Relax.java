package fayline.flow.planner;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A step of which requirements are let go; {@link #step()} is what is left. */
final class Relax {
    private final WorkStep from;
    private List<CrewTime> hands;
    private final Map<String, Integer> skills;
    private String air;
    private boolean interruptible;
    private List<Link> after;
    private Optional<Instant> notBefore;
    private List<String> awaits;
    private List<Integer> watchMin;
    private boolean accompanied;

    Relax(WorkStep from) {
        this.from = from;
        hands = from.hands();
        skills = new HashMap<>(from.skills());
        air = from.air();
        interruptible = from.interruptible();
        after = from.after();
        notBefore = from.notBefore();
        awaits = from.awaits();
        watchMin = from.watchMin();
        accompanied = from.accompanied();
    }

    Relax anyDay() {
        notBefore = Optional.empty();
        return this;
    }

    Relax withoutDeliveries() {
        awaits = List.of();
        return this;
    }

    Relax unwatched() {
        watchMin = List.of();
        return this;
    }

    Relax unaccompanied() {
        accompanied = false;
        return this;
    }

    Relax stopping() {
        interruptible = true;
        return this;
    }

    Relax quiet() {
        air = "quiet";
        return this;
    }

    /** By one, who then needs every skill that is asked for. */
    Relax alone() {
        hands = List.of(new CrewTime(1, hands.get(0).minutes()));
        skills.replaceAll((skill, n) -> Math.min(1, n));
        return this;
    }

    Relax withoutSkill(String skill) {
        skills.remove(skill);
        return this;
    }

    Relax openWindow(String earlier) {
        after = after.stream()
                .map(l -> l.step().equals(earlier)
                        ? new Link(l.step(), l.from(), l.opens(), Optional.empty(), l.miss())
                        : l)
                .toList();
        return this;
    }

    WorkStep step() {
        return new WorkStep(
                from.id(),
                from.project(),
                from.made(),
                from.title(),
                from.kind(),
                hands,
                skills,
                air,
                interruptible,
                from.alone(),
                after,
                notBefore,
                awaits,
                watchMin,
                accompanied,
                from.state(),
                from.actual());
    }
}
