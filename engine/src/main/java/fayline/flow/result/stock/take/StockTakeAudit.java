package fayline.flow.result.stock.take;

import fayline.basis.units.Mass;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.stock.StockTake;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.Amount;
import fayline.flow.result.stock.Lots;
import fayline.method.mix.audit.Counted;
import fayline.method.mix.audit.RatioAudit;
import fayline.method.mix.audit.RatioAuditCalculator;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Audits the mixing ratio of each system by a stock-take. What was there before is the count of the latest earlier stock-take that counted
 * every one of the lots, else what was received. Assumed, and to be shown so: a coverage of 95 percent, and what labels may be off.
 */
public final class StockTakeAudit {
    private static final double COVERAGE = 0.95;
    private static final String RESIN = "resin";
    private final Definition definition;
    private final ShopState state;
    private final List<StepResult> steps;
    private final List<Lot> lots;

    /**
     * Prepares.
     *
     * @param definition the definition
     * @param state what has happened; entries after its moment do not count
     * @param steps the project's steps with what they take
     */
    public StockTakeAudit(Definition definition, ShopState state, List<StepResult> steps) {
        this.definition = definition;
        this.state = state;
        this.steps = List.copyOf(steps);
        this.lots = Lots.of(definition, state.stock(), state.made(), state.now());
    }

    /** What the latest stock-take of each group of lots says, and every earlier one, the latest first. */
    public List<LotAudit> all() {
        List<LotAudit> all = new ArrayList<>();
        for (StockTake t : takes()) {
            all.addAll(0, of(t));
        }
        return all;
    }

    private List<StockTake> takes() {
        return state.stock().takes().stream()
                .filter(t -> !t.at().isAfter(state.now()))
                .sorted(Comparator.comparing(StockTake::at))
                .toList();
    }

    /** What one stock-take says of each system of which it counted a lot. */
    public List<LotAudit> of(StockTake take) {
        Set<String> counted = take.counts().stream().map(StockTake.Count::lot).collect(Collectors.toSet());
        List<LotAudit> audits = new ArrayList<>();
        for (ResinSystem system : definition.systems()) {
            List<Lot> own = lots.stream()
                    .filter(l -> l.of().equals(system.id()) && !isLater(l, take))
                    .toList();
            List<Mix> mixes = mixes(system, take);
            List<StepResult> untold = untold(system, take);
            Set<String> mingled = mingled(own, mixes, untold);
            for (List<Lot> group : LotGroups.of(own, mixes, mingled)) {
                if (group.stream().anyMatch(l -> counted.contains(l.id()))) {
                    boolean any = group.stream().anyMatch(l -> mingled.contains(l.id()));
                    audits.add(audit(take, system, group, mixes, any ? untold : List.of()));
                }
            }
        }
        return audits;
    }

    /** Lots that were there when something was used of which nobody named the lot: it may have come from any of them. */
    private Set<String> mingled(List<Lot> own, List<Mix> mixes, List<StepResult> untold) {
        Optional<Instant> last = Stream.concat(
                        mixes.stream().filter(StockTakeAudit::isNameless).map(Mix::at),
                        untold.stream().flatMap(s -> begun(s).stream()))
                .max(Comparator.naturalOrder());
        return last.map(at -> own.stream()
                        .filter(l -> wasThere(l, at))
                        .map(Lot::id)
                        .collect(Collectors.toCollection(TreeSet::new)))
                .orElseGet(TreeSet::new);
    }

    private static boolean isNameless(Mix m) {
        return m.resinLot().isEmpty() || m.hardenerLot().isEmpty();
    }

    private boolean isLater(Lot lot, StockTake take) {
        return state.stock()
                .receipt(lot.id())
                .map(r -> r.at().isAfter(take.at()))
                .orElse(lot.received().isAfter(take.at().atZone(zone()).toLocalDate()));
    }

    private ZoneId zone() {
        return definition.shop().zone();
    }

    private List<Mix> mixes(ResinSystem system, StockTake take) {
        return state.made().steps().values().stream()
                .flatMap(s -> s.mixes().stream())
                .filter(m -> m.system().equals(system.id()) && !m.at().isAfter(take.at()))
                .toList();
    }

    /** Steps of this project that took a system by then, and of which nobody recorded a mix. */
    private List<StepResult> untold(ResinSystem system, StockTake take) {
        return steps.stream()
                .filter(s -> s.needs().stream().map(Need::of).anyMatch(system.id()::equals))
                .filter(s -> begun(s).filter(b -> !b.isAfter(take.at())).isPresent())
                .filter(s -> made(s).mixes().stream().noneMatch(m -> m.system().equals(system.id())))
                .toList();
    }

    private static Optional<Instant> begun(StepResult step) {
        return step.work().actual().started();
    }

    private StepMade made(StepResult step) {
        return state.made().step(full(step));
    }

    private String full(StepResult step) {
        String project = definition.facts().id() + "/";
        return step.id().startsWith(project) ? step.id() : project + step.id();
    }

