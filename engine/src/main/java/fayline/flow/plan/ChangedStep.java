package fayline.flow.plan;

import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A step of which some things are otherwise; {@link #step()} is what it becomes. The step that it is made of stays as it is. */
public final class ChangedStep {
    private final WorkStep from;
    private String id;
    private String title;
    private List<CrewTime> hands;
    private Map<String, Integer> skills;
    private String air;
    private boolean interruptible;
    private Span alone;
    private List<Link> after;
    private Optional<Instant> notBefore;
    private List<String> awaits;
    private List<Integer> watchMin;
    private boolean accompanied;

    /**
     * Nothing is otherwise yet.
     *
     * @param from the step
     */
    public ChangedStep(WorkStep from) {
        this.from = from;
        id = from.id();
        title = from.title();
        hands = from.hands();
        skills = from.skills();
        air = from.air();
        interruptible = from.interruptible();
        alone = from.alone();
        after = from.after();
        notBefore = from.notBefore();
        awaits = from.awaits();
        watchMin = from.watchMin();
        accompanied = from.accompanied();
    }

    /** Under another id and title. */
    public ChangedStep named(String otherId, String otherTitle) {
        id = otherId;
        title = otherTitle;
        return this;
    }

    /** With other hands-on minutes by crew size, least crew first. */
    public ChangedStep hands(List<CrewTime> times) {
        hands = times;
        return this;
    }

    /** With other skills, by how many of the crew must have each. */
    public ChangedStep skills(Map<String, Integer> others) {
        skills = others;
        return this;
    }

    /** In other air: {@code wet}, {@code dust} or {@code quiet}. */
    public ChangedStep air(String other) {
        air = other;
        return this;
    }

    /** It may stop over a break or a night. */
    public ChangedStep stopping() {
        interruptible = true;
        return this;
    }

    /** With other time without people after the hands leave. */
    public ChangedStep alone(Span span) {
        alone = span;
        return this;
    }

    /** Waiting for other steps. */
    public ChangedStep after(List<Link> links) {
        after = links;
        return this;
    }

    /** On any day. */
    public ChangedStep anyDay() {
        notBefore = Optional.empty();
        return this;
    }

    /** Waiting for no delivery. */
    public ChangedStep withoutDeliveries() {
        awaits = List.of();
        return this;
    }

    /** Nobody looks at it after the hands leave. */
    public ChangedStep unwatched() {
        watchMin = List.of();
        return this;
    }

    /** No second person need be in the shop. */
    public ChangedStep unaccompanied() {
        accompanied = false;
        return this;
    }

    /** The changed step. */
    public WorkStep step() {
        return new WorkStep(
                id,
                from.project(),
                from.made(),
                title,
                from.kind(),
                hands,
                skills,
                air,
                interruptible,
                alone,
                after,
                notBefore,
                awaits,
                watchMin,
                accompanied,
                from.state(),
                from.actual());
    }
}
