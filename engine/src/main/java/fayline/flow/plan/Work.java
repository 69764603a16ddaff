package fayline.flow.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;

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
        List<WorkWish> wishes) {
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

    /** Work about which the lead has decided nothing beforehand. */
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
                List.of());
    }

    /** The same with other people. */
    public Work withPeople(List<Worker> others) {
        return with(others, places, deliveries, steps, holds);
    }

    /** The same with other places and what stays in them. */
    public Work withPlaces(List<Place> others, List<Hold> stays) {
        return with(people, others, deliveries, steps, stays);
    }

    /** The same with other deliveries. */
    public Work withDeliveries(List<Awaited> others) {
        return with(people, places, others, steps, holds);
    }

    /** The same with other steps and what stays in their places. */
    public Work withSteps(List<WorkStep> others, List<Hold> stays) {
        return with(people, places, deliveries, others, stays);
    }

    /** The same with other wishes. */
    public Work withWishes(List<WorkWish> others) {
        return new Work(
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
                others);
    }

    /** The same without one wish. */
    public Work withoutWish(String id) {
        return withWishes(wishes.stream().filter(w -> !w.id().equals(id)).toList());
    }

    private Work with(
            List<Worker> crew, List<Place> where, List<Awaited> coming, List<WorkStep> what, List<Hold> stays) {
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
                wishes);
    }

    /**
     * An awaited delivery.
     *
     * @param id the delivery
     * @param what what comes
     * @param expected when it is counted on
     */
    public record Awaited(String id, String what, Instant expected) {}
}
