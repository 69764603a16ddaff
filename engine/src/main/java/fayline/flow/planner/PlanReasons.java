package fayline.flow.planner;

import fayline.flow.plan.OppositeHands.Taught;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.PlanSlack.Stay;
import fayline.flow.planner.serial.TimeLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Why each step of a plan begins when it does and how far it may slip. Read off the finished plan, whoever made it: the reason
 * is what ended last before the start. It tells what stands in the way now, not what would stand there if that were gone.
 */
public final class PlanReasons {
    /** Ends this close before a start are what it waited for: starts are put on quarter hours. */
    private static final int CLOSE_MIN = 15;

    /** What a step waits for. */
    public enum Cause {
        /** It begins as soon as anything can. */
        NOW,
        /** An earlier step. */
        STEP,
        /** What the first hand of its part will have taught. */
        LESSONS,
        /** Unattended time of an earlier step. */
        CURE,
        /** A window that opens late. */
        WINDOW,
        /** A delivery. */
        DELIVERY,
        /** A set day. */
        DAY,
        /** The lead wishes it no sooner. */
        WISH,
        /** A mould, stand or port. */
        PLACE,
        /** Somebody who is at another step. */
        PERSON,
        /** The air of a room. */
        AIR,
        /** People come in. */
        HOURS,
        /** What comes after must find its window open: it begins late on purpose. */
        NEXT_WINDOW,
        /** Nothing that can be named: other work was put first. */
        ORDER
    }

    /**
     * Why a step begins when it does.
     *
     * @param step the step
     * @param cause what sort of thing it waited for
     * @param on id of the step, place, person or delivery; empty where there is none
     * @param via the step that stood in the way until then, also where it was its person or its place; empty for none
     * @param slipMin minutes by which it may begin later, all else staying: until a later step, its window, its people, its
     *     places or the end of the plan is touched. Clocks are taken to run as they do now
     * @param words the reason as a clause, as {@code waits for the cure of "Bag" until Tue 3 Mar 05:12}
     */
    public record Reason(String step, Cause cause, String on, String via, int slipMin, String words) {}

    /** Something that ended before the step, or else what its start is put down to. */
    record Candidate(int until, Cause cause, String on, String via, String words) {}

    private final Work work;
    private final TimeLine time;
    private final Map<String, WorkStep> steps = new LinkedHashMap<>();
    private final Map<String, PlannedStep> planned = new LinkedHashMap<>();
    private final Map<String, Worker> people = new LinkedHashMap<>();
    private final WishReasons wishes;
    private final List<Stay> stays;
    private final PlanSlack slack;

    private PlanReasons(Work work, Plan plan) {
        this.work = work;
        time = new TimeLine(work);
        wishes = new WishReasons(work, time);
        work.steps().forEach(s -> steps.put(s.id(), s));
        plan.steps().forEach(p -> planned.put(p.step(), p));
        work.people().forEach(p -> people.put(p.id(), p));
        stays = PlanSlack.stays(work, time, planned);
        slack = new PlanSlack(work, plan, time, steps, planned, people, stays);
    }

    /**
     * Reasons for every planned step that has not begun, in the order of the plan.
     *
     * @param work the work
     * @param plan a plan of it that keeps the rules
     * @return the reasons
     */
    public static List<Reason> of(Work work, Plan plan) {
        PlanReasons reasons = new PlanReasons(work, plan);
        List<Reason> all = new ArrayList<>();
        for (PlannedStep p : plan.steps()) {
            WorkStep step = reasons.steps.get(p.step());
            if (step != null && step.state() == WorkStep.State.TODO) {
                all.add(reasons.reason(step, p));
            }
        }
        return List.copyOf(all);
    }

    /**
     * The chain that holds the end of some steps: the one that ends last, what it waited for, what that waited for, back to
     * something that no step holds.
     *
     * @param work the work
     * @param plan a plan of it that keeps the rules
     * @param ends the steps whose last end is asked about
     * @return reasons of the steps on the chain, the last step leading; empty where none of the steps is planned and open
     */
    public static List<Reason> chain(Work work, Plan plan, Set<String> ends) {
        PlanReasons reasons = new PlanReasons(work, plan);
        Optional<PlannedStep> last = plan.steps().stream()
                .filter(p -> ends.contains(p.step()) && reasons.isOpen(p.step()))
                .max(Comparator.comparing(PlannedStep::end).thenComparing(PlannedStep::step));
        List<Reason> chain = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        while (last.isPresent() && seen.add(last.get().step())) {
            PlannedStep p = last.get();
            Reason reason = reasons.reason(Objects.requireNonNull(reasons.steps.get(p.step())), p);
            chain.add(reason);
            last = Optional.ofNullable(reasons.planned.get(reason.via)).filter(b -> reasons.isOpen(b.step()));
        }
        return List.copyOf(chain);
    }

