package fayline.flow.result.cost;

import fayline.basis.units.Quantity;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Assembly;
import fayline.flow.project.shop.Person;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.stock.Order;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.quantity.Drawn;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.rate.BookedHours;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.LotStanding;
import fayline.flow.result.stock.StoresResult;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Adds up costs (plain sums). A begun step has spent what lots gave it, at the price of the lot, else of the material; a finished one its
 * booked hours at the rates of those who worked. What is to come is what is computed, at the prices of the materials and the crew's mean
 * rate. An order is spent when what came is accepted.
 */
public final class ProjectCosts {
    private static final double HOUR_MIN = 60;
    private final Definition definition;
    private final ShopState state;
    private final ProjectResult result;
    private final Drawn prices;
    private final Map<String, Double> booked;
    private final Map<String, Double> drawn = new HashMap<>();
    private final Set<String> unpriced = new LinkedHashSet<>();
    private final double hourly;

    private ProjectCosts(Definition definition, ShopState state, ProjectResult result, StoresResult stores) {
        this.definition = definition;
        this.state = state;
        this.result = result;
        this.prices = new Drawn(definition);
        this.booked = BookedHours.of(definition.shop(), state).minutes();
        this.hourly = definition.shop().people().stream()
                .filter(p -> !p.volunteer())
                .flatMapToDouble(p -> p.hourly().stream())
                .average()
                .orElse(0);
        stores.lots().forEach(this::spent);
    }

    /**
     * Reckons.
     *
     * @param definition the definition
     * @param state what has happened
     * @param result what follows from both
     * @param stores the stores as they stand
     */
    public static CostReport of(Definition definition, ShopState state, ProjectResult result, StoresResult stores) {
        return new ProjectCosts(definition, state, result, stores).report();
    }

    /** What a lot gave to each step, at its own price. */
    private void spent(LotStanding standing) {
        for (LotStanding.Move m : standing.moves()) {
            if (!m.step().isEmpty() && m.change().si() < 0) {
                Quantity taken = fayline.flow.result.stock.Amount.like(
                        m.change(), -m.change().si());
                cost(standing.lot(), taken).ifPresent(c -> drawn.merge(m.step(), c, Double::sum));
            }
        }
    }

    private OptionalDouble cost(Lot lot, Quantity taken) {
        OptionalDouble own = lot.price().isPresent()
                ? prices.cost(lot.price().get(), lot.of(), taken)
                : prices.need(lot.of(), taken, "").cost();
        if (own.isEmpty()) {
            unpriced.add(lot.of());
        }
        return own;
    }

    private CostReport report() {
        Map<String, CostRow> made = new LinkedHashMap<>();
        definition.parts().forEach(p -> made.put(p.id(), row(p.id(), p.name(), p.in(), p.budget())));
        definition.joints().forEach(j -> made.put(j.id(), row(j.id(), j.name(), j.in(), OptionalDouble.empty())));
        CostRow rework = new CostRow("rework", "Rework", "", Cost.NONE, Cost.NONE, OptionalDouble.empty());
        for (StepResult s : result.steps()) {
            CostRow own = add(row(s.made(), s.made(), "", OptionalDouble.empty()), s);
            made.merge(s.made(), own, (a, b) -> plus(a, b.toDate(), b.toGo()));
            if (s.key().startsWith("rework-")) {
                rework = plus(rework, own.toDate(), own.toGo());
            }
        }
        List<String> open = new ArrayList<>();
        Cost[] outside = {Cost.NONE, Cost.NONE};
        for (Order o : state.stock().orders()) {
            if (o.project().equals(definition.facts().id()) && !o.at().isAfter(state.now())) {
                order(o, made, outside, open);
            }
        }
        return whole(made, rework, outside, open);
    }

    private static CostRow row(String id, String name, String in, OptionalDouble budget) {
        return new CostRow(id, name, in, Cost.NONE, Cost.NONE, budget);
    }

