package fayline.flow.planner;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.WorkWish.Kind;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Wishes of a lead, from a seed: about steps of a plan as it stands, some easy to keep and some not. */
public final class RandomWishes {
    private final Work work;
    private final Random random;
    private final List<WorkWish> wishes = new ArrayList<>();

    private RandomWishes(Work work, long seed) {
        this.work = work;
        random = new Random(seed);
    }

    /** The work with so many wishes about it, all that it had left aside. */
    public static Work on(Work work, Plan plan, long seed, int wishes) {
        RandomWishes made = new RandomWishes(work, seed);
        List<PlannedStep> todo = plan.steps().stream()
                .filter(p -> made.step(p).state() == WorkStep.State.TODO)
                .toList();
        for (int i = 0; i < wishes && !todo.isEmpty(); i++) {
            made.add(todo.get(made.random.nextInt(todo.size())));
        }
        return work.withWishes(made.wishes);
    }

    private WorkStep step(PlannedStep p) {
        return work.steps().stream()
                .filter(s -> s.id().equals(p.step()))
                .findFirst()
                .orElseThrow();
    }

    private void add(PlannedStep p) {
        switch (random.nextInt(4)) {
            case 0 -> person(p, Kind.WITH);
            case 1 -> person(p, Kind.WITHOUT);
            case 2 -> place(p);
            default -> start(p);
        }
    }

    private void person(PlannedStep p, Kind kind) {
        if (!p.people().isEmpty()) {
            String who = kind == Kind.WITHOUT
                    ? p.people().get(0)
                    : work.people().get(random.nextInt(work.people().size())).id();
            wish(p, kind, who, Optional.empty(), Optional.empty());
        }
    }

    private void place(PlannedStep p) {
        List<Hold> choices = work.holds().stream()
                .filter(h -> h.steps().contains(p.step())
                        && h.candidates().size() > h.count()
                        && h.steps().stream().noneMatch(this::isBegun))
                .toList();
        if (!choices.isEmpty()) {
            Hold h = choices.get(random.nextInt(choices.size()));
            String there = h.candidates().stream()
                    .filter(p.places()::contains)
                    .findFirst()
                    .orElseThrow();
            String other = h.candidates().get(random.nextInt(h.candidates().size()));
            boolean away = random.nextBoolean();
            wish(p, away ? Kind.AWAY : Kind.AT, away ? there : other, Optional.empty(), Optional.empty());
        }
    }

    private boolean isBegun(String step) {
        return work.steps().stream().anyMatch(s -> s.id().equals(step) && s.state() != WorkStep.State.TODO);
    }

    private void start(PlannedStep p) {
        Instant from = p.start().plus(Duration.ofDays(random.nextInt(4)));
        switch (random.nextInt(3)) {
            case 0 -> wish(p, Kind.START, "", Optional.of(from), Optional.empty());
            case 1 -> wish(p, Kind.START, "", Optional.of(from), Optional.of(from.plus(Duration.ofHours(6))));
            default ->
                wish(
                        p,
                        Kind.START,
                        "",
                        Optional.of(p.start()),
                        Optional.of(p.start().plus(Duration.ofMinutes(15))));
        }
    }

    private void wish(PlannedStep p, Kind kind, String on, Optional<Instant> from, Optional<Instant> before) {
        wishes.add(new WorkWish(
                "w-" + (wishes.size() + 1), p.step(), kind, on, from, before, "p0", "as seed " + wishes.size()));
    }
}
