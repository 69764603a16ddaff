package fayline.flow.whatif;

import fayline.flow.plan.ChangedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.planner.PlanSolver;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Work that may not stop and is too long for its least crew on any one day: it is split, helped or moved to a longer day, never
 * planned as one block. Each way out is the smallest of its kind that lets the step be done; what it costs the whole shop is
 * another question.
 */
public final class LongWork {
    /** Minutes that a wet part is left before the next: a night. Common practice, no source; the lead sets it. */
    public static final int NIGHT_MIN = 12 * 60;

    private static final int MOST_PARTS = 6;
    private static final int MOST_DAYS = 10;
    private static final int MOST_TRIES = 30;
    private static final List<LocalTime> LATE = List.of(LocalTime.of(20, 0), LocalTime.of(22, 0), LocalTime.of(23, 59));

    private final Work work;
    private final PlanSolver planner;

    private LongWork(Work work, PlanSolver planner) {
        this.work = work;
        this.planner = planner;
    }

    /**
     * The steps to do that may not stop and take their least crew longer than anybody is in at a stretch.
     *
     * @return in the order of the work
     */
    public static List<WorkStep> in(Work work) {
        long longest = longestStretchMin(work);
        return work.steps().stream()
                .filter(s -> s.state() == State.TODO
                        && !s.interruptible()
                        && !s.hands().isEmpty())
                .filter(s -> s.hands().get(0).minutes() > longest)
                .toList();
    }

    /** The longest time in minutes that one person is in without going home; 0 where nobody comes. */
    public static long longestStretchMin(Work work) {
        return work.people().stream()
                .flatMap(p -> p.present().stream())
                .mapToLong(s -> Duration.between(s.from(), s.to()).toMinutes())
                .max()
                .orElse(0);
    }

    /**
     * The smallest split, the smallest help beyond what the recipe calls useful, and the soonest longer day that let a step be
     * done.
     *
     * @param work the work
     * @param step the step
     * @param planner a quick planner
     * @return at most one of each; help is left out where the recipe's own crew is enough, a longer day where no day is
     */
    public static List<Change> waysOut(Work work, WorkStep step, PlanSolver planner) {
        LongWork asked = new LongWork(work, planner);
        List<Change> ways = new ArrayList<>();
        asked.parts(step).ifPresent(ways::add);
        asked.help(step).ifPresent(ways::add);
        asked.longerDay(step).ifPresent(ways::add);
        return List.copyOf(ways);
    }

    /**
     * What it costs to begin again on hard resin: the dearest missed window after wet work that the step, or else another of the
     * same part, or else other work of its kind has.
     *
     * @return person-minutes; 0 where no such window has a price
     */
    public static int joinPersonMin(Work work, WorkStep step) {
        Set<String> wet = work.steps().stream()
                .filter(s -> s.air().equals("wet"))
                .map(WorkStep::id)
                .collect(Collectors.toSet());
        Predicate<WorkStep> same = s -> s.id().equals(step.id());
        Predicate<WorkStep> part =
                s -> s.made().equals(step.made()) && s.project().equals(step.project());
        Predicate<WorkStep> kind = s -> s.kind().equals(step.kind());
        return Stream.of(same, part, kind)
                .mapToInt(of -> dearest(work.steps().stream().filter(of), wet))
                .filter(min -> min > 0)
                .findFirst()
                .orElse(0);
    }

    private static int dearest(Stream<WorkStep> steps, Set<String> wet) {
        return steps.flatMap(s -> s.after().stream())
                .filter(l -> wet.contains(l.step()))
                .map(Link::miss)
                .flatMap(Optional::stream)
                .mapToInt(Miss::personMinutes)
                .max()
                .orElse(0);
    }

    private Optional<Change> parts(WorkStep step) {
        int rest = step.air().equals("wet") ? NIGHT_MIN : 0;
        int join = joinPersonMin(work, step);
        List<Change> tries = new ArrayList<>();
        for (int n = 2; n <= MOST_PARTS; n++) {
            tries.add(new StepInParts(step.id(), n, rest, join));
        }
        return first(tries, byLeast(step));
    }

    private Optional<Change> help(WorkStep step) {
        int useful = step.hands().get(step.hands().size() - 1).people();
        if (isPlanned(bare(step), step.id())) {
            return Optional.empty();
        }
        List<Change> tries = new ArrayList<>();
        for (int n = useful + 1; n <= work.people().size(); n++) {
            tries.add(new MoreHands(step.id(), n));
        }
        return first(tries, step);
    }

    private Optional<Change> longerDay(WorkStep step) {
        TreeSet<LocalDate> days = new TreeSet<>();
        work.people().stream()
                .flatMap(p -> p.present().stream())
                .filter(s -> !s.from().isBefore(work.now()))
                .forEach(s -> days.add(s.from().atZone(work.zone()).toLocalDate()));
        List<Change> tries = new ArrayList<>();
        for (LocalTime until : LATE) {
            days.stream().limit(MOST_DAYS).forEach(d -> tries.add(new LongerDay(d, until)));
        }
        return first(tries, byLeast(step));
    }

    /** The first that lets the step be done beside all other work; where the other work never does, the first for itself. */
    private Optional<Change> first(List<Change> tries, WorkStep step) {
        List<Change> alone = tries.stream()
                .filter(c -> isPlanned(c.in(bare(step)), step.id()))
                .toList();
        return alone.stream()
                .limit(MOST_TRIES)
                .filter(c -> isPlanned(c.in(among(step)), step.id()))
                .findFirst()
                .or(() -> alone.stream().findFirst());
    }

    private boolean isPlanned(Work w, String id) {
        return planner.plan(w).steps().stream().anyMatch(s -> s.step().equals(id));
    }

    private Work among(WorkStep step) {
        return work.withSteps(
                work.steps().stream()
                        .map(s -> s.id().equals(step.id()) ? step : s)
                        .toList(),
                work.holds());
    }

    /** The shop with nothing to do but the step. */
    private Work bare(WorkStep s) {
        return work.withSteps(
                List.of(new ChangedStep(s)
                        .after(List.of())
                        .anyDay()
                        .withoutDeliveries()
                        .step()),
                List.of());
    }

    private static WorkStep byLeast(WorkStep s) {
        CrewTime least = s.hands().get(0);
        return s.withHands(List.of(least));
    }
}