    private static CostRow plus(CostRow row, Cost toDate, Cost toGo) {
        return new CostRow(
                row.id(),
                row.name(),
                row.in(),
                row.toDate().plus(toDate),
                row.toGo().plus(toGo),
                row.budget());
    }

    private CostRow add(CostRow row, StepResult s) {
        StepFacts facts = state.steps().get(s.local());
        if (facts == null) {
            return s.work().state() == WorkStep.State.TODO
                    ? plus(row, Cost.NONE, new Cost(material(s), s.personMinutes() / HOUR_MIN * hourly, 0))
                    : row;
        }
        // What nobody can have drawn from a lot, because the stores held none, is spent at its computed cost.
        double material = drawn.getOrDefault(s.local(), 0.0);
        double spent = material > 0 ? material : material(s);
        Double minutes = booked.get(s.local());
        return minutes == null
                ? plus(
                        row,
                        new Cost(spent, 0, 0),
                        new Cost(0, facts.handsEnded().isPresent() ? 0 : s.personMinutes() / HOUR_MIN * hourly, 0))
                : plus(row, new Cost(spent, minutes / HOUR_MIN * rate(facts.people()), 0), Cost.NONE);
    }

    private double material(StepResult s) {
        double sum = 0;
        for (Need n : s.needs()) {
            if (n.cost().isPresent()) {
                sum += n.cost().getAsDouble();
            } else {
                unpriced.add(n.of());
            }
        }
        return sum;
    }

    /** The mean rate of those who worked; nobody pays whoever has none. */
    private double rate(List<String> people) {
        return people.stream()
                .mapToDouble(id -> definition
                        .shop()
                        .people()
                        .find(id)
                        .map(Person::hourly)
                        .orElse(OptionalDouble.empty())
                        .orElse(0))
                .average()
                .orElse(0);
    }

    private void order(Order o, Map<String, CostRow> made, Cost[] outside, List<String> open) {
        if (o.price().isEmpty()) {
            open.add(o.id());
            return;
        }
        Cost price = new Cost(0, 0, Double.parseDouble(o.price()));
        boolean spent = o.accepted().filter(a -> !a.at().isAfter(state.now())).isPresent();
        String part = made.containsKey(o.what())
                ? o.what()
                : o.needed().stream()
                        .map(n -> n.split("/", -1)[0])
                        .filter(made::containsKey)
                        .findFirst()
                        .orElse("");
        Cost toDate = spent ? price : Cost.NONE;
        Cost toGo = spent ? Cost.NONE : price;
        if (part.isEmpty()) {
            outside[0] = outside[0].plus(toDate);
            outside[1] = outside[1].plus(toGo);
        } else {
            made.computeIfPresent(part, (k, r) -> plus(r, toDate, toGo));
        }
    }

    private CostReport whole(Map<String, CostRow> made, CostRow rework, Cost[] outside, List<String> open) {
        CostRow whole = new CostRow(
                definition.facts().id(),
                definition.facts().name(),
                "",
                outside[0],
                outside[1],
                definition.facts().budget());
        for (CostRow r : made.values()) {
            whole = plus(whole, r.toDate(), r.toGo());
        }
        List<CostRow> assemblies = new ArrayList<>();
        for (Assembly a : definition.assemblies()) {
            CostRow sum = new CostRow(a.id(), a.name(), a.in().orElse(""), Cost.NONE, Cost.NONE, a.budget());
            for (CostRow r : made.values()) {
                if (isWithin(r.in(), a.id())) {
                    sum = plus(sum, r.toDate(), r.toGo());
                }
            }
            assemblies.add(sum);
        }
        return new CostReport(
                whole, assemblies, List.copyOf(made.values()), rework, hourly, List.copyOf(unpriced), open);
    }

    private boolean isWithin(String in, String assembly) {
        Optional<String> at = Optional.of(in);
        for (int i = 0; at.isPresent() && i <= definition.assemblies().items().size(); i++) {
            if (at.get().equals(assembly)) {
                return true;
            }
            at = definition.assemblies().find(at.get()).flatMap(Assembly::in);
        }
        return false;
    }
}
