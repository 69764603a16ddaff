package fayline.flow.result.stock;

import fayline.basis.units.Entered;
import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.Material;
import fayline.flow.project.stock.Price;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.MadeState;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.stock.Receipt;
import fayline.flow.record.stock.StockState;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The lots of the stores: the opening stock of the definition, and what the record says came since. */
public final class Lots {
    private Lots() {}

    /**
     * All lots up to a moment. One that keeps only so long once opened is opened by its first use, where nothing else is said.
     *
     * @param d the definition
     * @param stock what came
     * @param made what was used
     * @param now the moment; nothing after it counts
     */
    public static List<Lot> of(Definition d, StockState stock, MadeState made, Instant now) {
        List<Lot> all = new ArrayList<>(d.lots().items());
        Set<String> ids = new HashSet<>(all.stream().map(Lot::id).toList());
        for (Receipt r : stock.receipts()) {
            if (!r.at().isAfter(now) && isKnown(d, r.of()) && !ids.contains(r.lot())) {
                lot(r).ifPresent(l -> {
                    ids.add(l.id());
                    all.add(l);
                });
            }
        }
        boolean any = all.stream()
                .anyMatch(l -> l.opened().isEmpty() && l.openedLife().isPresent());
        if (!any) {
            return List.copyOf(all);
        }
        Map<String, Instant> first = firstUses(made, now);
        return all.stream().map(l -> opened(l, first, d.shop().zone())).toList();
    }

    private static boolean isKnown(Definition d, String of) {
        return d.materials().find(of).isPresent() || d.systems().find(of).isPresent();
    }

    private static Lot opened(Lot lot, Map<String, Instant> first, ZoneId zone) {
        Instant at = first.get(lot.id());
        return lot.opened().isPresent() || lot.openedLife().isEmpty() || at == null
                ? lot
                : lot.openedOn(at.atZone(zone).toLocalDate());
    }

    private static Map<String, Instant> firstUses(MadeState made, Instant now) {
        Map<String, Instant> first = new HashMap<>();
        for (StepMade s : made.steps().values()) {
            for (Draw x : s.draws()) {
                used(first, x.lot(), x.at(), now);
            }
            for (Mix m : s.mixes()) {
                used(first, m.resinLot(), m.at(), now);
                used(first, m.hardenerLot(), m.at(), now);
            }
            for (Laid p : s.plies()) {
                used(first, p.skipped() ? "" : p.lot(), p.at(), now);
            }
        }
        return first;
    }

    private static void used(Map<String, Instant> first, String lot, Instant at, Instant now) {
        if (!lot.isEmpty() && !at.isAfter(now)) {
            first.merge(lot, at, (a, b) -> a.isBefore(b) ? a : b);
        }
    }

    /** How long what a lot is of may be out of the cold; empty where it need not be kept there. */
    public static Optional<TimeSpan> outLife(Definition d, String of) {
        return d.systems()
                .find(of)
                .flatMap(ResinSystem::outLife)
                .or(() -> d.materials().find(of).flatMap(Material::outLife));
    }

    /** How long a lot has been out of the cold, where that counts. */
    public static Optional<OutOfCold> out(Definition d, StockState stock, Lot lot, Instant now) {
        return outLife(d, lot.of()).map(limit -> OutOfCold.of(lot.id(), limit, stock.moves(), now));
    }

    /** The last day on which a lot may be used: by its date, its opened life, or the day before its time out of the cold is used up. */
    public static Optional<LocalDate> lastDay(Lot lot, Optional<OutOfCold> out, ZoneId zone) {
        Optional<LocalDate> cold = out.flatMap(OutOfCold::ends)
                .map(e -> e.atZone(zone).toLocalDate().minusDays(1));
        Optional<LocalDate> dated = lot.lastDay();
        return cold.isPresent() && dated.isPresent()
                ? Optional.of(cold.get().isBefore(dated.get()) ? cold.get() : dated.get())
                : cold.or(() -> dated);
    }

    /** A lot as a receipt tells it; empty where its words cannot be read: they were checked when it was taken. */
    static Optional<Lot> lot(Receipt r) {
        Optional<Entered<? extends Quantity>> quantity =
                Amount.read(r.quantity()).map(q -> new Entered<>(r.quantity(), q));
        Optional<LocalDate> received = day(r.received());
        if (quantity.isEmpty() || received.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Lot(
                r.lot(),
                r.of(),
                r.component(),
                quantity.get(),
                received.get(),
                day(r.expires()),
                Optional.empty(),
                span(r.openedLife()),
                r.weighed(),
                Price.read(r.price())));
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<TimeSpan> span(String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(
                            QuantityParser.parse(text, QuantityKind.TIME_SPAN).value());
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }
}
