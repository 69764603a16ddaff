package fayline.app.web.trouble;

import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.act.Signers;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.trouble.RaiseDeviation;
import fayline.app.usecase.trouble.SettleDeviation;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Rework;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Deviations of the project: what is open, and what was decided about each. */
public final class DeviationsPage implements Page {
    private static final String ONE = "/deviation/{seq}";
    private static final int REWORK_ROWS = 3;
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the pages. */
    public DeviationsPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    /**
     * What the page of one shows.
     *
     * @param deviation the deviation
     * @param signers who may decide and agree where names are picked
     * @param judged whether people sign in, so that each agrees in their own name
     * @param rows how many pieces of rework the form takes
     * @param refused why what was sent was not taken
     */
    public record One(
            DeviationView deviation, List<Frame.Choice> signers, boolean judged, int rows, List<String> refused) {
        /** Copies the lists. */
        public One {
            signers = List.copyOf(signers);
            refused = List.copyOf(refused);
        }
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/deviations", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "trouble/list.jte",
                            sights.frame(visit, sight, "Deviations", "/deviations"),
                            new DeviationViews(sight, shop).all()));
        });
        routes.get(ONE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, found(visit, sight), List.of()));
        });
        routes.post(ONE + "/settle", ctx -> act(ctx, this::settle), Asks.to(Act.ACCEPT_DEVIATION));
        routes.post(ONE + "/agree", ctx -> act(ctx, this::agree), Asks.to(Act.SIGN));
    }

    @FunctionalInterface
    private interface Deed {
        Outcome of(Visit visit, Sent sent, Deviation d);
    }

    private void act(Context ctx, Deed deed) {
        Visit visit = new Visit(ctx);
        sights.with(visit, sight -> {
            Deviation d = found(visit, sight);
            Outcome outcome = deed.of(visit, Sent.live(visit.once(), sight.sender(visit)), d);
            if (outcome.stands()) {
                visit.say(Answers.said(outcome));
                visit.lead(DeviationViews.link(d.seq(), d.project()));
            } else {
                visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
                show(visit, sight, d, Answers.refused(outcome));
            }
        });
    }

    private Outcome settle(Visit visit, Sent sent, Deviation d) {
        List<Rework> rework = new ArrayList<>();
        for (int i = 1; i <= REWORK_ROWS; i++) {
            String what = visit.field("what-" + i);
            if (!what.isEmpty()) {
                rework.add(new Rework(what, visit.field("time-" + i), visit.field("kind-" + i)));
            }
        }
        return new SettleDeviation(shop)
                .settle(
                        sent,
                        d.seq(),
                        new SettleDeviation.Decision(
                                visit.field("disposition"),
                                visit.text("note").strip(),
                                visit.field("structural").equals("yes"),
                                visit.field("second"),
                                rework),
                        Optional.empty());
    }

    private Outcome agree(Visit visit, Sent sent, Deviation d) {
        return new SettleDeviation(shop).agree(sent, d.seq(), Optional.empty());
    }

    private Deviation found(Visit visit, Sight sight) {
        String asked = visit.inPath("seq");
        Optional<Deviation> found =
                asked.matches("\\d{1,15}") ? shop.state().trouble().find(Long.parseLong(asked)) : Optional.empty();
        return found.filter(d -> d.project().equals(sight.definition().facts().id()))
                .orElseThrow(() -> Refusal.absent("deviation of that number"));
    }

    private void show(Visit visit, Sight sight, Deviation d, List<String> refused) {
        List<Frame.Choice> signers = Signers.all(sight.definition()).stream()
                .map(p -> new Frame.Choice(p.id(), p.name(), p.id().equals(visit.person())))
                .toList();
        sights.show(
                visit,
                "trouble/one.jte",
                sights.frame(visit, sight, "Deviation " + d.seq(), "/deviations"),
                new One(new DeviationViews(sight, shop).of(d), signers, shop.isJudged(), REWORK_ROWS, refused));
    }

    /** Raises one from a card, at once or from what a phone kept. */
    public static Outcome raise(
            ShopRecord shop, Typed typed, String step, Sent sent, List<SentPicture> pictures, Optional<Instant> at) {
        String text = typed.text("text").strip();
        if (text.isEmpty() && pictures.isEmpty()) {
            return Outcome.refused("Say what is wrong, or take a photo.");
        }
        return new RaiseDeviation(shop)
                .raise(
                        Sent.live(sent.client(), sent.by()),
                        new RaiseDeviation.Raised(
                                step, text, typed.field("structural").equals("yes")),
                        pictures,
                        new BenchTime(at, typed.moment()));
    }
}
