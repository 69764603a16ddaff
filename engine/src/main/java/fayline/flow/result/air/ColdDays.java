package fayline.flow.result.air;

import fayline.basis.units.Temperature;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.shop.Stand;
import fayline.method.climate.AirLimits;
import fayline.method.climate.ShopAirCalculator;
import fayline.method.climate.ShopAirResult;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for working days of the coming fortnight on which wet work may not begin by the shop's own limits, and for what can be done
 * on them instead. The surface is taken to be as warm as the air, which a mould in the morning often is not.
 */
public final class ColdDays {
    private static final int AHEAD_DAYS = 14;

    private final Definition definition;
    private final ShopAir air;
    private final Work work;
    private final Map<String, WorkStep> steps = new LinkedHashMap<>();
    private final Map<String, PlannedStep> planned = new LinkedHashMap<>();

    private ColdDays(Definition definition, ShopAir air, Work work, Plan plan) {
        this.definition = definition;
        this.air = air;
        this.work = work;
        work.steps().forEach(s -> steps.put(s.id(), s));
        plan.steps().forEach(p -> planned.put(p.step(), p));
    }

    /**
     * Looks.
     *
     * @param definition the shop's limits and stands
     * @param air the air that is expected
     * @param work the work
     * @param plan a plan of it
     * @return the days, the first leading; days on which nobody is in are left out
     */
    public static List<ColdDay> of(Definition definition, ShopAir air, Work work, Plan plan) {
        ColdDays days = new ColdDays(definition, air, work, plan);
        List<ColdDay> cold = new ArrayList<>();
        LocalDate today = work.now().atZone(work.zone()).toLocalDate();
        for (int i = 0; i < AHEAD_DAYS; i++) {
            LocalDate date = today.plusDays(i);
            if (days.anybodyIn(date)) {
                days.day(date).ifPresent(cold::add);
            }
        }
        return List.copyOf(cold);
    }

    private boolean anybodyIn(LocalDate date) {
        return work.people().stream()
                .flatMap(p -> p.present().stream())
                .anyMatch(s -> on(s.from(), date) && s.to().isAfter(work.now()));
    }

    private boolean on(Instant at, LocalDate date) {
        return at.atZone(work.zone()).toLocalDate().equals(date);
    }

    private ShopAirResult at(LocalDate date, double warmerK) {
        Shop.Limits limits = definition.shop().limits();
        // Warmed air is drier than the shop's, so its humidity is not held against it; the dew point stays.
        Temperature there = Temperature.ofKelvins(air.expectedByDay(date).kelvins() + warmerK);
        return ShopAirCalculator.calculate(fayline.method.climate.ShopAir.of(
                there,
                air.expectedHumidity(date),
                there,
                new AirLimits(
                        Optional.of(limits.coldest()),
                        warmerK > 0 ? Optional.empty() : Optional.of(limits.dampest()),
                        Optional.of(limits.dewMargin()))));
    }

    private Optional<ColdDay> day(LocalDate date) {
        ShopAirResult plain = at(date, 0);
        if (plain.ok()) {
            return Optional.empty();
        }
        List<String> warm = definition.shop().stands().stream()
                .filter(s -> s.wet()
                        && s.warmer().kelvins() > 0
                        && at(date, s.warmer().kelvins()).ok())
                .map(Stand::id)
                .toList();
        List<String> wet = planned.values().stream()
                .filter(p -> on(p.start(), date) && open(p.step(), true))
                .filter(p -> p.places().stream().noneMatch(warm::contains))
                .map(PlannedStep::step)
                .toList();
        return Optional.of(new ColdDay(
                date,
                air.expectedByDay(date),
                air.expectedHumidity(date),
                air.forecast(date),
                plain.findings(),
                warm,
                wet,
                instead(date)));
    }

    private boolean open(String id, boolean wet) {
        WorkStep s = steps.get(id);
        return s != null
                && s.state() == State.TODO
                && !s.hands().isEmpty()
                && s.air().equals("wet") == wet;
    }

    private List<String> instead(LocalDate date) {
        Instant begin = date.atStartOfDay(work.zone()).toInstant();
        Instant morning = begin.isBefore(work.now()) ? work.now() : begin;
        return planned.values().stream()
                .filter(p -> open(p.step(), false) && !p.start().isBefore(morning))
                .filter(p ->
                        mayBegin(p, date.plusDays(1).atStartOfDay(work.zone()).toInstant(), morning))
                .sorted(Comparator.comparing(PlannedStep::start).thenComparing(PlannedStep::step))
                .map(PlannedStep::step)
                .toList();
    }

    /** Everything it waits for is over before the day begins, or it is planned for that day anyway. */
    private boolean mayBegin(PlannedStep p, Instant night, Instant morning) {
        WorkStep step = steps.get(p.step());
        if (step == null || p.start().isBefore(night)) {
            return step != null;
        }
        boolean delivered = work.deliveries().stream()
                .noneMatch(d -> step.awaits().contains(d.id()) && d.expected().isAfter(morning));
        boolean day = step.notBefore().filter(t -> t.isAfter(morning)).isEmpty();
        return delivered && day && step.after().stream().allMatch(l -> over(l, morning));
    }

    private boolean over(Link link, Instant morning) {
        PlannedStep before = planned.get(link.step());
        return before == null
                ? steps.get(link.step()) == null
                : link.opens().minutes() == 0 && !before.end().isAfter(morning);
    }
}
