package fayline.store.file.rule.able;

import fayline.basis.units.Temperature;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Joint;
import fayline.flow.project.design.Made;
import fayline.flow.project.design.Make;
import fayline.flow.project.recipe.After;
import fayline.flow.project.recipe.Alone;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.Recipe;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.result.quantity.Shape;
import fayline.method.cure.CureLaw;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One recipe on one part or joint, with bounds of its times. Every bound errs so that nothing possible is called impossible:
 * work takes at least so long, a cure between so long in the warmest and so long in the coldest air that is usual.
 */
final class Reach {
    /** Margin by which the shop may be colder or warmer than usual, in kelvins. */
    private static final double MARGIN_K = 5;

    private static final Set<String> OFF = Set.of("", "no", "0", "none", "false");

    private final Definition d;
    private final Recipe recipe;
    private final Shape shape;
    private final Map<String, String> with = new HashMap<>();

    Reach(Definition definition, Made made, Make make, Recipe recipe) {
        this.d = definition;
        this.recipe = recipe;
        this.shape = Shape.of(definition, made);
        if (made instanceof Joint joint) {
            with.put("adhesive", joint.adhesive());
        }
        recipe.parameters().stream().filter(p -> !p.usual().isEmpty()).forEach(p -> with.put(p.id(), p.usual()));
        with.putAll(make.with());
    }

    boolean exists(RecipeStep step) {
        return step.when().isEmpty() || !OFF.contains(with.getOrDefault(step.when(), ""));
    }

    /** The step of that key, if it exists here. */
    Optional<RecipeStep> step(String key) {
        return recipe.steps().stream()
                .filter(s -> s.id().equals(key) && exists(s))
                .findFirst();
    }

    /** The least time that so many people need with their hands, in minutes. */
    double handsMin(RecipeStep step, int people) {
        double sum = 0;
        for (HandsRate rate : step.hands()) {
            OptionalDouble driver = rate.per().equals("batch")
                    ? OptionalDouble.of(step.mixes().isEmpty() ? 0 : 1)
                    : shape.driver(rate.per(), (int) number(step.stage(), 0));
            sum += rate.minutes() * driver.orElse(0) * number(rate.times(), 1);
        }
        return sum * step.crewFactor().getOrDefault(people, 1.0) / people;
    }

    /** The least over all crew sizes. */
    double handsMin(RecipeStep step) {
        double least = Double.MAX_VALUE;
        for (int n = step.crew().least();
                n <= Math.max(step.crew().least(), step.crew().useful());
                n++) {
            least = Math.min(least, handsMin(step, n));
        }
        return least;
    }

    /** Least and most minutes of a span; empty where the data sheet does not tell. */
    Optional<double[]> span(Optional<Alone> span) {
        if (span.isEmpty()) {
            return Optional.of(new double[] {0, 0});
        }
        Alone a = span.get();
        if (a.span().isPresent()) {
            double m = a.span().get().minutes();
            return Optional.of(new double[] {m, m});
        }
        return a.until()
                .flatMap(state -> d.systems().find(value(a.system())).flatMap(s -> CureLaw.of(s.cure(), state)))
                .map(law -> new double[] {
                    law.timeAt(new Temperature(warmestK())).minutes(),
                    law.timeAt(new Temperature(coldestK())).minutes()
                });
    }

    /** Least and most minutes from the end of a step's hands, or its start, to the moment from which a link counts. */
    Optional<double[]> toMoment(RecipeStep earlier, After.Moment moment) {
        return moment == After.Moment.END ? span(earlier.alone()) : span(Optional.empty());
    }

    private double warmestK() {
        double warmer = d.shop().stands().stream()
                .mapToDouble(s -> s.warmer().kelvins())
                .max()
                .orElse(0);
        return Math.max(
                        d.climate().usual().day().kelvins(),
                        d.climate().usual().night().kelvins())
                + warmer
                + MARGIN_K;
    }

    private double coldestK() {
        return Math.min(
                        d.climate().usual().day().kelvins(),
                        d.climate().usual().night().kelvins())
                - MARGIN_K;
    }

    private String value(String text) {
        return text.startsWith("with.") ? with.getOrDefault(text.substring("with.".length()), "") : text;
    }

    private double number(String text, double otherwise) {
        try {
            return Double.parseDouble(value(text));
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }
}
