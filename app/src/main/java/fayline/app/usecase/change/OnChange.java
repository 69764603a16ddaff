package fayline.app.usecase.change;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.ProjectDeed;
import fayline.app.usecase.act.Signers;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.project.Definition;
import fayline.flow.record.change.Change;
import java.time.Instant;
import java.util.Optional;

/** What every act upon a change that is raised begins with: it is there, and nothing happens to it before it was raised. */
@FunctionalInterface
interface OnChange {
    /** Checks what is its own and appends. */
    Outcome of(Definition definition, Change change, Checks checks, Instant when);

    /** Decides, with nobody else deciding meanwhile. */
    static Outcome decide(ShopRecord shop, Sent sent, long change, Optional<Instant> at, OnChange deed) {
        return shop.deciding(() -> {
            Optional<Change> found = shop.state().change().find(change);
            if (found.isEmpty()) {
                return Outcome.refused("Entry " + change + " raises no change.");
            }
            return ProjectDeed.decide(shop, sent, found.get().project(), at, (d, checks, when) -> {
                if (when.isBefore(found.get().at())) {
                    checks.stop("at", "a time before the change was raised", "a later one", "");
                }
                return deed.of(d, found.get(), checks, when);
            });
        });
    }

    /** Whether something is new and sent from the bench or desk now; what is told afterwards happened and is not refused. */
    static boolean isFresh(ShopRecord shop, Sent sent) {
        return sent.live() && !shop.knows(sent.client());
    }

    /** Checks that somebody may lead, and that a change is being followed. */
    static void following(ShopRecord shop, Definition d, Sent sent, Change change, Checks checks) {
        if (sent.live()) {
            Signers.check(shop, d, checks, "by", sent.by());
        }
        if (isFresh(shop, sent) && change.stage() != Change.Stage.ACCEPTED) {
            checks.stop(
                    "change",
                    change.name() + ", " + change.stage().words(),
                    "a change that is accepted and not closed",
                    "");
        }
    }
}
