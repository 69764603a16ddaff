package fayline.flow.result.expand;

import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How far each step is. A step whose hands have left runs on until its unattended time is over by the air that was read, or
 * until a step that waits for its end was begun all the same. A step without hands begins by itself when what it waits for is
 * over.
 */
final class Progress {
    private final ShopState shop;
    private final ClockBook clocks;
    private final Map<String, Draft> drafts = new LinkedHashMap<>();
    private final Map<String, List<Draft>> followers = new HashMap<>();
    private final Map<String, Actual> actual = new HashMap<>();

    /**
     * What must be known of a step.
     *
     * @param id the step's id
     * @param local the id within the project
     * @param hasHands whether hands are needed
     * @param alone time without people
     * @param after what it waits for
     */
    record Draft(String id, String local, boolean hasHands, Span alone, List<Link> after) {}

    Progress(ShopState shop, ClockBook clocks, List<Draft> steps) {
        this.shop = shop;
        this.clocks = clocks;
        for (Draft d : steps) {
            drafts.put(d.id(), d);
            for (Link l : d.after()) {
                followers.computeIfAbsent(l.step(), k -> new ArrayList<>()).add(d);
            }
        }
    }

    /** What happened to a step. */
    Actual actual(String id) {
        Actual known = actual.get(id);
        if (known != null) {
            return known;
        }
        actual.put(id, Actual.NONE);
        Draft draft = drafts.get(id);
        Actual found = draft == null ? Actual.NONE : find(draft);
        actual.put(id, found);
        return found;
    }

    /** How far a step is. */
    State state(String id) {
        Actual a = actual(id);
        if (a.started().isEmpty()) {
            return State.TODO;
        }
        return a.ended().isPresent() ? State.DONE : State.RUNNING;
    }

    private Actual find(Draft draft) {
        StepFacts facts = shop.steps().get(draft.local());
        if (facts == null) {
            return draft.hasHands() ? Actual.NONE : byItself(draft);
        }
        Optional<Instant> left = facts.handsEnded();
        if (left.isEmpty() && !draft.hasHands()) {
            left = Optional.of(facts.started());
        }
        Optional<Instant> finished = left;
        Optional<Instant> ended = facts.ended().or(() -> ended(draft, finished));
        return new Actual(
                Optional.of(facts.started()), finished.or(() -> ended), ended, facts.people(), facts.places());
    }

    private Optional<Instant> ended(Draft draft, Optional<Instant> left) {
        if (left.isEmpty()) {
            return Optional.empty();
        }
        Instant from = left.get();
        Optional<Instant> cured = clocks.over(draft.alone(), from).filter(t -> !t.isAfter(shop.now()));
        Optional<Instant> disturbed = followers.getOrDefault(draft.id(), List.of()).stream()
                .filter(f -> f.after().stream()
                        .anyMatch(l -> l.step().equals(draft.id()) && l.from().equals("end")))
                .flatMap(f -> Optional.ofNullable(shop.steps().get(f.local())).stream())
                .map(StepFacts::started)
                .filter(t -> !t.isBefore(from))
                .min(Instant::compareTo);
        if (cured.isPresent() && disturbed.isPresent()) {
            return cured.get().isBefore(disturbed.get()) ? cured : disturbed;
        }
        return cured.or(() -> disturbed);
    }

    private Actual byItself(Draft draft) {
        if (draft.after().isEmpty()) {
            return Actual.NONE;
        }
        Instant start = Instant.MIN;
        for (Link link : draft.after()) {
            Actual earlier = actual(link.step());
            Optional<Instant> from = switch (link.from()) {
                case "start" -> earlier.started();
                case "hands-end" -> earlier.handsEnded();
                default -> earlier.ended();
            };
            Optional<Instant> open = from.flatMap(f -> clocks.over(link.opens(), f));
            if (open.isEmpty() || open.get().isAfter(shop.now())) {
                return Actual.NONE;
            }
            start = open.get().isAfter(start) ? open.get() : start;
        }
        Optional<Instant> begun = Optional.of(start);
        return new Actual(begun, begun, ended(draft, begun), List.of(), List.of());
    }
}
