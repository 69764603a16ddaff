package fayline.app.web.fit;

import fayline.app.usecase.fit.AttachFit;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;

/** The part of a fit named later, or taken off again. */
public final class FitAttachPage implements Page {
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public FitAttachPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post(
                "/fit/{id}/attach",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> attach(visit, sight));
                },
                Asks.to(Act.CHANGE_DEFINITION));
        routes.post(
                "/fit/{id}/detach",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> detach(visit, sight));
                },
                Asks.to(Act.CHANGE_DEFINITION));
    }

    private void attach(Visit visit, Sight sight) {
        String part = visit.needed("part", "The part");
        Sent sent = Sent.live(visit.once(), sight.sender(visit)).seeing(visit.seenHead());
        done(
                visit,
                sight,
                new AttachFit(shop).attach(sent, sight.definition().facts().id(), visit.inPath("id"), part),
                "The fit belongs to " + sight.madeName(part) + " now. Its readings stayed.");
    }

    private void detach(Visit visit, Sight sight) {
        Sent sent = Sent.live(visit.once(), sight.sender(visit)).seeing(visit.seenHead());
        done(
                visit,
                sight,
                new AttachFit(shop).detach(sent, sight.definition().facts().id(), visit.inPath("id")),
                "The fit belongs to no part now. Its readings stayed.");
    }

    private void done(Visit visit, Sight sight, Outcome outcome, String said) {
        if (Overtaken.show(sights, visit, sight, outcome, "/fit/" + Visit.encoded(visit.inPath("id")))) {
            return;
        }
        if (!outcome.stands() && outcome.kind() != Outcome.Kind.NOTHING) {
            throw new Refusal(
                    outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422,
                    outcome.sentence(),
                    Answers.refused(outcome).stream().skip(1).toList());
        }
        visit.say(
                Answers.said(new Outcome(outcome.kind(), outcome.seq(), said, outcome.problems(), outcome.cautions())));
        visit.lead("/fit/" + Visit.encoded(visit.inPath("id")));
    }
}
