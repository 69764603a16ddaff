package fayline.flow.result.expand;

import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.project.shop.Person;
import fayline.flow.result.mix.MixJob;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.quantity.Drawn;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.Shape;
import fayline.method.mix.batch.BatchPlan;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The circumstances in which the mixes of a step are mixed: hands, the bag that follows, the crew's day, and what it would cost
 * to split the lay-up with peel ply. Splitting costs a second bag with its hands, and taking it off again at
 * {@value #DEBAG_MIN_PER_M2} person-minutes for each m2 (common practice, no source).
 */
final class MixJobs {
    private static final double DEBAG_MIN_PER_M2 = 4;

    private final Definition definition;
    private final Amounts amounts;
    private final HandsOn handsOn;

    MixJobs(Definition definition, Amounts amounts, HandsOn handsOn) {
        this.definition = definition;
        this.amounts = amounts;
        this.handsOn = handsOn;
    }

    /**
     * One job for each mix.
     *
     * @param dayLeft how long the crew is still there; empty for a whole day
     */
    List<MixJob> of(
            MakeNode node,
            RecipeStep step,
            Shape shape,
            List<StepMix> mixes,
            Temperature at,
            int people,
            Optional<TimeSpan> dayLeft) {
        if (mixes.isEmpty()) {
            return List.of();
        }
        double totalKg = mixes.stream().mapToDouble(m -> m.toMix().kilograms()).sum();
        double handsMin = handsOn.applyingMinutes(node, step, shape, people);
        Optional<RecipeStep> bag = bagAfter(node, step);
        TimeSpan bagging =
                TimeSpan.ofMinutes(bag.map(b -> handsOn.least(node, b, shape)).orElse(0));
        Optional<TimeSpan> day = wholeDay(people);
        double here = step.crewFactor().getOrDefault(people, 1.0);
        double more = step.crewFactor().getOrDefault(people + 1, 1.0) / here;
        BatchPlan.Prices prices = prices(node, step, shape, bag);
        List<MixJob> jobs = new ArrayList<>();
        double restMin = handsMin;
        for (StepMix mix : mixes) {
            double share = totalKg > 0 ? mix.toMix().kilograms() / totalKg : 0;
            // What is mixed first must last until the mixes after it are applied and the bag is tight.
            restMin -= handsMin * share;
            TimeSpan untilTight = bagging.plus(TimeSpan.ofMinutes(Math.max(0, restMin)));
            jobs.add(new MixJob(
                    mix,
                    at,
                    people,
                    Math.max(people, step.crew().useful()),
                    more,
                    TimeSpan.ofMinutes(handsMin * share),
                    untilTight,
                    dayLeft.or(() -> day),
                    day,
                    prices));
        }
        return jobs;
    }

    /** The bag that closes over what a step lays: the first bagged step after it. */
    private static Optional<RecipeStep> bagAfter(MakeNode node, RecipeStep step) {
        return node.steps().stream()
                .dropWhile(s -> !s.equals(step))
                .skip(1)
                .takeWhile(s -> s.mixes().isEmpty())
                .filter(RecipeStep::bagged)
                .findFirst();
    }

    /** The longest day on which so many of the crew are in together. */
    private Optional<TimeSpan> wholeDay(int people) {
        List<Duration> days = new ArrayList<>();
        for (Person p : definition.shop().people()) {
            if (!p.volunteer()) {
                p.hours().stream()
                        .map(h -> Duration.between(h.from(), h.to()))
                        .max(Comparator.naturalOrder())
                        .ifPresent(days::add);
            }
        }
        days.sort(Comparator.reverseOrder());
        return days.size() < people
                ? Optional.empty()
                : Optional.of(TimeSpan.ofSeconds((double) days.get(people - 1).toSeconds()));
    }

    private BatchPlan.Prices prices(MakeNode node, RecipeStep step, Shape shape, Optional<RecipeStep> bag) {
        if (bag.isEmpty()) {
            return BatchPlan.Prices.assumed();
        }
        int stage = node.stage(step);
        double work = handsOn.personMinutes(bag.get().hands(), node, shape, stage, new ArrayList<>())
                + DEBAG_MIN_PER_M2 * shape.area(stage).squareMetres();
        List<Need> needs = amounts.of(node, bag.get(), shape).needs();
        String materials = String.format(
                Locale.ROOT,
                "one more set of peel ply, film, breather, bag and tape, %.2f %s",
                Drawn.cost(needs),
                definition.facts().currency());
        return new BatchPlan.Prices(TimeSpan.ofMinutes(work), materials);
    }
}
