package fayline.flow.result.stock;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityFormat;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.StoresResult.Item;
import fayline.flow.result.stock.StoresResult.Shortage;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks the stores against the work. A lot's quantity is what there was on the day it was received; steps begun since have drawn
 * from it, what was booked where it was booked, else what was computed, and a stock-take says anew what is left. What is to do draws in the order of its planned starts, first expired first out, and never from a lot that is out of date by then;
 * deliveries count from the day with which to plan. An order must be out a lead time before the day of use.
 */
public final class StoresCheck {
    private final Definition definition;
    private final ShopState state;
    private final ZoneId zone;
    private final QuantityFormat format;
    private final LotBook book;

    /**
     * Prepares a check.
     *
     * @param definition materials, systems, lots, deliveries
     * @param state what has happened
     */
    public StoresCheck(Definition definition, ShopState state) {
        this.definition = definition;
        this.state = state;
        this.zone = definition.shop().zone();
        this.format = new QuantityFormat(definition.facts().units());
        this.book = new LotBook(definition, state);
    }

    /**
     * Checks.
     *
     * @param steps every step, in the order of the definition
     * @param starts planned starts by step id; empty before there is a plan, and then everything on order counts
     */
    public StoresResult check(List<StepResult> steps, Map<String, Instant> starts) {
        Map<String, Thing> things = new LinkedHashMap<>();
        for (StepResult step : steps) {
            for (Need need : step.needs()) {
                split(need).forEach((component, amount) -> {
                    Thing thing = things.computeIfAbsent(
                            need.of() + "|" + component,
                            k -> new Thing(need.of(), component, need.amount(), new ArrayList<>(), new ArrayList<>()));
                    draw(thing, step, amount, starts);
                });
            }
        }
        held(things);
        List<Item> items = new ArrayList<>();
        List<LotStanding> standings = new ArrayList<>();
        List<Shortage> shortages = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Thing thing : things.values()) {
            check(thing, items, standings, shortages, findings);
        }
        List<String> order = book.lots().stream().map(Lot::id).toList();
        standings.sort(Comparator.comparingInt(l -> order.indexOf(l.lot().id())));
        shortages.sort(Comparator.comparing((Shortage s) -> s.by().orElse(Instant.MAX))
                .thenComparing(Shortage::of)
                .thenComparing(Shortage::component));
        List<Finding> notices = List.copyOf(findings);
        shortages.forEach(s -> findings.add(sentence(s)));
        return new StoresResult(items, standings, shortages, findings, notices);
    }

    /** Things in the stores that nothing needs. */
    private void held(Map<String, Thing> things) {
        for (Lot lot : book.lots()) {
            Quantity kind = lot.quantity().value();
            things.computeIfAbsent(
                    lot.of() + "|" + lot.component(),
                    k -> new Thing(
                            lot.of(),
                            lot.component(),
                            kind instanceof Area || kind instanceof Length ? kind : new Mass(kind.si()),
                            new ArrayList<>(),
                            new ArrayList<>()));
        }
    }

    /** An amount by component: a system's into resin and hardener by its ratio by mass. */
    private Map<String, Double> split(Need need) {
        Optional<ResinSystem> system = definition.systems().find(need.of());
        if (system.isEmpty()) {
            return Map.of("", need.amount().si());
        }
        double sum = system.get().partsResin() + system.get().partsHardener();
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("resin", need.amount().si() * system.get().partsResin() / sum);
        parts.put("hardener", need.amount().si() * system.get().partsHardener() / sum);
        return parts;
    }

    private void draw(Thing thing, StepResult step, double amount, Map<String, Instant> starts) {
        Optional<Instant> begun = step.work().actual().started();
        double drawn = begun.isPresent() ? 0 : book.fetched(thing, step.id());
        if (begun.isPresent()) {
            thing.done().add(new Thing.Draw(step, begun.get(), true, amount));
        } else if (step.work().state() == WorkStep.State.TODO && amount > drawn) {
            Optional<Instant> planned = Optional.ofNullable(starts.get(step.id()));
            thing.todo().add(new Thing.Draw(step, planned.orElse(state.now()), planned.isPresent(), amount - drawn));
        }
    }

    private void check(
            Thing thing,
            List<Item> items,
            List<LotStanding> standings,
            List<Shortage> shortages,
            List<Finding> findings) {
        Optional<Material> material = definition.materials().find(thing.of());
        Shelf shelf = book.shelf(thing, findings);
        standings.addAll(book.standings(thing, shelf));
        Quantity held = Amount.like(thing.kind(), shelf.good(state.now()));
        Quantity expired = Amount.like(thing.kind(), shelf.expired(state.now()));
        List<String> lots = shelf.lots(state.now());
        double coming = deliveries(shelf, thing, material, findings);
        double needed = thing.todo().stream().mapToDouble(Thing.Draw::amount).sum();
        items.add(new Item(
                thing.of(),
                thing.component(),
                Amount.like(thing.kind(), needed),
                held,
                expired,
                Amount.like(thing.kind(), coming),
                lots));
        if (expired.si() > 0) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    thing.of(),
                    show(expired) + " of " + name(thing.of(), thing.component())
                            + " is out of date and not counted; use it only by a recorded decision on a test piece.",
                    "the definition"));
        }
        shortage(shelf, thing).ifPresent(shortages::add);
    }

    private double deliveries(Shelf shelf, Thing thing, Optional<Material> material, List<Finding> findings) {
        double coming = 0;
        LocalDate today = state.now().atZone(zone).toLocalDate();
        for (Delivery d : definition.deliveries()) {
            boolean here = d.arrived().filter(a -> !a.isAfter(today)).isPresent()
                    || state.stock().receipts().stream()
                            .anyMatch(r -> r.order().equals(d.id()) && !r.at().isAfter(state.now()));
            if (here || !d.what().equals(thing.of())) {
                continue;
            }
            Optional<Double> amount = Amount.read(d.quantity()).flatMap(q -> Amount.as(q, thing.kind(), material));
            if (amount.isEmpty()) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        d.id(),
                        "Delivery " + d.id() + " of " + d.quantity() + " cannot be compared with what is needed.",
                        "the definition"));
                continue;
            }
            double part = amount.get() * share(thing);
            LocalDate day = d.planned().isBefore(today) ? today.plusDays(1) : d.planned();
            shelf.put(d.id(), day, Optional.empty(), part);
            coming += part;
        }
        return coming;
    }

    /** The share of a delivered mix that one component is. */
    private double share(Thing thing) {
        return definition
                .systems()
                .find(thing.of())
                .map(s -> (thing.component().equals("resin") ? s.partsResin() : s.partsHardener())
                        / (s.partsResin() + s.partsHardener()))
                .orElse(1.0);
    }

    private Optional<Shortage> shortage(Shelf shelf, Thing thing) {
        Instant far =
                LocalDate.of(9999, 1, 1).atTime(LocalTime.NOON).atZone(zone).toInstant();
        List<Thing.Draw> draws = new ArrayList<>(thing.todo());
        draws.sort(Comparator.comparing(d -> d.dated() ? d.at() : far));
        double missing = 0;
        Optional<Thing.Draw> first = Optional.empty();
        for (Thing.Draw d : draws) {
            double open = d.dated() ? shelf.take(todo(d), d.amount()) : undated(shelf, d);
            if (open > 0 && first.isEmpty()) {
                first = Optional.of(d);
            }
            missing += open;
        }
        double total = missing;
        return first.map(d -> shortage(thing, d, total));
    }

    private static Shelf.Why todo(Thing.Draw draw) {
        return new Shelf.Why(draw.at(), LotStanding.Sort.RECKONED, draw.step().id(), 0);
    }

    /** Where nothing says when, what is in date now is taken first and then what is on order, whenever it comes. */
    private double undated(Shelf shelf, Thing.Draw draw) {
        double open = shelf.take(
                new Shelf.Why(
                        state.now(), LotStanding.Sort.RECKONED, draw.step().id(), 0),
                draw.amount());
        return open > 0 ? shelf.takeComing(state.now(), open) : 0;
    }

    private Shortage shortage(Thing thing, Thing.Draw first, double missing) {
        Optional<Instant> by = first.dated() ? Optional.of(first.at()) : Optional.empty();
        Optional<LocalDate> orderBy = by.flatMap(b ->
                leadDays(thing.of()).map(days -> b.atZone(zone).toLocalDate().minusDays(days)));
        LocalDate today = state.now().atZone(zone).toLocalDate();
        return new Shortage(
                thing.of(),
                thing.component(),
                Amount.like(thing.kind(), missing),
                first.step().id(),
                by,
                orderBy,
                orderBy.filter(o -> o.isBefore(today)).isPresent());
    }

    private Optional<Long> leadDays(String of) {
        return definition
                .systems()
                .find(of)
                .flatMap(ResinSystem::leadTime)
                .or(() -> definition.materials().find(of).flatMap(Material::leadTime))
                .map(t -> (long) Math.ceil(t.days()));
    }

    private Finding sentence(Shortage s) {
        StringBuilder text = new StringBuilder(name(s.of(), s.component()) + " runs short by " + show(s.shortBy()));
        s.by().ifPresent(b -> text.append(", first on ").append(b.atZone(zone).toLocalDate()));
        text.append(" at ").append(s.step());
        s.orderBy()
                .ifPresent(o -> text.append(s.late() ? ": it should have been ordered by " + o : ": order it by " + o));
        return new Finding(
                s.late() ? Severity.STOP : Severity.CAUTION,
                s.of(),
                text.append(".").toString(),
                "the definition");
    }

    private String name(String of, String component) {
        String name = definition
                .systems()
                .find(of)
                .map(ResinSystem::name)
                .or(() -> definition.materials().find(of).map(Material::name))
                .orElse(of);
        return component.isEmpty() ? name : name + ", " + component;
    }

    private String show(Quantity q) {
        if (q instanceof Area a) {
            return format.area(a);
        }
        return q instanceof Length l ? format.length(l) : format.mass(new Mass(q.si()));
    }
}
