package fayline.app.usecase.stores;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.ProjectDeed;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.RecordedState;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.made.Mix;
import fayline.flow.record.payload.Value;
import fayline.flow.record.stock.StockState;
import fayline.flow.record.stock.StockTake;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.stock.take.LotAudit;
import fayline.flow.result.stock.take.StockTakeAudit;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Records a stock-take and audits the mixing ratio of every system of which a lot was counted. Where a ratio was not kept, a deviation
 * is raised for each part that the mixes in doubt went into, in the same transaction.
 */
public final class TakeStock {
    private final ShopRecord shop;

    /** On a shop's record. */
    public TakeStock(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What the stock-take is judged against.
     *
     * @param state what has happened to the project
     * @param steps the project's steps with what they take
     */
    public record Against(ShopState state, List<StepResult> steps) {
        /** Copies the list. */
        public Against {
            steps = List.copyOf(steps);
        }

        /** A project as it was at a moment. */
        public static Against of(ShopRecord shop, String project, Instant at) {
            ShopState state = RecordedState.of(shop.state(), project, at);
            return new Against(
                    state,
                    shop.definition(project)
                            .map(d -> ProjectCalculator.calculate(d, state).steps())
                            .orElse(List.of()));
        }
    }

    /**
     * Records a stock-take.
     *
     * @param sent who sends it under which id
     * @param project the project whose steps draw from the stores
     * @param counts the lots counted with what is left of each, as typed
     * @param against what it is judged against
     * @param at when; now where nothing is said
     */
    public Outcome take(
            Sent sent, String project, List<StockTake.Count> counts, Against against, Optional<Instant> at) {
        return ProjectDeed.decide(shop, sent, project, at, (definition, checks, when) -> {
            check(definition, checks, counts, when);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The stock-take was not recorded.", checks.problems());
            }
            List<LotAudit> audits = audits(definition, against, new StockTake(Long.MAX_VALUE, when, sent.by(), counts));
            List<NewEntry> entries = new ArrayList<>();
            entries.add(Checks.entry(shop, sent, "", EntryKind.STOCK_TAKEN, payload(counts, when)));
            audits.forEach(a -> a.suspectParts().forEach(p -> entries.add(deviation(sent, a, p, when))));
            return told(shop.append(entries).get(0), audits);
        });
    }

    private void check(Definition d, Checks checks, List<StockTake.Count> counts, Instant when) {
        List<Lot> lots = StoreChecks.lots(d, shop, when);
        StoreChecks own = new StoreChecks(d, checks);
        Set<String> once = new HashSet<>();
        if (counts.isEmpty()) {
            checks.stop("counts", "nothing", "what is left of at least one lot", "");
        }
        for (StockTake.Count c : counts) {
            Optional<Lot> lot =
                    lots.stream().filter(l -> l.id().equals(c.lot())).findFirst();
            if (lot.isEmpty()) {
                checks.stop("counts", "lot \"" + c.lot() + "\"", "a lot that the stores hold", "");
            } else if (!once.add(c.lot())) {
                checks.stop("counts", "lot " + c.lot() + " twice", "each lot once", "");
            } else {
                own.amountOf("counts." + c.lot(), c.left(), lot.get());
            }
        }
    }

    private List<LotAudit> audits(Definition d, Against against, StockTake take) {
        StockState stock = shop.state().stock();
        ShopState state = against.state()
                .withNow(take.at())
                .withStores(
                        shop.state().made(),
                        new StockState(
                                stock.receipts(),
                                stock.moves(),
                                Stream.concat(stock.takes().stream(), Stream.of(take))
                                        .toList(),
                                stock.orders()));
        return new StockTakeAudit(d, state, against.steps()).of(take);
    }

    private static Value.Fields payload(List<StockTake.Count> counts, Instant when) {
        List<Value> rows = new ArrayList<>();
        counts.forEach(c -> rows.add(Value.Fields.NONE.with("lot", c.lot()).with("left", c.left())));
        return Value.Fields.NONE.with("at", when.toString()).with("counts", new Value.Many(rows));
    }

    private NewEntry deviation(Sent sent, LotAudit audit, String part, Instant when) {
        String[] bits = part.split("/", -1);
        Sent own = sent.along(audit.system() + " " + part);
        return Checks.entry(
                shop,
                own,
                bits[0],
                EntryKind.DEVIATION_RAISED,
                Value.Fields.NONE
                        .with("about", part)
                        .with("at", when.toString())
                        .with("text", text(audit, part))
                        .with("structural", "yes"));
    }

    private static String text(LotAudit audit, String part) {
        String mixes = audit.suspectMixes().stream()
                .filter(m -> m.step().startsWith(part + "/"))
                .map(TakeStock::name)
                .collect(Collectors.joining("; "));
        String found = audit.result().stream()
                .flatMap(r -> r.findings().stream())
                .map(Finding::sentence)
                .collect(Collectors.joining(" "));
        return "Stock-take of " + audit.system() + ", lots " + String.join(", ", audit.resinLots()) + " and "
                + String.join(", ", audit.hardenerLots()) + ". " + found
                + (mixes.isEmpty() ? " No mix was recorded for its steps." : " Mixes in doubt here: " + mixes + ".");
    }

    private static String name(Mix m) {
        String step = m.step().substring(m.step().indexOf('/') + 1);
        return "batch " + m.batch() + " at " + step + " (entry " + m.seq() + ")";
    }

    private static Outcome told(Outcome outcome, List<LotAudit> audits) {
        if (!outcome.stands()) {
            return outcome;
        }
        List<Finding> findings = audits.stream()
                .flatMap(a -> a.result().stream())
                .flatMap(r -> r.findings().stream())
                .toList();
        long parts = audits.stream()
                .flatMap(a -> a.suspectParts().stream())
                .distinct()
                .count();
        Outcome with = outcome.with(findings);
        return parts == 0
                ? with
                : with.saying("A deviation is raised for each of " + parts + (parts == 1 ? " part." : " parts."));
    }
}