    private boolean isOpen(String step) {
        WorkStep s = steps.get(step);
        return s != null && s.state() == WorkStep.State.TODO;
    }

    private Reason reason(WorkStep step, PlannedStep p) {
        int t = time.floor(p.start());
        List<Candidate> candidates = new ArrayList<>();
        candidates.add(new Candidate(time.floor(work.now()), Cause.NOW, "", "", "begins as soon as it can"));
        links(step, candidates);
        dates(step, candidates);
        places(step, t, candidates);
        air(step, p, t, candidates);
        hands(step, p, t, candidates);
        Candidate last = last(candidates, t);
        Candidate named = t - last.until < CLOSE_MIN ? last : hours(p, t, last).orElseGet(() -> choice(step));
        if (t - last.until >= CLOSE_MIN && named.cause != Cause.HOURS) {
            named = wishes.start(step, t).filter(w -> w.until > last.until).orElse(named);
        }
        return new Reason(step.id(), named.cause, named.on, named.via, slack.of(step, p), named.words);
    }

    private static Candidate last(List<Candidate> candidates, int t) {
        Candidate last = candidates.get(0);
        for (Candidate c : candidates) {
            // Of several that end together the first listed counts: without an earlier step no person and no place
            // would help.
            if (c.until <= t && c.until > last.until) {
                last = c;
            }
        }
        return last;
    }

    private void links(WorkStep step, List<Candidate> into) {
        for (Link link : step.after()) {
            PlannedStep before = planned.get(link.step());
            WorkStep earlier = steps.get(link.step());
            if (before != null && earlier != null) {
                int m = PlanSlack.moment(time, link, before);
                int opens = Math.max(m, time.over(m, link.opens()));
                Cause cause = opens > m ? Cause.WINDOW : Cause.STEP;
                String what = opens > m ? "the window after " : "";
                if (opens == m && !link.from().equals("start") && before.end().isAfter(before.handsEnd())) {
                    boolean end = !link.from().equals("hands-end");
                    cause = end ? Cause.CURE : Cause.STEP;
                    what = end ? "the unattended time of " : "";
                }
                Optional<Taught> taught = taught(step, link);
                if (taught.isPresent()) {
                    cause = Cause.LESSONS;
                    what = "the lessons of " + taught.get().of() + ": " + what;
                }
                into.add(new Candidate(
                        opens,
                        cause,
                        link.step(),
                        link.step(),
                        "waits for " + what + "\"" + earlier.title() + "\" of " + earlier.made() + " until "
                                + time.words(opens)));
            }
        }
    }

    private Optional<Taught> taught(WorkStep step, Link link) {
        return work.hands().lessons().stream()
                .filter(t -> t.step().equals(step.id()) && t.first().equals(link.step()))
                .findFirst();
    }

    private void dates(WorkStep step, List<Candidate> into) {
        step.notBefore()
                .ifPresent(d -> into.add(new Candidate(
                        time.ceil(d), Cause.DAY, "", "", "is not to begin before " + time.words(time.ceil(d)))));
        for (Work.Awaited d : work.deliveries()) {
            if (step.awaits().contains(d.id())) {
                int at = time.ceil(d.expected());
                into.add(new Candidate(
                        at,
                        Cause.DELIVERY,
                        d.id(),
                        "",
                        "waits for the delivery of " + d.what() + ", " + time.words(at)));
            }
        }
    }

    private void places(WorkStep step, int t, List<Candidate> into) {
        for (Stay own : stays) {
            if (own.hold().steps().contains(step.id()) && own.from() == t) {
                for (Stay other : stays) {
                    Optional<String> shared =
                            other.hold().id().equals(own.hold().id()) || other.to() > t
                                    ? Optional.empty()
                                    : other.places().stream()
                                            .filter(own.places()::contains)
                                            .findFirst();
                    shared.ifPresent(place -> into.add(new Candidate(
                            other.to(),
                            Cause.PLACE,
                            place,
                            last(other),
                            "waits for " + placeName(place) + ", taken until " + time.words(other.to())
                                    + wishes.clause(step, WorkWish.Kind.AT, place))));
                }
            }
        }
    }

