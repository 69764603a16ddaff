package fayline.app.web.wish;

import fayline.app.usecase.act.WishForSteps;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.WhatIf;
import fayline.app.usecase.view.WhyNot;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.plan.WorkStep;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Optional;

/** One step as planned, with a button for each thing that the lead may want kept or otherwise. */
public final class WishStepPage implements Page {
    private static final String HERE = "/wish/{made}/{n}/{key}";
    private final Sights sights;
    private final ShopRecord shop;
    private final WhatIf whatIf;
    private final WhyNot whyNot = new WhyNot();

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     * @param whatIf plans without a wish
     */
    public WishStepPage(Sights sights, ShopRecord shop, WhatIf whatIf) {
        this.sights = sights;
        this.shop = shop;
        this.whatIf = whatIf;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, step(visit, sight), List.of()));
        });
        routes.post(
                HERE,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> take(visit, sight));
                },
                Asks.to(Act.CHANGE_DEFINITION));
    }

    private void take(Visit visit, Sight sight) {
        WorkStep step = step(visit, sight);
        Sent sent = Sent.live(visit.once(), sight.sender(visit)).seeing(visit.seenHead());
        if (step.state() != WorkStep.State.TODO && !shop.knows(sent.client())) {
            throw Refusal.input("The step is begun meanwhile. What has begun is as it is.");
        }
        Outcome outcome = new WishForSteps(shop)
                .wish(
                        sent,
                        sight.view().project(),
                        new WishForm(visit, sight, step.id()).asked(),
                        visit.field("why").strip());
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.say(Answers.said(outcome));
            visit.lead(Sight.wishLink(step.id()));
            return;
        }
        if (Overtaken.show(sights, visit, sight, outcome, Sight.wishLink(step.id()))) {
            return;
        }
        visit.status(422);
        show(visit, sight, step, Answers.refused(outcome));
    }

    private void show(Visit visit, Sight sight, WorkStep step, List<String> refused) {
        Optional<WhatIf> costs = visit.query("costs").isEmpty() ? Optional.empty() : Optional.of(whatIf);
        sights.show(
                visit,
                "wish/step.jte",
                sights.frame(visit, sight, "Who, where, when", "/weeks"),
                new WishStepViews(sight, step).view(whyNot, costs, refused));
    }

    private static WorkStep step(Visit visit, Sight sight) {
        String id = sight.definition().facts().id() + "/" + visit.inPath("made") + "/" + visit.inPath("n") + "/"
                + visit.inPath("key");
        return sight.work(id)
                .orElseThrow(() -> Refusal.absent(
                        "such step in " + sight.definition().facts().name()));
    }
}