    private LotAudit audit(
            StockTake take, ResinSystem system, List<Lot> group, List<Mix> mixes, List<StepResult> untold) {
        Set<String> ids = group.stream().map(Lot::id).collect(Collectors.toSet());
        Optional<StockTake> start = start(take, group);
        Optional<Instant> since = start.map(StockTake::at);
        List<Mix> own = mixes.stream()
                .filter(m -> ids.contains(m.resinLot())
                        || ids.contains(m.hardenerLot())
                        || (isNameless(m) && group.stream().anyMatch(l -> wasThere(l, m.at()))))
                .filter(m -> since.filter(s -> !m.at().isAfter(s)).isEmpty())
                .toList();
        List<Mix> read = own.stream().filter(StockTakeAudit::isRead).toList();
        List<Mix> unread = own.stream().filter(m -> !isRead(m)).toList();
        List<String> steps = untold.stream()
                .filter(s ->
                        since.flatMap(t -> begun(s).filter(b -> !b.isAfter(t))).isEmpty())
                .map(this::full)
                .toList();
        List<Lot> resin = part(group, true);
        List<Lot> hardener = part(group, false);
        List<String> uncounted =
                group.stream().map(Lot::id).filter(id -> take.of(id).isEmpty()).toList();
        boolean whole = uncounted.isEmpty() && !resin.isEmpty() && !hardener.isEmpty();
        return new LotAudit(
                take.seq(),
                take.at(),
                system.id(),
                resin.stream().map(Lot::id).toList(),
                hardener.stream().map(Lot::id).toList(),
                since,
                uncounted,
                whole
                        ? Optional.of(RatioAuditCalculator.calculate(new RatioAudit(
                                system.partsResin(),
                                system.partsHardener(),
                                system.ratioTolerance(),
                                counted(resin, start, take),
                                counted(hardener, start, take),
                                taken(read),
                                unread.size() + steps.size(),
                                COVERAGE)))
                        : Optional.empty(),
                read,
                unread,
                steps,
                group.stream().anyMatch(l -> !l.weighed() && countAt(start, l).isEmpty()));
    }

    private boolean wasThere(Lot lot, Instant at) {
        return state.stock()
                .receipt(lot.id())
                .map(r -> !r.at().isAfter(at))
                .orElse(!lot.received().isAfter(at.atZone(zone()).toLocalDate()));
    }

    private static List<Lot> part(List<Lot> group, boolean resin) {
        return group.stream().filter(l -> l.component().equals(RESIN) == resin).toList();
    }

    private static boolean isRead(Mix m) {
        return m.weighed() && mass(m.resin()).isPresent() && mass(m.hardener()).isPresent();
    }

    private static Optional<Mass> mass(String typed) {
        return Amount.read(typed).filter(Mass.class::isInstance).map(Mass.class::cast);
    }

    /** The latest earlier stock-take that counted every one of the lots there were then, one of each part at least. */
    private Optional<StockTake> start(StockTake take, List<Lot> group) {
        return takes().stream()
                .filter(t -> t.at().isBefore(take.at()))
                .filter(t -> {
                    List<Lot> then = group.stream().filter(l -> !isLater(l, t)).toList();
                    return !then.isEmpty()
                            && then.stream().allMatch(l -> t.of(l.id()).isPresent());
                })
                .reduce((a, b) -> b);
    }

    private static Optional<StockTake.Count> countAt(Optional<StockTake> take, Lot lot) {
        return take.flatMap(t -> t.of(lot.id()));
    }

    private static Counted counted(List<Lot> lots, Optional<StockTake> start, StockTake take) {
        Counted sum = new Counted(new Mass(0), new Mass(0), new Mass(0), new Mass(0));
        for (Lot lot : lots) {
            String before = countAt(start, lot)
                    .map(StockTake.Count::left)
                    .orElse(lot.quantity().asTyped());
            Mass there = mass(before).orElse(new Mass(0));
            boolean label = countAt(start, lot).isEmpty() && !lot.weighed();
            String left = take.of(lot.id()).map(StockTake.Count::left).orElse("0 g");
            Mass now = mass(left).orElse(new Mass(0));
            sum = sum.plus(new Counted(
                    there,
                    label ? Spread.ofLabel(there) : Spread.ofReading(before, there),
                    now,
                    Spread.ofReading(left, now)));
        }
        return sum;
    }

    private static RatioAudit.Read taken(List<Mix> read) {
        double resin = 0;
        double hardener = 0;
        double resinSquares = 0;
        double hardenerSquares = 0;
        for (Mix m : read) {
            Mass r = mass(m.resin()).orElse(new Mass(0));
            Mass h = mass(m.hardener()).orElse(new Mass(0));
            resin += r.kilograms();
            hardener += h.kilograms();
            resinSquares += Math.pow(Spread.ofReading(m.resin(), r).kilograms(), 2);
            hardenerSquares += Math.pow(Spread.ofReading(m.hardener(), h).kilograms(), 2);
        }
        return new RatioAudit.Read(
                read.size(),
                new Mass(resin),
                new Mass(hardener),
                new Mass(Math.sqrt(resinSquares)),
                new Mass(Math.sqrt(hardenerSquares)));
    }
}
