package fayline.flow.audit;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A way to spoil a clean plan.
 *
 * @param name what is done to it
 * @param rule the rule that must be named
 * @param spoil does it to work and plan where they offer an occasion
 */
record Mutation(String name, String rule, Spoil spoil) {
    /** Spoils a plan, or says that there is nothing to spoil in this way. */
    interface Spoil {
        Optional<Spoilt> on(Scene scene);
    }

    /**
     * A spoilt plan.
     *
     * @param work the work, perhaps changed under the plan
     * @param plan the plan
     */
    record Spoilt(Work work, Plan plan) {}

    /** A clean plan with the means to spoil it. */
    static final class Scene {
        final Work work;
        final Plan plan;
        final Random random;
        final Map<String, WorkStep> steps;

        Scene(Work work, Plan plan, Random random) {
            this.work = work;
            this.plan = plan;
            this.random = random;
            steps = work.steps().stream().collect(Collectors.toMap(WorkStep::id, Function.identity()));
        }

        WorkStep step(PlannedStep planned) {
            return step(planned.step());
        }

        WorkStep step(String id) {
            return java.util.Objects.requireNonNull(steps.get(id), id);
        }

        List<PlannedStep> todo() {
            return plan.steps().stream()
                    .filter(p -> step(p).state() == WorkStep.State.TODO)
                    .toList();
        }

        PlannedStep planned(String step) {
            return plan.steps().stream()
                    .filter(p -> p.step().equals(step))
                    .findFirst()
                    .orElseThrow();
        }

        <T> Optional<T> any(List<T> list) {
            return list.isEmpty() ? Optional.empty() : Optional.of(list.get(random.nextInt(list.size())));
        }

        Optional<PlannedStep> anyTodo(java.util.function.Predicate<PlannedStep> that) {
            return any(todo().stream().filter(that).toList());
        }

        Spoilt with(PlannedStep changed) {
            return with(p -> p.step().equals(changed.step()) ? changed : p);
        }

        /** The plan with every step changed, and its finish made to fit, so that only what was meant is wrong. */
        Spoilt with(UnaryOperator<PlannedStep> change) {
            return spoilt(plan.steps().stream().map(change).toList());
        }

        Spoilt spoilt(List<PlannedStep> list) {
            Optional<Instant> finish = list.stream().map(PlannedStep::end).max(Instant::compareTo);
            return new Spoilt(work, new Plan(list, plan.unplanned(), finish));
        }
    }

    static PlannedStep shifted(PlannedStep p, long minutes) {
        long s = 60 * minutes;
        return new PlannedStep(
                p.step(),
                p.start().plusSeconds(s),
                p.handsEnd().plusSeconds(s),
                p.end().plusSeconds(s),
                p.people(),
                p.places(),
                p.stretches().stream()
                        .map(x -> new fayline.flow.plan.Worker.Stretch(x.from().plusSeconds(s), x.to().plusSeconds(s)))
                        .toList(),
                p.missed());
    }

    static PlannedStep movedTo(PlannedStep p, Instant start) {
        return shifted(p, java.time.Duration.between(p.start(), start).toMinutes());
    }

    static PlannedStep people(PlannedStep p, List<String> people) {
        return new PlannedStep(
                p.step(), p.start(), p.handsEnd(), p.end(), people, p.places(), p.stretches(), p.missed());
    }

    static PlannedStep places(PlannedStep p, List<String> places) {
        return new PlannedStep(
                p.step(), p.start(), p.handsEnd(), p.end(), p.people(), places, p.stretches(), p.missed());
    }

    static PlannedStep hands(PlannedStep p, List<fayline.flow.plan.Worker.Stretch> stretches) {
        Instant handsEnd = stretches.get(stretches.size() - 1).to();
        long alone = java.time.Duration.between(p.handsEnd(), p.end()).toSeconds();
        return new PlannedStep(
                p.step(),
                stretches.get(0).from(),
                handsEnd,
                handsEnd.plusSeconds(alone),
                p.people(),
                p.places(),
                stretches,
                p.missed());
    }

    static <T> List<T> without(List<T> list, T item) {
        List<T> rest = new ArrayList<>(list);
        rest.remove(item);
        return rest;
    }

    static <T> List<T> replaced(List<T> list, T item, T by) {
        return list.stream().map(x -> x.equals(item) ? by : x).toList();
    }
}
