package fayline.flow.planner;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** An invented step in the making: begun from a plain one, changed word by word. */
final class StepDraft {
    private final WorkStep plain;
    private final List<Link> after;
    private Map<String, Integer> skills;
    private boolean stops;
    private Span alone;
    private List<String> awaits;
    private List<Integer> watch;
    private boolean accompanied;
    private State state;
    private Actual actual;

    private StepDraft(WorkStep plain) {
        this.plain = plain;
        after = new ArrayList<>(plain.after());
        skills = plain.skills();
        stops = plain.interruptible();
        alone = plain.alone();
        awaits = plain.awaits();
        watch = plain.watchMin();
        accompanied = plain.accompanied();
        state = plain.state();
        actual = plain.actual();
    }

    static StepDraft of(WorkStep plain) {
        return new StepDraft(plain);
    }

    StepDraft skill(String skill, int n) {
        skills = Map.of(skill, n);
        return this;
    }

    StepDraft stops() {
        stops = true;
        return this;
    }

    StepDraft alone(Span span) {
        alone = span;
        return this;
    }

    /** Waits for a delivery, or for none if the id is empty. */
    StepDraft awaiting(String delivery) {
        awaits = delivery.isEmpty() ? List.of() : List.of(delivery);
        return this;
    }

    StepDraft watch(Integer... minutes) {
        watch = List.of(minutes);
        return this;
    }

    StepDraft accompanied() {
        accompanied = true;
        return this;
    }

    StepDraft as(State now, Actual what) {
        state = now;
        actual = what;
        return this;
    }

    /** Waits for one step alone, or for none if the id is empty. */
    StepDraft only(String earlier) {
        after.clear();
        if (!earlier.isEmpty()) {
            after.add(new Link(earlier, "end", Span.NONE, Optional.empty(), Optional.empty()));
        }
        return this;
    }

    /** Waits for a step; replaces a plain link to the same one. */
    StepDraft link(String earlier, String from, Span opens, Optional<Span> shuts, @Nullable Miss miss) {
        after.removeIf(l -> l.step().equals(earlier));
        after.add(new Link(earlier, from, opens, shuts, Optional.ofNullable(miss)));
        return this;
    }

    WorkStep step() {
        return new WorkStep(
                plain.id(),
                plain.project(),
                plain.made(),
                plain.title(),
                plain.kind(),
                plain.hands(),
                skills,
                plain.air(),
                stops,
                alone,
                after,
                plain.notBefore(),
                awaits,
                watch,
                accompanied,
                state,
                actual);
    }
}
