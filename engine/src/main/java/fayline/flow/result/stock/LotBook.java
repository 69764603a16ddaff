package fayline.flow.result.stock;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.record.stock.StockTake;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/** Puts lots on a shelf and moves them as it happened: opening, what was used, what was counted, in the order of time. */
final class LotBook {
    private final Definition definition;
    private final ShopState state;
    private final ZoneId zone;
    private final List<Lot> lots;
    private final Map<String, List<BookedUse>> uses;

    LotBook(Definition definition, ShopState state) {
        this.definition = definition;
        this.state = state;
        this.zone = definition.shop().zone();
        this.lots = Lots.of(definition, state.stock(), state.made(), state.now());
        this.uses = BookedUse.byStep(definition, state, lots);
    }

    /** All lots, those of the definition first. */
    List<Lot> lots() {
        return lots;
    }

    /** What was fetched for a step, as far as anybody gave an amount. */
    double fetched(Thing thing, String step) {
        return usesOf(thing, within(step)).stream()
                .flatMap(u -> u.amount().stream())
                .flatMap(a -> Amount.as(a, thing.kind(), material(thing)).stream())
                .mapToDouble(Double::doubleValue)
                .sum();
    }

    private List<BookedUse> usesOf(Thing thing, String step) {
        return uses.getOrDefault(step, List.of()).stream()
                .filter(u -> u.is(thing.of(), thing.component()))
                .toList();
    }

    private String within(String step) {
        String project = definition.facts().id() + "/";
        return step.startsWith(project) ? step.substring(project.length()) : step;
    }

    private Optional<Material> material(Thing thing) {
        return definition.materials().find(thing.of());
    }

    /** The lots of a thing with what is left of them now. */
    Shelf shelf(Thing thing, List<Finding> findings) {
        Shelf shelf = new Shelf(zone);
        for (Lot lot : lots) {
            if (lot.of().equals(thing.of()) && lot.component().equals(thing.component())) {
                Optional<Double> amount = Amount.as(lot.quantity().value(), thing.kind(), material(thing));
                amount.ifPresent(a -> shelf.put(lot, lastDay(lot), a));
                if (amount.isEmpty()) {
                    findings.add(new Finding(
                            Severity.CAUTION,
                            lot.id(),
                            "Lot " + lot.id() + " is written as " + lot.quantity()
                                    + ", which cannot be compared with what is needed; give the roll width or the areal mass.",
                            "the definition"));
                }
            }
        }
        List<Event> events = new ArrayList<>(counts(thing));
        Set<String> told = new HashSet<>();
        for (Thing.Draw d : thing.done()) {
            String step = within(d.step().id());
            told.add(step);
            events.addAll(drawn(thing, d, usesOf(thing, step)));
        }
        // What was fetched for a step that has not begun, or for another project, is gone all the same.
        uses.forEach((step, all) -> all.stream()
                .filter(u -> u.is(thing.of(), thing.component()) && !told.contains(step))
                .forEach(u -> amount(thing, u).ifPresent(a -> events.add(taking(u, u.at().orElse(state.now()), a)))));
        events.sort(Comparator.comparing(Event::at));
        events.forEach(e -> e.effect().accept(shelf));
        return shelf;
    }

    private record Event(Instant at, Consumer<Shelf> effect) {}

    private List<Event> counts(Thing thing) {
        List<Event> events = new ArrayList<>();
        for (StockTake t : state.stock().takes()) {
            for (StockTake.Count c : t.counts()) {
                boolean own = lots.stream()
                        .anyMatch(l -> l.id().equals(c.lot())
                                && l.of().equals(thing.of())
                                && l.component().equals(thing.component()));
                if (own && !t.at().isAfter(state.now())) {
                    Shelf.Why why = new Shelf.Why(t.at(), LotStanding.Sort.COUNTED, "", t.seq());
                    Amount.read(c.left())
                            .flatMap(q -> Amount.as(q, thing.kind(), material(thing)))
                            .ifPresent(a -> events.add(new Event(t.at(), s -> s.count(c.lot(), why, a))));
                }
            }
        }
        return events;
    }

    /**
     * What a begun step has drawn: what was booked of this thing where anything was, else what was computed. What nobody gave an amount for
     * shares what is left of the computed amount.
     */
    private List<Event> drawn(Thing thing, Thing.Draw draw, List<BookedUse> booked) {
        if (booked.isEmpty()) {
            Shelf.Why why = new Shelf.Why(
                    draw.at(), LotStanding.Sort.RECKONED, within(draw.step().id()), 0);
            return List.of(new Event(draw.at(), s -> s.take(why, draw.amount())));
        }
        double known = booked.stream()
                .flatMap(u -> amount(thing, u).stream())
                .mapToDouble(Double::doubleValue)
                .sum();
        long unknown = booked.stream().filter(u -> amount(thing, u).isEmpty()).count();
        double each = unknown == 0 ? 0 : Math.max(0, draw.amount() - known) / unknown;
        return booked.stream()
                .map(u -> taking(u, u.at().orElse(draw.at()), amount(thing, u).orElse(each)))
                .toList();
    }

    private Optional<Double> amount(Thing thing, BookedUse use) {
        return use.amount().flatMap(a -> Amount.as(a, thing.kind(), material(thing)));
    }

    private static Event taking(BookedUse use, Instant at, double amount) {
        LotStanding.Sort sort = use.amount().isPresent() ? use.sort() : LotStanding.Sort.RECKONED;
        Shelf.Why why = new Shelf.Why(at, sort, use.step(), use.seq());
        return new Event(at, s -> {
            if (use.lot().isEmpty()) {
                s.take(why, amount);
            } else {
                s.takeFrom(use.lot(), why, amount);
            }
        });
    }

    private Optional<LocalDate> lastDay(Lot lot) {
        return Lots.lastDay(lot, Lots.out(definition, state.stock(), lot, state.now()), zone);
    }

    /** What is left of the lots of a thing, and why. */
    List<LotStanding> standings(Thing thing, Shelf shelf) {
        return lots.stream()
                .filter(l -> l.of().equals(thing.of()) && l.component().equals(thing.component()))
                .map(l -> new LotStanding(
                        l,
                        Amount.like(thing.kind(), shelf.left(l.id())),
                        lastDay(l),
                        Lots.out(definition, state.stock(), l, state.now()),
                        shelf.moves(l.id()).stream()
                                .map(m -> new LotStanding.Move(
                                        m.why().at(),
                                        m.why().sort(),
                                        m.why().step(),
                                        m.why().seq(),
                                        Amount.like(thing.kind(), m.change()),
                                        Amount.like(thing.kind(), m.left())))
                                .toList()))
                .toList();
    }
}
