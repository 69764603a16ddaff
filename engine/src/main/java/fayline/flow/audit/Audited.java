package fayline.flow.audit;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Work and plan, looked up by id. Of what is given twice, the first counts; rules about names report the rest. */
final class Audited {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", Locale.ENGLISH);

    private final Work work;
    private final Plan plan;
    private final Map<String, WorkStep> steps;
    private final Map<String, Worker> workers;
    private final Map<String, Place> places;
    private final Map<String, CureClock> clocks;
    private final Map<String, Work.Awaited> deliveries;
    private final Map<String, Presence> presence = new LinkedHashMap<>();
    private final Map<String, Job> jobs = new LinkedHashMap<>();
    private final List<Occupation> occupations;
    private final List<BrokenRule> displaced;

    Audited(Work work, Plan plan) {
        this.work = work;
        this.plan = plan;
        steps = byId(work.steps(), WorkStep::id);
        workers = byId(work.people(), Worker::id);
        places = byId(work.places(), Place::id);
        clocks = byId(work.clocks(), CureClock::id);
        deliveries = byId(work.deliveries(), Work.Awaited::id);
        workers.forEach((id, worker) -> presence.put(id, Presence.of(worker.present())));
        for (PlannedStep planned : plan.steps()) {
            WorkStep step = steps.get(planned.step());
            if (step != null) {
                jobs.putIfAbsent(step.id(), new Job(step, planned));
            }
        }
        HoldPlaces holds = HoldPlaces.of(this);
        occupations = holds.occupations();
        displaced = holds.broken();
    }

    Work work() {
        return work;
    }

    Plan plan() {
        return plan;
    }

    /** All planned steps that the work knows, in the plan's order. */
    Collection<Job> jobs() {
        return jobs.values();
    }

    /** The planned steps that have not begun. */
    List<Job> todo() {
        return jobs.values().stream().filter(j -> !j.begun()).toList();
    }

    Optional<Job> job(String step) {
        return Optional.ofNullable(jobs.get(step));
    }

    Optional<WorkStep> step(String id) {
        return Optional.ofNullable(steps.get(id));
    }

    Optional<Worker> worker(String id) {
        return Optional.ofNullable(workers.get(id));
    }

    Optional<Place> place(String id) {
        return Optional.ofNullable(places.get(id));
    }

    Optional<CureClock> clock(String id) {
        return Optional.ofNullable(clocks.get(id));
    }

    Optional<Work.Awaited> delivery(String id) {
        return Optional.ofNullable(deliveries.get(id));
    }

    Presence presence(String worker) {
        return presence.getOrDefault(worker, Presence.of(List.of()));
    }

    /** Which hold takes which place when. */
    List<Occupation> occupations() {
        return occupations;
    }

    /** Breaches found while working out which hold takes which place. */
    List<BrokenRule> displaced() {
        return displaced;
    }

    /** How a span's chemistry runs; empty where the span or its clock makes no sense, which rules of the work report. */
    Optional<EquivalentTime> time(WorkStep.Span span) {
        if (!(span.minutes() >= 0) || Double.isInfinite(span.minutes())) {
            return Optional.empty();
        }
        if (span.clock().isEmpty()) {
            return Optional.of(EquivalentTime.ofTime());
        }
        return clock(span.clock()).filter(ClocksRun::runs).map(EquivalentTime::of);
    }

    /** The moment of the earlier step from which a link's spans count; empty where it is not planned. */
    Optional<Instant> moment(WorkStep.Link link) {
        return job(link.step()).map(Job::planned).map(p -> switch (link.from()) {
            case "start" -> p.start();
            case "hands-end" -> p.handsEnd();
            default -> p.end();
        });
    }

    /** A moment on the shop's wall. */
    String tell(Instant moment) {
        return MOMENT.format(moment.atZone(work.zone()));
    }

    private static <T> Map<String, T> byId(List<T> things, Function<T, String> id) {
        Map<String, T> found = new LinkedHashMap<>();
        for (T thing : new ArrayList<>(things)) {
            found.putIfAbsent(id.apply(thing), thing);
        }
        return found;
    }
}