    /** The step of a stay that ends last. */
    private String last(Stay stay) {
        String last = "";
        int to = -TimeLine.FOREVER;
        for (String id : stay.hold().steps()) {
            PlannedStep p = planned.get(id);
            if (p != null && time.floor(p.end()) >= to) {
                to = time.floor(p.end());
                last = id;
            }
        }
        return last;
    }

    private String placeName(String id) {
        return work.places().stream()
                .filter(p -> p.id().equals(id))
                .map(p -> p.name())
                .findFirst()
                .orElse(id);
    }

    private List<String> rooms(PlannedStep p) {
        return work.places().stream()
                .filter(x -> p.places().contains(x.id()) && !x.room().isEmpty())
                .map(x -> x.room())
                .toList();
    }

    private void air(WorkStep step, PlannedStep p, int t, List<Candidate> into) {
        String against = step.air().equals("wet") ? "dust" : step.air().equals("dust") ? "wet" : "";
        int settles = against.equals("dust") ? work.dustSettlesMin() : 0;
        List<String> rooms = rooms(p);
        for (PlannedStep other : planned.values()) {
            WorkStep s = steps.get(other.step());
            if (s != null && s.air().equals(against) && rooms(other).stream().anyMatch(rooms::contains)) {
                int clear = time.floor(other.handsEnd()) + settles;
                if (clear <= t) {
                    into.add(new Candidate(
                            clear,
                            Cause.AIR,
                            other.step(),
                            other.step(),
                            "waits for the air after \"" + s.title() + "\" of " + s.made() + " until "
                                    + time.words(clear)));
                }
            }
        }
    }

    private void hands(WorkStep step, PlannedStep p, int t, List<Candidate> into) {
        for (PlannedStep other : planned.values()) {
            for (String person : other.step().equals(p.step()) ? List.<String>of() : other.people()) {
                if (p.people().contains(person)) {
                    for (Stretch s : other.stretches()) {
                        int to = time.floor(s.to());
                        if (to <= t) {
                            into.add(new Candidate(
                                    to,
                                    Cause.PERSON,
                                    person,
                                    other.step(),
                                    "waits for " + name(person) + ", who is at \"" + title(other.step()) + "\" until "
                                            + time.words(to) + wishes.clause(step, WorkWish.Kind.WITH, person)));
                        }
                    }
                }
            }
        }
    }

    private String name(String person) {
        Worker w = people.get(person);
        return w == null ? person : w.name();
    }

    private String title(String step) {
        WorkStep s = steps.get(step);
        return s == null ? step : s.title();
    }

    /** Something ended while its people were away, or it did not fit in before they left: they come in and begin. */
    private Optional<Candidate> hours(PlannedStep p, int t, Candidate last) {
        for (String person : p.people()) {
            Worker w = people.get(person);
            for (Stretch b : w == null ? List.<Stretch>of() : w.breaks()) {
                int over = time.ceil(b.to());
                if (over <= t && t - over < CLOSE_MIN && last.until >= time.floor(b.from()) && last.until < over) {
                    return Optional.of(new Candidate(
                            last.until, last.cause, last.on, last.via, last.words + ", then for the break to end"));
                }
            }
            for (int i = 0; w != null && i < w.present().size(); i++) {
                int from = time.ceil(w.present().get(i).from());
                if (from <= t && t - from < CLOSE_MIN) {
                    int left = i == 0
                            ? -TimeLine.FOREVER
                            : time.floor(w.present().get(i - 1).to());
                    return Optional.of(
                            last.until > left && last.cause != Cause.NOW
                                    ? new Candidate(
                                            last.until,
                                            last.cause,
                                            last.on,
                                            last.via,
                                            last.words + ", then for people to come in")
                                    : new Candidate(
                                            from, Cause.HOURS, person, "", "begins when " + w.name() + " comes in"));
                }
            }
        }
        return Optional.empty();
    }

    private Candidate choice(WorkStep step) {
        for (WorkStep later : work.steps()) {
            for (Link link : later.after()) {
                if (link.step().equals(step.id()) && link.shuts().isPresent()) {
                    return new Candidate(
                            0,
                            Cause.NEXT_WINDOW,
                            later.id(),
                            later.id(),
                            "begins so late that \"" + later.title() + "\" of " + later.made() + " meets its window");
                }
            }
        }
        return new Candidate(0, Cause.ORDER, "", "", "comes after other work that was put first");
    }
}
