package fayline.flow.result.shop;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Figure.Input;
import fayline.basis.finding.Figure.Origin;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.air.ClockBook;
import fayline.flow.result.mix.StepMix;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.OpenWindow;
import fayline.flow.result.step.StepResult;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureState;
import fayline.method.cure.RateRule;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Which cures and windows run now, when each comes to its end, and why. What shuts counts from the first batch (the start of the
 * hands) on the warmest probe and stand; what must have cured counts from the last (the end of the hands) on the coldest. A
 * computed state never releases a clamp, a mould or a load: the card asks for the physical check.
 */
public final class RunningClocks {
    private static final Duration SHOWN_AFTER = Duration.ofDays(2);

    private final Definition definition;
    private final ShopState state;
    private final ClockBook clocks;
    private final List<StepResult> steps;
    private final Map<String, StepResult> byId = new HashMap<>();
    private final ZoneId zone;
    private final DateTimeFormatter time;
    private final QuantityFormat format;

    /**
     * Looks at what runs.
     *
     * @param definition the definition
     * @param state what has happened
     * @param clocks the clocks of the steps
     * @param steps every step
     */
    public RunningClocks(Definition definition, ShopState state, ClockBook clocks, List<StepResult> steps) {
        this.definition = definition;
        this.state = state;
        this.clocks = clocks;
        this.steps = steps;
        this.zone = definition.shop().zone();
        this.time =
                DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH).withZone(zone);
        this.format = new QuantityFormat(definition.facts().units());
        steps.forEach(s -> byId.put(s.id(), s));
    }

    /** Cures that run, or ran to a state within the last two days, soonest state first. */
    public List<ClockRunning> clocks() {
        List<ClockRunning> running = new ArrayList<>();
        for (StepResult step : steps) {
            WorkStep.Actual actual = step.work().actual();
            if (actual.started().isEmpty()) {
                continue;
            }
            Set<String> systems = new LinkedHashSet<>();
            step.mixes().stream().map(StepMix::system).forEach(systems::add);
            for (String id : systems) {
                definition.systems().find(id).ifPresent(s -> running.addAll(states(step, s, actual)));
            }
        }
        running.sort(
                Comparator.comparing((ClockRunning c) -> c.at().orElse(Instant.MAX), Comparator.<Instant>naturalOrder())
                        .thenComparing(ClockRunning::step)
                        .thenComparing(ClockRunning::state));
        return running;
    }

    private List<ClockRunning> states(StepResult step, ResinSystem system, WorkStep.Actual actual) {
        List<ClockRunning> running = new ArrayList<>();
        for (CureState cured : CureState.values()) {
            Optional<Instant> from = cured.runsOut() ? actual.started() : actual.handsEnded();
            Optional<CureLaw> law = clocks.law(system, cured);
            // A pot's life depends on its mass and is told with the batch.
            if (cured == CureState.POT_LIFE || from.isEmpty() || law.isEmpty()) {
                continue;
            }
            ClockRunning clock = clock(step, system, cured, from.get(), law.get());
            boolean past = clock.at()
                    .filter(at -> at.isBefore(state.now().minus(SHOWN_AFTER)))
                    .isPresent();
            if (!past) {
                running.add(clock);
            }
        }
        return running;
    }

    private ClockRunning clock(StepResult step, ResinSystem system, CureState cured, Instant from, CureLaw law) {
        double warmer = warmerK(step, cured.runsOut());
        Span span = clocks.span(system, cured, cured.runsOut(), warmer).orElseThrow();
        Optional<Instant> at = clocks.over(span, from);
        double age = clocks.age(span, from, state.now());
        boolean reached = at.filter(t -> !t.isAfter(state.now())).isPresent();
        double measured = clocks.measured(from, state.now());
        return new ClockRunning(
                step.id(),
                step.made(),
                step.title(),
                system.id(),
                cured,
                from,
                TimeSpan.ofMinutes(age),
                law.time(),
                at,
                reached,
                at.map(t -> TimeSpan.ofSeconds(
                        Math.max(0, (double) Duration.between(state.now(), t).toSeconds()))),
                measured,
                why(system, cured, from, law, at, age, warmer, measured));
    }

    /** Warmth of the stand where it happened; of those where it may have happened the safe one. */
    private double warmerK(StepResult step, boolean shuts) {
        List<Double> known = step.work().actual().places().stream()
                .flatMap(p -> definition.shop().stands().find(p).stream())
                .map(s -> s.warmer().kelvins())
                .toList();
        OptionalDouble warmer = shuts
                ? known.stream().mapToDouble(w -> w).max()
                : known.stream().mapToDouble(w -> w).min();
        return warmer.orElse(0);
    }

    private Figure why(
            ResinSystem system,
            CureState cured,
            Instant from,
            CureLaw law,
            Optional<Instant> at,
            double ageMin,
            double warmerK,
            double measured) {
        List<Input> inputs = new ArrayList<>();
        inputs.add(new Input(
                "data-sheet time at " + format.temperature(law.reference()),
                format.span(law.time()),
                Origin.DATA_SHEET));
        inputs.add(new Input(
                "dependence on temperature",
                law.rule().sentence(),
                law.rule().origin() == RateRule.Origin.DOUBLING ? Origin.ASSUMED : Origin.DATA_SHEET));
        inputs.add(new Input(
                cured.runsOut() ? "counts from the first batch" : "counts from the last batch",
                time.format(from),
                Origin.ENTERED));
        inputs.add(new Input("equivalent age now", format.span(TimeSpan.ofMinutes(ageMin)), Origin.COMPUTED));
        inputs.add(new Input(
                "share of the time so far with readings",
                Math.round(measured * 100) + " %",
                measured > 0 ? Origin.MEASURED : Origin.ASSUMED));
        if (warmerK != 0) {
            inputs.add(
                    new Input("stand kept warmer by", String.format(Locale.ROOT, "%.1f K", warmerK), Origin.ENTERED));
        }
        inputs.add(new Input("air from now on", "as forecast, else as usual", Origin.ASSUMED));
        return new Figure(
                cured.words() + " of " + system.name(),
                at.map(time::format).orElse("not within reach"),
                "sum of minutes x rate at each moment's temperature = data-sheet time; "
                        + (cured.runsOut() ? "warmest" : "coldest") + " probe",
                inputs,
                law.rule().origin() == RateRule.Origin.DOUBLING ? "common practice, no source" : "[arrhenius1889]",
                List.of("Computed, not felt: check by hand before you unclamp, demould, coat or load."));
    }

    /** Windows that count already, the one that shuts first leading. */
    public List<OpenWindow> windows() {
        List<OpenWindow> windows = new ArrayList<>();
        for (StepResult step : steps) {
            if (step.work().state() != WorkStep.State.TODO) {
                continue;
            }
            for (Link link : step.work().after()) {
                boolean bare = link.shuts().isEmpty() && link.opens().minutes() == 0;
                moment(link).filter(m -> !bare).ifPresent(from -> windows.add(window(step, link, from)));
            }
        }
        windows.sort(Comparator.comparing((OpenWindow w) -> w.shuts().orElse(Instant.MAX))
                .thenComparing(w -> w.opens().orElse(Instant.MAX))
                .thenComparing(OpenWindow::step)
                .thenComparing(OpenWindow::from));
        return windows;
    }

    private Optional<Instant> moment(Link link) {
        StepResult earlier = byId.get(link.step());
        if (earlier == null) {
            return Optional.empty();
        }
        WorkStep.Actual actual = earlier.work().actual();
        return switch (link.from()) {
            case "start" -> actual.started();
            case "hands-end" -> actual.handsEnded();
            default -> actual.ended();
        };
    }

    private OpenWindow window(StepResult step, Link link, Instant from) {
        Optional<Instant> opens = clocks.over(link.opens(), from);
        Optional<Instant> shuts = link.shuts().flatMap(s -> clocks.lastMinute(s, from));
        Instant now = state.now();
        boolean missed = shuts.filter(s -> s.isBefore(now)).isPresent();
        boolean open = !missed && opens.filter(o -> !o.isAfter(now)).isPresent();
        return new OpenWindow(step.id(), step.title(), link.step(), opens, shuts, open, missed, link.miss());
    }
}
