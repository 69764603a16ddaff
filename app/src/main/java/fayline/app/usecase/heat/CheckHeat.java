package fayline.app.usecase.heat;

import fayline.app.usecase.view.ShopView;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.air.ShopAir;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import fayline.method.cure.TemperatureHistory;
import fayline.method.cure.reaction.HeatPlan;
import fayline.method.cure.reaction.HeatPlanCalculator;
import fayline.method.cure.reaction.HeatPlanResult;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Glass transition so far of a part or joint against a planned heat. Every resin in it that has glass-transition constants is
 * asked; the one that leaves the least margin decides. Past temperatures are the shop's, at the coldest probe.
 */
public final class CheckHeat {
    private static final double SECONDS_PER_HOUR = 3600;

    private CheckHeat() {}

    /**
     * A planned heat.
     *
     * @param peak the highest temperature
     * @param kelvinsPerHour how fast it climbs, more than nought
     * @param hold how long the peak is held
     * @param margin least distance of the glass transition above the part
     * @param loads what loads the part while it is hot
     */
    public record Heat(
            Temperature peak,
            double kelvinsPerHour,
            TimeSpan hold,
            TemperatureDifference margin,
            List<HeatPlan.Load> loads) {
        /** Copies the list. */
        public Heat {
            loads = List.copyOf(loads);
        }
    }

    /**
     * What one resin in the part says.
     *
     * @param system the resin
     * @param step the step in which it was mixed
     * @param since when that began
     * @param result the answer
     */
    public record Answer(String system, StepResult step, Instant since, HeatPlanResult result) {}

    /**
     * Asks.
     *
     * @param view the shop
     * @param made the part or joint
     * @param heat the heat
     * @return an answer for each resin that was mixed for it and has constants, the tightest first; empty where none was
     */
    public static List<Answer> ask(ShopView view, String made, Heat heat) {
        List<Answer> answers = new ArrayList<>();
        for (StepResult step : view.result().steps()) {
            StepFacts facts = view.state().steps().get(step.local());
            if (!step.made().equals(made) || facts == null || facts.started().isAfter(view.now())) {
                continue;
            }
            step.mixes().stream()
                    .map(m -> m.system())
                    .distinct()
                    .map(s -> view.definition().systems().find(s))
                    .flatMap(Optional::stream)
                    .filter(s -> s.cure().glass().isPresent())
                    .forEach(s -> answers.add(answer(view, step, facts.started(), s, heat)));
        }
        answers.sort(Comparator.comparingDouble(a ->
                a.result().leastMargin().map(TemperatureDifference::kelvins).orElse(Double.NEGATIVE_INFINITY)));
        return List.copyOf(answers);
    }

    private static Answer answer(ShopView view, StepResult step, Instant since, ResinSystem system, Heat heat) {
        ShopAir air = view.result().air();
        HeatPlanResult result = HeatPlanCalculator.calculate(new HeatPlan(
                system.cure().glass().orElseThrow(),
                system.cure().kinetics(),
                Optional.empty(),
                past(air, since, view.now()),
                plan(air.warmest(view.now()), heat),
                heat.margin(),
                heat.loads()));
        return new Answer(system.name(), step, since, result);
    }

    private static TemperatureHistory past(ShopAir air, Instant since, Instant now) {
        List<TemperatureHistory.Step> steps = new ArrayList<>();
        Instant at = since;
        while (at.isBefore(now)) {
            Instant next = at.plus(Duration.ofHours(1)).isBefore(now) ? at.plus(Duration.ofHours(1)) : now;
            steps.add(new TemperatureHistory.Step(
                    TimeSpan.ofSeconds((double) Duration.between(at, next).toSeconds()), air.coldest(at)));
            at = next;
        }
        return steps.isEmpty() ? TemperatureHistory.constant(air.coldest(now)) : TemperatureHistory.steps(steps);
    }

    private static TemperatureHistory plan(Temperature start, Heat heat) {
        double climbS = Math.max(
                1, Math.abs(heat.peak().kelvins() - start.kelvins()) / heat.kelvinsPerHour() * SECONDS_PER_HOUR);
        return TemperatureHistory.lines(List.of(
                new TemperatureHistory.Point(TimeSpan.ofSeconds(0), start),
                new TemperatureHistory.Point(TimeSpan.ofSeconds(climbS), heat.peak()),
                new TemperatureHistory.Point(
                        TimeSpan.ofSeconds(climbS + Math.max(1, heat.hold().seconds())), heat.peak())));
    }
}
