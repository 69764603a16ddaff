package fayline.flow.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The work of a shop from a moment on.
 *
 * @param version the program's version
 * @param definition hash of the definition it was made from
 * @param revision revision of the design
 * @param now the moment from which is planned; nothing may be put before it
 * @param zone the shop's zone, for showing times
 * @param horizon the moment up to which hours of people are known
 * @param dustSettlesMin minutes that a room's air must settle after dusty work before wet work
 * @param people who may work and when
 * @param places moulds, stands and ports
 * @param clocks how fast each chemistry runs over the expected temperatures
 * @param deliveries what is awaited, for reasons and pages
 * @param steps the work, done and running included
 * @param holds what stays occupied over several steps
 * @param wishes what the lead has decided about steps beforehand
 * @param hands what second hands take over from first ones
 * @param sets what is made in sets, and in which others it might be
 */
public record Work(
        String version,
        String definition,
        String revision,
        Instant now,
        ZoneId zone,
        Instant horizon,
        int dustSettlesMin,
        List<Worker> people,
        List<Place> places,
        List<CureClock> clocks,
        List<Awaited> deliveries,
        List<WorkStep> steps,
        List<Hold> holds,
        List<WorkWish> wishes,
        OppositeHands hands,
        SetChoice sets) {
    /** Copies the lists. */
    public Work {
        people = List.copyOf(people);
        places = List.copyOf(places);
        clocks = List.copyOf(clocks);
        deliveries = List.copyOf(deliveries);
        steps = List.copyOf(steps);
        holds = List.copyOf(holds);
        wishes = List.copyOf(wishes);
    }

    /** Work about which the lead has decided nothing beforehand, in which no hand follows another and no sets are chosen. */
    public Work(
            String version,
            String definition,
            String revision,
            Instant now,
            ZoneId zone,
            Instant horizon,
            int dustSettlesMin,
            List<Worker> people,
            List<Place> places,
            List<CureClock> clocks,
            List<Awaited> deliveries,
            List<WorkStep> steps,
            List<Hold> holds) {
        this(
                version,
                definition,
                revision,
                now,
                zone,
                horizon,
                dustSettlesMin,
                people,
                places,
                clocks,
                deliveries,
                steps,
                holds,
                List.of(),
                OppositeHands.NONE,
                SetChoice.NONE);
    }

    /** The same with other people, in whichever sets. */
    public Work withPeople(List<Worker> others) {
        return with(others, places, deliveries, steps, holds, wishes, hands, each(w -> w.withPeople(others)));
    }

    /** The same with other places and what stays in them; its sets are chosen. */
    public Work withPlaces(List<Place> others, List<Hold> stays) {
        return with(people, others, deliveries, steps, stays, wishes, hands, chosen());
    }

    /** The same with other deliveries, in whichever sets. */
    public Work withDeliveries(List<Awaited> others) {
        return with(people, places, others, steps, holds, wishes, hands, each(w -> w.withDeliveries(others)));
    }

    /** The same with other steps and what stays in their places; its sets are chosen. */
    public Work withSteps(List<WorkStep> others, List<Hold> stays) {
        return with(people, places, deliveries, others, stays, wishes, hands, chosen());
    }

    /** The same with other hands that follow each other. */
    public Work withHands(OppositeHands others) {
        return with(people, places, deliveries, steps, holds, wishes, others, sets);
    }

    /** The same with other sets. */
    public Work withSets(SetChoice others) {
        return with(people, places, deliveries, steps, holds, wishes, hands, others);
    }

    private SetChoice each(UnaryOperator<Work> change) {
        return new SetChoice(
                sets.groups(), sets.otherwise().stream().map(change).toList());
    }

    /**
     * The same with a change, in whichever sets.
     *
     * @param change changes work whose sets are chosen
     */
    public Work inEach(UnaryOperator<Work> change) {
        return change.apply(this).withSets(each(change));
    }

    private SetChoice chosen() {
        return new SetChoice(sets.groups(), List.of());
    }

    /** This work and the same in other sets, each with its own sets only. This one leads. */
    public List<Work> divisions() {
        return Stream.concat(Stream.of(withSets(chosen())), sets.otherwise().stream())
                .toList();
    }

    /**
     * The same work in the sets of a plan, with all others as what it might be otherwise.
     *
     * @param plan a plan of this work in whichever sets
     * @return the work with which the plan has most steps in common; this one where no other has more
     */
    public Work inSetsOf(Plan plan) {
        if (sets.otherwise().isEmpty()) {
            return this;
        }
        Set<String> has = new HashSet<>();
        plan.steps().forEach(p -> has.add(p.step()));
        plan.unplanned().forEach(u -> has.add(u.step()));
        List<Work> all = divisions();
        return all.stream()
                .max(Comparator.comparingLong((Work w) -> w.shares(has)))
                .filter(w -> w.shares(has) > all.get(0).shares(has))
                .map(w -> w.beside(all))
                .orElse(this);
    }

    /** Whether another is this work, in whichever of its sets. */
    public boolean isSame(Work other) {
        return equals(other)
                || (!sets.otherwise().isEmpty() && new HashSet<>(divisions()).equals(new HashSet<>(other.divisions())));
    }

    /**
     * The same work in the sets of one of its divisions, with all others as what it might be otherwise.
     *
     * @param division one of {@link #divisions}
     */
    public Work inSetsOf(Work division) {
        List<Work> all = divisions();
        return all.get(0).equals(division) ? this : division.beside(all);
    }

    private long shares(Set<String> ids) {
        return steps.stream().filter(s -> ids.contains(s.id())).count();
    }

    private Work beside(List<Work> all) {
        return withSets(new SetChoice(
                sets.groups(), all.stream().filter(w -> !w.equals(this)).toList()));
    }

    /** The same with other wishes; one for a step of a set leaves only divisions that have this set. */
    public Work withWishes(List<WorkWish> others) {
        if (sets.otherwise().isEmpty()) {
            return wishing(others);
        }
        List<Work> all = divisions();
        List<Work> fitting = all.stream()
                .filter(w -> others.stream()
                        .noneMatch(x -> !w.has(x.step()) && all.stream().anyMatch(o -> o.has(x.step()))))
                .toList();
        List<Work> left = (fitting.isEmpty() ? all : fitting)
                .stream().map(w -> w.wishing(others)).toList();
        return left.get(0).beside(left);
    }

    private boolean has(String step) {
        return steps.stream().anyMatch(s -> s.id().equals(step));
    }

    private Work wishing(List<WorkWish> others) {
        return with(people, places, deliveries, steps, holds, others, hands, sets);
    }

    /** The same without one wish. */
    public Work withoutWish(String id) {
        return withWishes(wishes.stream().filter(w -> !w.id().equals(id)).toList());
    }

    private Work with(
            List<Worker> crew,
            List<Place> where,
            List<Awaited> coming,
            List<WorkStep> what,
            List<Hold> stays,
            List<WorkWish> wished,
            OppositeHands follow,
            SetChoice divided) {
        return new Work(
                version,
                definition,
                revision,
                now,
                zone,
                horizon,
                dustSettlesMin,
                crew,
                where,
                clocks,
                coming,
                what,
                stays,
                wished,
                follow,
                divided);
    }

    /**
     * An awaited delivery.
     *
     * @param id the delivery
     * @param what what comes
     * @param expected when it is counted on; after the horizon where nobody can say
     */
    public record Awaited(String id, String what, Instant expected) {}
}
