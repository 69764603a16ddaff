package fayline.app.usecase.traveller;

import fayline.app.usecase.act.Signers;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import fayline.flow.result.stock.Amount;
import java.util.List;

/**
 * Takes material from a lot for a step. A lot that the stores do not know, one of another material and one out of date are
 * refused; the last may be allowed by the lead, with a reason.
 */
public final class DrawLot {
    private final ShopRecord shop;

    /** On a shop's record. */
    public DrawLot(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is drawn.
     *
     * @param lot the lot's number
     * @param component {@code resin} or {@code hardener} of a system; empty otherwise
     * @param amount how much, as typed with its unit; may be empty
     * @param override whether the lead allows a lot that is out of date
     * @param why why that is allowed
     */
    public record Drawn(String lot, String component, String amount, boolean override, String why) {}

    /**
     * Records it.
     *
     * @param sent who sends it under which id
     * @param step the step
     * @param asks what the step should have
     * @param drawn what is drawn
     * @param time when
     */
    public Outcome draw(Sent sent, String step, StepAsks asks, Drawn drawn, BenchTime time) {
        return new StepDeed(shop, sent, step, time)
                .record(EntryKind.LOT_DRAWN, "The lot was not recorded.", (d, checks, at, cautions) -> {
                    checks.text("lot", drawn.lot(), true);
                    checks.text("why", drawn.why(), drawn.override());
                    if (!drawn.amount().isEmpty() && Amount.read(drawn.amount()).isEmpty()) {
                        checks.stop("amount", "\"" + drawn.amount() + "\"", "a mass, an area or a length", "");
                    }
                    if (sent.live()) {
                        List<String> allowed = asks.materials();
                        LotRules.check(
                                d,
                                KnownLots.of(d, shop.state(), at),
                                new LotRules.Use(
                                        "lot",
                                        drawn.lot(),
                                        allowed.size() == 1 ? allowed.get(0) : "",
                                        drawn.component(),
                                        allowed,
                                        at,
                                        drawn.override()),
                                checks);
                        if (drawn.override()) {
                            Signers.check(shop, d, checks, "override", sent.by());
                        }
                    }
                    return Value.Fields.NONE
                            .with("lot", drawn.lot())
                            .withUnlessEmpty("component", drawn.component())
                            .withUnlessEmpty("amount", drawn.amount())
                            .withUnlessEmpty("override", drawn.override() ? "yes" : "")
                            .withUnlessEmpty("why", drawn.why());
                });
    }
}
