package fayline.flow.result.expand;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.project.recipe.HandsRate;
import fayline.flow.project.recipe.RecipeStep;
import fayline.flow.result.quantity.Shape;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntSupplier;
import java.util.function.IntUnaryOperator;

/**
 * Hands-on time: person-minutes are the sum of rate x driver x times, times a factor for the crew size; elapsed time is that
 * shared by the crew, rounded up to {@value #ROUND_MIN} minutes. Every rate shows its origin.
 */
final class HandsOn {
    private static final int ROUND_MIN = 5;
    private static final double NEARLY = 1e-9;

    private final Amounts amounts;

    HandsOn(Amounts amounts) {
        this.amounts = amounts;
    }

    /**
     * Hands-on time by crew size.
     *
     * @param hands minutes by crew size, least crew first; empty where no rate is given
     * @param personMinutes person-minutes at the least crew
     * @param figures one for each rate, and the sum last
     */
    record Time(List<CrewTime> hands, int personMinutes, List<Figure> figures) {}

    /**
     * Hands-on time of a step.
     *
     * @param batches how many batches a crew of a size mixes
     */
    Time of(MakeNode node, RecipeStep step, Shape shape, IntUnaryOperator batches, List<Finding> findings) {
        if (step.hands().isEmpty()) {
            return new Time(List.of(), 0, List.of());
        }
        int stage = node.stage(step);
        int least = Math.max(1, step.crew().least());
        int useful = Math.max(least, step.crew().useful());
        List<CrewTime> hands = new ArrayList<>();
        for (int n = least; n <= useful; n++) {
            int crew = n;
            double person = personMinutes(step.hands(), node, shape, stage, () -> batches.applyAsInt(crew), findings)
                    * step.crewFactor().getOrDefault(n, 1.0);
            int minutes = (int) Math.ceil(person / n / ROUND_MIN - NEARLY) * ROUND_MIN;
            hands.add(new CrewTime(n, Math.max(ROUND_MIN, minutes)));
        }
        double atLeast =
                personMinutes(step.hands(), node, shape, stage, () -> batches.applyAsInt(least), new ArrayList<>())
                        * step.crewFactor().getOrDefault(least, 1.0);
        return new Time(
                hands,
                (int) Math.ceil(atLeast - NEARLY),
                figures(step, node, shape, stage, () -> batches.applyAsInt(least), atLeast, hands));
    }

    /** Elapsed minutes of a step with a crew, the mixing of batches left out; not rounded. */
    double applyingMinutes(MakeNode node, RecipeStep step, Shape shape, int people) {
        return personMinutes(step.hands(), node, shape, node.stage(step), () -> 0, new ArrayList<>())
                * step.crewFactor().getOrDefault(people, 1.0)
                / people;
    }

    /** Elapsed minutes of a step that mixes nothing, with its least crew. */
    int least(MakeNode node, RecipeStep step, Shape shape) {
        List<CrewTime> hands = of(node, step, shape, n -> 0, new ArrayList<>()).hands();
        return hands.isEmpty() ? 0 : hands.get(0).minutes();
    }

    /** Person-minutes of rates outside a step's own, as the price of a missed window. */
    int personMinutes(List<HandsRate> rates, MakeNode node, Shape shape, int stage, List<Finding> findings) {
        return (int) Math.ceil(personMinutes(rates, node, shape, stage, () -> 1, findings) - NEARLY);
    }

    private double personMinutes(
            List<HandsRate> rates, MakeNode node, Shape shape, int stage, IntSupplier batches, List<Finding> findings) {
        double sum = 0;
        for (HandsRate rate : rates) {
            OptionalDouble driver = driver(rate.per(), shape, stage, batches);
            if (driver.isEmpty()) {
                Finding missing = new Finding(
                        Severity.STOP,
                        node.made().id() + "/" + node.number(),
                        "A rate counts by " + rate.per() + ", which "
                                + node.made().name() + " does not state among its sizes; its time is left out.",
                        "the definition");
                if (!findings.contains(missing)) {
                    findings.add(missing);
                }
                continue;
            }
            sum += rate.minutes() * driver.getAsDouble() * node.with().number(rate.times(), 1);
        }
        return sum;
    }

    private OptionalDouble driver(String per, Shape shape, int stage, IntSupplier batches) {
        return switch (per) {
            case "batch" -> OptionalDouble.of(batches.getAsInt());
            case "tape-m" -> OptionalDouble.of(shape.size(per).orElseGet(() -> amounts.tapeM(shape, stage)));
            default -> shape.driver(per, stage);
        };
    }

    private List<Figure> figures(
            RecipeStep step,
            MakeNode node,
            Shape shape,
            int stage,
            IntSupplier batches,
            double person,
            List<CrewTime> hands) {
        List<Input> inputs = new ArrayList<>();
        for (HandsRate rate : step.hands()) {
            OptionalDouble driver = driver(rate.per(), shape, stage, batches);
            if (driver.isPresent()) {
                double times = node.with().number(rate.times(), 1);
                inputs.add(new Input(
                        number(rate.minutes()) + " min per " + rate.per(),
                        "x " + number(driver.getAsDouble()) + (times == 1 ? "" : " x " + number(times)),
                        rate.origin()));
            }
        }
        step.crewFactor()
                .forEach((n, f) -> inputs.add(new Input("factor for a crew of " + n, number(f), Origin.ENTERED)));
        StringBuilder shown = new StringBuilder(number(Math.ceil(person - NEARLY)) + " person-minutes; ");
        for (CrewTime c : hands) {
            shown.append(c.equals(hands.get(0)) ? "" : ", ")
                    .append(c.people())
                    .append(": ")
                    .append(c.minutes())
                    .append(" min");
        }
        return List.of(new Figure(
                "hands-on time",
                shown.toString(),
                "sum of rate x driver x times, x crew factor, shared by the crew, up to the next 5 min",
                inputs,
                "rates: origin beside each",
                List.of()));
    }

    private static String number(double v) {
        return BigDecimal.valueOf(v)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}
