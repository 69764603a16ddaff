package fayline.flow.planner.goal;

import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.goal.PlanScore.Kind;
import fayline.flow.planner.goal.PlanScore.Term;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Scores plans of one work by one goal. It keeps what it needs of the work, so that many plans can be compared quickly. */
public final class PlanScorer {
    /** An unplanned step outweighs all else that a season of work can differ by. */
    public static final double UNPLANNED_HOURS = 10_000;
    /** A start that moves by less is no move to the crew. */
    public static final int NOTICED_MIN = 15;

    /** What the crew was told of the time before this does not move unless it must. */
    public static final Duration NEAR = Duration.ofDays(2);

    private static final Duration FORTNIGHT = Duration.ofDays(14);
    private static final double MIN_PER_HOUR = 60;

    private final Work work;
    private final PlanGoal goal;
    private final Map<String, WorkStep> steps = new HashMap<>();
    private final Map<String, PublishedPlan.Step> told = new HashMap<>();
    private final Map<String, Integer> prices = new HashMap<>();
    private final Map<String, Double> shares;
    private final double presentInFortnight;
    /** Steps that the crew was told of sets that are others here. */
    private final Set<String> otherSets = new HashSet<>();

    /**
     * A scorer.
     *
     * @param work the work
     * @param goal what is wanted
     */
    public PlanScorer(Work work, PlanGoal goal) {
        this.work = work;
        this.goal = goal;
        for (WorkStep s : work.steps()) {
            steps.put(s.id(), s);
            for (WorkStep.Link link : s.after()) {
                link.miss().ifPresent(m -> prices.merge(s.id() + " " + link.step(), m.personMinutes(), Integer::sum));
            }
        }
        shares = shares(work);
        presentInFortnight = present(work.now().plus(FORTNIGHT));
        goal.told().ifPresent(t -> t.steps().forEach(s -> told.put(s.step(), s)));
        for (Work other : work.sets().otherwise()) {
            other.steps().stream()
                    .map(WorkStep::id)
                    .filter(id -> told.containsKey(id) && !steps.containsKey(id))
                    .forEach(otherSets::add);
        }
    }

    /**
     * Scores a plan.
     *
     * @param plan a plan of the work
     * @return every term with its weight; the total is in hours of a later finish
     */
    public PlanScore score(Plan plan) {
        PlanWeights w = goal.weights();
        Map<String, Instant> ends = new HashMap<>();
        plan.steps().forEach(p -> ends.put(p.step(), p.end()));
        return new PlanScore(List.of(
                new Term(Kind.UNPLANNED, plan.unplanned().size(), UNPLANNED_HOURS),
                new Term(Kind.LATE, lateHours(ends), w.late()),
                new Term(Kind.FINISH, plan.finish().map(this::hoursFromNow).orElse(0.0), w.finish()),
                new Term(Kind.PARTS, partsHours(plan), w.parts()),
                new Term(Kind.WINDOWS, windowHours(plan), w.window()),
                new Term(Kind.IDLE, idleHours(plan), w.idle()),
                new Term(Kind.EVENING, eveningHours(plan), w.evening()),
                new Term(Kind.MOVED, moved(plan), w.moved())));
    }

    private double hoursFromNow(Instant at) {
        return Math.max(0, minutes(work.now(), at)) / MIN_PER_HOUR;
    }

    private static double minutes(Instant from, Instant to) {
        return Duration.between(from, to).toSeconds() / 60.0;
    }

    private double lateHours(Map<String, Instant> ends) {
        double late = 0;
        for (PlanGoal.Dated d : goal.dates()) {
            double most = 0;
            for (String id : d.steps()) {
                // Steps of other sets than these are not wanted.
                if (!steps.containsKey(id)) {
                    continue;
                }
                // What is not planned is late at least until nothing more is known.
                most = Math.max(most, minutes(d.due(), ends.getOrDefault(id, work.horizon())));
            }
            late += most / MIN_PER_HOUR;
        }
        return late;
    }

    private double partsHours(Plan plan) {
        Map<String, Double> ends = new HashMap<>();
        for (PlannedStep p : plan.steps()) {
            WorkStep s = steps.get(p.step());
            if (s != null && s.state() != State.DONE) {
                ends.merge(s.project() + "/" + s.made(), hoursFromNow(p.end()), Math::max);
            }
        }
        double sum = 0;
        double all = 0;
        for (Map.Entry<String, Double> e : ends.entrySet()) {
            double share = shares.getOrDefault(e.getKey(), 1.0);
            sum += share * e.getValue();
            all += share;
        }
        return all > 0 ? sum / all : 0;
    }

    /**
     * How much the end of something made counts among all: 1, but a set only by its share of the group's pieces, so that plans in
     * more sets and in fewer can be compared.
     *
     * @param work the work
     * @return shares below 1 by {@code project/made}
     */
    public static Map<String, Double> shares(Work work) {
        Map<String, Double> shares = new HashMap<>();
        for (PieceGroup g : work.sets().groups()) {
            g.sets().forEach(s -> shares.put(g.project() + "/" + s.made(), s.size() / (double) g.pieces()));
        }
        return shares;
    }

