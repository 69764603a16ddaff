package fayline.app.usecase.traveller;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.made.StepMade;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Ticks one ply of a step. Plies are laid in their order: one out of order, and one left out, need a reason. One ply at a time:
 * nothing ticks several at once.
 */
public final class LayPly {
    private final ShopRecord shop;

    /** On a shop's record. */
    public LayPly(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is ticked.
     *
     * @param number the ply's place in the step, from 1, as typed
     * @param name what a history calls it; at the bench the card's own words count
     * @param lot the lot it was cut from; may be empty
     * @param skipped whether it is left out
     * @param why why it is left out or out of order
     */
    public record Ticked(String number, String name, String lot, boolean skipped, String why) {}

    /**
     * Records it.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param asks what the step should have
     * @param ticked the ply
     * @param time when
     */
    public Outcome lay(Sent sent, String step, StepAsks asks, Ticked ticked, BenchTime time) {
        return new StepDeed(shop, sent, step, time)
                .record(EntryKind.PLY_LAID, "The ply was not recorded.", (d, checks, at, cautions) -> {
                    checks.text("why", ticked.why(), ticked.skipped());
                    checks.text("name", ticked.name(), false);
                    if (!ticked.number().matches("[1-9][0-9]{0,3}")) {
                        checks.stop("ply", "\"" + ticked.number() + "\"", "the number of a ply, from 1", "");
                    }
                    Optional<StepAsks.Ply> ply = asks.ply(ticked.number());
                    if (sent.live() && !shop.knows(sent.client())) {
                        if (ply.isEmpty()) {
                            checks.stop(
                                    "ply",
                                    "ply " + ticked.number(),
                                    "a ply of this step, 1 to " + asks.plies().size(),
                                    "");
                        }
                        order(checks, shop.state().made().step(step).current(), asks, ticked);
                        ply.ifPresent(p -> lot(d, checks, step, p, ticked, at));
                    }
                    return Value.Fields.NONE
                            .with("ply", ticked.number())
                            .withUnlessEmpty("name", ply.map(StepAsks.Ply::name).orElse(ticked.name()))
                            .withUnlessEmpty("lot", ticked.lot())
                            .withUnlessEmpty("skipped", ticked.skipped() ? "yes" : "")
                            .withUnlessEmpty("why", ticked.why());
                });
    }

    private static void order(Checks checks, StepMade made, StepAsks asks, Ticked ticked) {
        made.ply(ticked.number())
                .filter(p -> !p.skipped() || ticked.skipped())
                .ifPresent(p -> checks.stop(
                        "ply",
                        "ply " + ticked.number() + " a second time",
                        "a ply that is not ticked yet",
                        "entry " + p.seq() + " by " + p.by() + " ticks it; take that back first if it is wrong"));
        List<Integer> open = asks.plies().stream()
                .map(StepAsks.Ply::number)
                .filter(n -> made.ply(String.valueOf(n)).isEmpty())
                .filter(n -> ticked.number().length() < 5
                        && ticked.number().matches("\\d+")
                        && n < Integer.parseInt(ticked.number()))
                .toList();
        if (!open.isEmpty() && ticked.why().isBlank()) {
            checks.stop(
                    "why",
                    "ply " + ticked.number() + " before ply " + open.get(0),
                    "ply " + open.get(0) + " next",
                    "lay the plies in their order, or say why not");
        }
    }

    private void lot(Definition d, Checks checks, String step, StepAsks.Ply ply, Ticked ticked, Instant at) {
        if (ticked.lot().isEmpty()) {
            return;
        }
        // A lot out of date is allowed once, where it is drawn; the ply then follows that.
        boolean allowed = LotRules.isAllowed(shop.state().made(), step, ticked.lot());
        LotRules.check(
                d,
                KnownLots.of(d, shop.state(), at),
                new LotRules.Use("lot", ticked.lot(), ply.material(), "", List.of(ply.material()), at, allowed),
                checks);
    }
}
