package fayline.app.web.traveller;

import fayline.app.drawing.Mark;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.traveller.KnownLots;
import fayline.app.usecase.traveller.Missing;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.web.frame.Sight;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.Definition;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.record.RecordState;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import fayline.flow.result.mix.MixList;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Makes what a card shows of what goes into its step. */
public final class TravellerViews {
    private final Sight sight;
    private final Definition definition;
    private final RecordState state;
    private final StepResult step;
    private final StepAsks asks;
    private final StepMade made;
    private final LotWords lots;
    private final MadeWords words;
    private final Instant now;

    private TravellerViews(Sight sight, ShopRecord shop, StepResult step, String given) {
        this.sight = sight;
        this.definition = sight.definition();
        this.state = shop.state();
        this.step = step;
        this.asks = StepAsks.of(definition, step);
        this.made = state.made().step(step.id()).current();
        this.now = sight.time().now();
        this.lots = new LotWords(
                definition, KnownLots.of(definition, state, now), sight.time().today(), given);
        this.words = new MadeWords(sight, state);
    }

    /**
     * The view of a step.
     *
     * @param batches the card's batches by system
     * @param mayOverride whether a lot out of date may be allowed here
     * @param given a lot that was asked for by its label; empty for none
     */
    public static TravellerView of(
            Sight sight, ShopRecord shop, String step, List<MixList> batches, boolean mayOverride, String given) {
        StepResult result = sight.step(step).orElseThrow();
        return new TravellerViews(sight, shop, result, given).view(batches, mayOverride, given);
    }

    private TravellerView view(List<MixList> batches, boolean mayOverride, String given) {
        Optional<StepAsks.Ply> next = asks.plies().stream()
                .filter(p -> made.ply(String.valueOf(p.number())).isEmpty())
                .findFirst();
        Map<String, String> last = lastLots();
        List<TravellerView.Lots> plyLots = asks.plies().stream()
                .map(StepAsks.Ply::material)
                .distinct()
                .map(m -> lots.of(m, "", Optional.ofNullable(last.get(m))))
                .toList();
        List<TravellerView.Lots> stock = asks.materials().stream()
                .filter(m -> !asks.systems().contains(m))
                .map(m -> lots.of(m, "", Optional.ofNullable(last.get(m))))
                .filter(l -> !l.lots().isEmpty())
                .toList();
        return new TravellerView(
                asks.plies().stream().map(this::ply).toList(),
                next.map(p -> String.valueOf(p.number())).orElse(""),
                next.map(StepAsks.Ply::name).orElse(""),
                plyLots,
                asks.systems().stream()
                        .flatMap(s -> definition.systems().find(s).stream())
                        .map(s -> cup(s, batches))
                        .toList(),
                made.mixes().stream().map(words::mix).toList(),
                stock,
                made.draws().stream().map(words::draw).toList(),
                mayOverride,
                words.air(now),
                step.kind() == StepKind.BAG,
                words.leaks(step),
                Missing.of(definition, step, state, now).stream()
                        .map(m -> new TravellerView.Lack(m.key(), m.what()))
                        .toList(),
                given);
    }

    /** The lot of each material that was used last for this part. */
    private Map<String, String> lastLots() {
        Map<String, String> last = new TreeMap<>();
        String prefix = sight.definition().facts().id() + "/" + step.made() + "/";
        List<StepMade> mine = state.made().steps().tailMap(prefix).values().stream()
                .takeWhile(s -> s.step().startsWith(prefix))
                .toList();
        List<String> used = new ArrayList<>();
        mine.forEach(s -> {
            s.draws().forEach(d -> used.add(d.lot()));
            s.plies().stream().map(Laid::lot).filter(l -> !l.isEmpty()).forEach(used::add);
        });
        made.plies().stream().map(Laid::lot).filter(l -> !l.isEmpty()).forEach(used::add);
        KnownLots.of(definition, state, now).forEach(k -> {
            if (used.contains(k.id())) {
                last.put(k.of(), k.id());
            }
        });
        return last;
    }

    private TravellerView.Ply ply(StepAsks.Ply ply) {
        String number = String.valueOf(ply.number());
        Optional<Laid> laid = made.ply(number);
        return new TravellerView.Ply(
                number,
                ply.name(),
                ply.material(),
                laid.map(l -> l.skipped() ? "left out" : "laid").orElse("to lay"),
                laid.map(l -> l.skipped() ? Mark.TROUBLE : Mark.DONE).orElse(Mark.WAITING),
                laid.map(l -> l.skipped() ? "trouble" : "done").orElse(""),
                laid.map(words::laid).orElse(""));
    }

    private TravellerView.Cup cup(ResinSystem system, List<MixList> batches) {
        List<Mix> mixed = made.mixes().stream()
                .filter(m -> m.system().equals(system.id()))
                .toList();
        int planned = batches.stream()
                .filter(b -> b.system().equals(system.id()))
                .mapToInt(MixList::batches)
                .sum();
        int most = Math.max(planned, mixed.size()) + 1;
        List<String> numbers =
                IntStream.rangeClosed(1, most).mapToObj(String::valueOf).toList();
        String next = numbers.stream()
                .filter(n -> mixed.stream().noneMatch(m -> m.batch().equals(n)))
                .findFirst()
                .orElse(String.valueOf(most));
        Optional<Mix> before = mixed.isEmpty() ? Optional.empty() : Optional.of(mixed.get(mixed.size() - 1));
        return new TravellerView.Cup(
                system.id(),
                system.name(),
                numbers,
                next,
                lots.of(system.id(), "resin", before.map(Mix::resinLot)),
                lots.of(system.id(), "hardener", before.map(Mix::hardenerLot)),
                String.valueOf(system.partsResin()),
                String.valueOf(system.partsHardener()),
                String.valueOf(system.ratioTolerance().ratio()),
                definition.facts().units() == UnitSystem.INCH ? "oz" : "g");
    }
}