    private double windowHours(Plan plan) {
        double hours = 0;
        for (PlannedStep p : plan.steps()) {
            for (String missed : p.missed()) {
                hours += prices.getOrDefault(p.step() + " " + missed, 0) / MIN_PER_HOUR;
            }
        }
        return hours;
    }

    private double idleHours(Plan plan) {
        Instant last = plan.finish().orElse(work.now());
        Instant until = work.now().plus(FORTNIGHT);
        Instant to = last.isBefore(until) ? last : until;
        double present = to.equals(until) ? presentInFortnight : present(to);
        for (PlannedStep p : plan.steps()) {
            present -= needed(p, to);
        }
        return Math.max(0, present) / MIN_PER_HOUR;
    }

    /** Person-minutes in the shop, breaks aside, from now to a moment. */
    private double present(Instant to) {
        double present = 0;
        for (Worker p : work.people()) {
            for (Stretch s : p.present()) {
                double in = within(s, work.now(), to);
                present += in;
                for (Stretch b : in > 0 ? p.breaks() : List.<Stretch>of()) {
                    present -= within(b, later(s.from(), work.now()), earlier(s.to(), to));
                }
            }
        }
        return present;
    }

    /** Person-minutes of a step before a moment, as far as the crew that takes least would need them. */
    private double needed(PlannedStep p, Instant to) {
        WorkStep s = steps.get(p.step());
        if (s == null || s.hands().isEmpty() || p.people().isEmpty()) {
            return 0;
        }
        double all = 0;
        double before = 0;
        for (Stretch stretch : p.stretches()) {
            all += minutes(stretch.from(), stretch.to()) * p.people().size();
            before += within(stretch, work.now(), to) * p.people().size();
        }
        return all <= 0 ? 0 : before * Math.min(1, leastPersonMinutes(s) / all);
    }

    private static double within(Stretch s, Instant from, Instant to) {
        return Math.max(0, minutes(later(s.from(), from), earlier(s.to(), to)));
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }

    private double eveningHours(Plan plan) {
        double hours = 0;
        for (PlannedStep p : plan.steps()) {
            WorkStep s = steps.get(p.step());
            if (s != null && s.state() == State.TODO) {
                for (Stretch stretch : p.stretches()) {
                    hours += evening(stretch) * p.people().size() / MIN_PER_HOUR;
                }
            }
        }
        return hours;
    }

    private double evening(Stretch s) {
        LocalDate day = s.from().atZone(work.zone()).toLocalDate();
        LocalDate last = s.to().atZone(work.zone()).toLocalDate();
        double minutes = 0;
        for (; !day.isAfter(last); day = day.plusDays(1)) {
            Instant from =
                    day.atTime(goal.weights().eveningFrom()).atZone(work.zone()).toInstant();
            minutes += within(s, from, day.plusDays(1).atStartOfDay(work.zone()).toInstant());
        }
        return minutes;
    }

    private double moved(Plan plan) {
        return told.isEmpty() ? 0 : plan.steps().stream().filter(this::isMoved).count() + otherSets.size();
    }

    /**
     * Whether a step not begun lies elsewhere, or with others, than the crew was told.
     *
     * @param p the step as planned now
     * @return no, where nothing was told of it
     */
    public boolean isMoved(PlannedStep p) {
        PublishedPlan.Step t = told.get(p.step());
        WorkStep s = steps.get(p.step());
        if (t == null || s == null || s.state() != State.TODO) {
            return false;
        }
        return Math.abs(minutes(t.start(), p.start())) >= NOTICED_MIN
                || !new HashSet<>(t.people()).equals(new HashSet<>(p.people()))
                || !new HashSet<>(t.places()).equals(new HashSet<>(p.places()));
    }

    /**
     * Whether the crew was told that a step begins within the next two days.
     *
     * @param step a step's id
     */
    public boolean isNear(String step) {
        PublishedPlan.Step t = told.get(step);
        return t != null
                && !t.start().isBefore(work.now())
                && t.start().isBefore(work.now().plus(NEAR));
    }

    /**
     * How many steps moved though the crew was told that they begin within two days.
     *
     * @param plan a plan of the work
     */
    public long nearMoved(Plan plan) {
        return nearMoved(plan, step -> true);
    }

    /**
     * The same of some steps only.
     *
     * @param plan a plan of the work
     * @param counts of a step's id, whether it counts
     */
    public long nearMoved(Plan plan, Predicate<String> counts) {
        long gone = otherSets.stream().filter(s -> isNear(s) && counts.test(s)).count();
        return gone
                + plan.steps().stream()
                        .filter(p -> isNear(p.step()) && counts.test(p.step()) && isMoved(p))
                        .count();
    }

    private static int leastPersonMinutes(WorkStep step) {
        return step.hands().stream()
                .mapToInt((CrewTime h) -> h.people() * h.minutes())
                .min()
                .orElse(0);
    }
}
