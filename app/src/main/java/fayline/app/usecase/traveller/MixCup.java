package fayline.app.usecase.traveller;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.project.stock.ResinSystem;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Records one cup: which batch of the card, both lots, and what the scale showed for both parts, as typed. A ratio out of
 * tolerance is said at once, with what mends it while it is wet; a cup without a scale reading is taken, marked so.
 */
public final class MixCup {
    private final ShopRecord shop;

    /** On a shop's record. */
    public MixCup(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * A cup.
     *
     * @param batch which batch of the card
     * @param system the system
     * @param resinLot lot of the resin; may be empty
     * @param hardenerLot lot of the hardener; may be empty
     * @param resin the scale's reading of the resin with its unit; empty where there was none
     * @param hardener the same of the hardener
     * @param why why there was no reading, or anything else to say of it
     */
    public record Cup(
            String batch,
            String system,
            String resinLot,
            String hardenerLot,
            String resin,
            String hardener,
            String why) {
        /** Whether both parts were read off a scale. */
        public boolean weighed() {
            return !resin.isEmpty() && !hardener.isEmpty();
        }
    }

    /**
     * Records it.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param asks what the step should have
     * @param cup the cup
     * @param time when the parts met
     */
    public Outcome mix(Sent sent, String step, StepAsks asks, Cup cup, BenchTime time) {
        return new StepDeed(shop, sent, step, time)
                .record(EntryKind.MIX_MADE, "The mix was not recorded.", (d, checks, at, cautions) -> {
                    check(checks, d, cup);
                    if (sent.live()) {
                        lots(checks, d, asks, step, cup, at);
                    }
                    cautions.addAll(cautions(d, step, cup));
                    return fields(cup);
                });
    }

    private static Value.Fields fields(Cup cup) {
        return Value.Fields.NONE
                .withUnlessEmpty("batch", cup.batch())
                .with("system", cup.system())
                .withUnlessEmpty("resin-lot", cup.resinLot())
                .withUnlessEmpty("hardener-lot", cup.hardenerLot())
                .withUnlessEmpty("resin", cup.resin())
                .withUnlessEmpty("hardener", cup.hardener())
                .with("weighed", cup.weighed() ? "yes" : "no")
                .withUnlessEmpty("why", cup.why());
    }

    private static void check(Checks checks, Definition d, Cup cup) {
        if (d.systems().find(cup.system()).isEmpty()) {
            checks.stop("system", "\"" + cup.system() + "\"", "a mixed system of the definition", "");
        }
        if (!cup.batch().isEmpty() && !cup.batch().matches("[1-9][0-9]{0,3}")) {
            checks.stop("batch", "\"" + cup.batch() + "\"", "the number of a batch, from 1", "");
        }
        checks.text("why", cup.why(), false);
        Map<String, String> scale = new TreeMap<>(Map.of("resin", cup.resin(), "hardener", cup.hardener()));
        scale.forEach((name, typed) -> {
            if (typed.isEmpty()) {
                if (!cup.resin().isEmpty() || !cup.hardener().isEmpty()) {
                    checks.stop(name, "nothing", "what the scale showed for both parts, or for neither", "");
                }
            } else if (MixVerdict.mass(typed).isEmpty()) {
                checks.stop(name, "\"" + typed + "\"", "a mass above nought with its unit, such as 214.5 g", "");
            }
        });
    }

    private void lots(Checks checks, Definition d, StepAsks asks, String step, Cup cup, Instant at) {
        if (!asks.systems().contains(cup.system())) {
            checks.stop(
                    "system",
                    StepAsks.materialName(d, cup.system()),
                    asks.systems().isEmpty()
                            ? "no mix at this step"
                            : String.join(
                                    " or ",
                                    asks.systems().stream()
                                            .map(s -> StepAsks.materialName(d, s))
                                            .toList()),
                    "wrong material: nobody can allow it here; a change of material is a change of the definition");
            return;
        }
        List<Lot> known = KnownLots.of(d, shop.state(), at);
        lot(checks, d, known, step, cup.system(), new String[] {"resin-lot", cup.resinLot(), "resin"}, at);
        lot(checks, d, known, step, cup.system(), new String[] {"hardener-lot", cup.hardenerLot(), "hardener"}, at);
    }

    private void lot(
            Checks checks, Definition d, List<Lot> known, String step, String system, String[] named, Instant at) {
        if (named[1].isEmpty()) {
            return;
        }
        boolean allowed = LotRules.isAllowed(shop.state().made(), step, named[1]);
        LotRules.check(
                d, known, new LotRules.Use(named[0], named[1], system, named[2], List.of(system), at, allowed), checks);
    }

    private static List<Finding> cautions(Definition d, String step, Cup cup) {
        if (!cup.weighed()) {
            return List.of(new Finding(
                    Severity.CAUTION,
                    step,
                    "No scale reading of this mix: it is marked so, and a stock-take will look at its lots.",
                    "common practice, no source"));
        }
        return d.systems().find(cup.system()).stream()
                .flatMap(s -> trouble(s, cup).stream())
                .toList();
    }

    private static List<Finding> trouble(ResinSystem system, Cup cup) {
        return MixVerdict.of(system, cup.resin(), cup.hardener())
                .filter(v -> !v.inTolerance())
                .map(v -> List.of(new Finding(Severity.STOP, system.id(), v.sentence(), "the definition")))
                .orElse(List.of());
    }
}
