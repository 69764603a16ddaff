package fayline.app.usecase.stores;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.ProjectDeed;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import fayline.flow.result.stock.Lots;
import fayline.flow.result.stock.OutOfCold;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Carries a lot out of the cold or back. Its time in the room is summed; what was spent is never given back. */
public final class MoveLot {
    private final ShopRecord shop;

    /** On a shop's record. */
    public MoveLot(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * Records a move.
     *
     * @param sent who sends it under which id
     * @param project a project whose definition names the material
     * @param lot the lot
     * @param cold whether it goes into the cold; otherwise into the room
     * @param at when; now where nothing is said
     */
    public Outcome move(Sent sent, String project, String lot, boolean cold, Optional<Instant> at) {
        return ProjectDeed.decide(shop, sent, project, at, (definition, checks, when) -> {
            Optional<OutOfCold> before = check(sent, definition, checks, lot, cold, when);
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The move was not recorded.", checks.problems());
            }
            Outcome outcome = shop.append(Checks.entry(
                    shop,
                    sent,
                    "",
                    EntryKind.LOT_MOVED,
                    Value.Fields.NONE
                            .with("lot", lot)
                            .with("at", when.toString())
                            .with("to", cold ? "cold" : "room")));
            return outcome.with(before.filter(o -> o.isSpent(when)).stream()
                    .map(o -> new Finding(
                            Severity.STOP,
                            lot,
                            "The time of lot " + lot + " out of the cold is used up: it may not be used.",
                            "the definition"))
                    .toList());
        });
    }

    private Optional<OutOfCold> check(Sent sent, Definition d, Checks checks, String lot, boolean cold, Instant when) {
        List<Lot> lots = StoreChecks.lots(d, shop, when);
        Optional<Lot> found = lots.stream().filter(l -> l.id().equals(lot)).findFirst();
        if (found.isEmpty()) {
            checks.stop("lot", "\"" + lot + "\"", "a lot that the stores hold", "");
            return Optional.empty();
        }
        Optional<OutOfCold> out = Lots.out(d, shop.state().stock(), found.get(), when);
        if (out.isEmpty()) {
            checks.stop(
                    "lot",
                    "lot " + lot + " of " + found.get().of(),
                    "a lot of what is kept in the cold",
                    "give \"out-life\" to the material or system where it is");
        } else if (sent.live() && !shop.knows(sent.client()) && out.get().inRoom() != cold) {
            checks.stop("to", cold ? "cold" : "room", "the other place: it lies there already", "");
        }
        return out;
    }
}
