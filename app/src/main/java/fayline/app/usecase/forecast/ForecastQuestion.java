package fayline.app.usecase.forecast;

import fayline.app.usecase.view.ShopView;
import fayline.flow.forecast.Spreads;
import fayline.flow.forecast.Spreads.Between;
import fayline.flow.forecast.Target;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.goal.PlanGoals;
import fayline.flow.project.Definition;
import fayline.flow.project.ProjectFacts.Milestone;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.design.Made;
import fayline.flow.project.stock.Delivery;
import fayline.method.rate.RatePrior;
import fayline.method.rate.Rates;
import fayline.method.rate.Rates.KindRate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is asked of the trial plans: how far times and deliveries may be off, and whose ends are wanted.
 *
 * @param spreads how far off
 * @param targets everything first, then dated goals, then assemblies with open work
 * @param timesAssumed whether no step is finished yet, so that the spread of times is the program's own
 */
public record ForecastQuestion(Spreads spreads, List<Target> targets, boolean timesAssumed) {
    /** A delivery without a stated doubt is taken to come up to so many days late. */
    public static final int LATE_DAYS = 7;

    /** Copies the lists. */
    public ForecastQuestion {
        targets = List.copyOf(targets);
    }

    /** Asks about a shop. */
    public static ForecastQuestion of(ShopView view) {
        Rates rates = view.rates().rates();
        Map<String, Double> kinds = new TreeMap<>();
        for (KindRate k : rates.kinds()) {
            kinds.put(k.kind(), k.deviation());
        }
        double other = rates.scatter() / Math.sqrt(RatePrior.USUAL.kind());
        Spreads spreads = new Spreads(kinds, other, rates.scatter(), deliveries(view));
        return new ForecastQuestion(spreads, targets(view), rates.counted().isEmpty());
    }

    /** The deliveries that state no latest day, in the order of their ids. */
    public List<String> lateAssumed() {
        return spreads.deliveries().entrySet().stream()
                .filter(d -> d.getValue().assumed())
                .map(Map.Entry::getKey)
                .toList();
    }

    private static Map<String, Between> deliveries(ShopView view) {
        Map<String, Between> between = new LinkedHashMap<>();
        LocalDate today = view.now().atZone(view.zone()).toLocalDate();
        Set<String> awaited = view.work().deliveries().stream().map(d -> d.id()).collect(Collectors.toSet());
        for (Delivery d : view.definition().deliveries()) {
            if (!awaited.contains(d.id())) {
                continue;
            }
            LocalDate from = later(d.due(), today.plusDays(1));
            LocalDate to = later(d.latest().orElse(from.plusDays(LATE_DAYS)), from);
            between.put(
                    d.id(),
                    new Between(
                            noon(from, view.zone()),
                            noon(to, view.zone()),
                            d.latest().isEmpty()));
        }
        return between;
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant noon(LocalDate day, ZoneId zone) {
        return day.atTime(LocalTime.NOON).atZone(zone).toInstant();
    }

    private static List<Target> targets(ShopView view) {
        Definition d = view.definition();
        String project = view.project();
        Set<String> open = view.work().steps().stream()
                .filter(s -> s.project().equals(project) && s.state() != WorkStep.State.DONE)
                .map(WorkStep::made)
                .collect(Collectors.toSet());
        List<Target> targets = new ArrayList<>();
        targets.add(new Target(
                "",
                "All planned work",
                of(project, allMade(d).map(Made::id).collect(Collectors.toSet())),
                Optional.empty()));
        for (Milestone m : d.facts().milestones()) {
            Set<String> made = PlanGoals.madeFor(d, m.after());
            if (made.stream().anyMatch(open::contains)) {
                targets.add(new Target(m.id(), m.name(), of(project, made), Optional.of(m.due())));
            }
        }
        for (Assembly a : d.assemblies()) {
            Set<String> made = PlanGoals.madeFor(d, a.id());
            boolean whole = made.size() == allMade(d).count();
            if (!whole && made.stream().anyMatch(open::contains)) {
                targets.add(new Target(a.id(), a.name(), of(project, made), Optional.empty()));
            }
        }
        return targets;
    }

    private static Stream<Made> allMade(Definition d) {
        return Stream.concat(d.parts().stream(), d.joints().stream());
    }

    private static Set<String> of(String project, Set<String> made) {
        Set<String> ids = new HashSet<>();
        made.forEach(m -> ids.add(project + "/" + m));
        return ids;
    }
}
