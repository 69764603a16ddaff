package fayline.app.web.fitcard;

import fayline.app.usecase.act.ChangeLines;
import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.fit.FrameSight;
import fayline.app.usecase.fit.LookAtFrames;
import fayline.app.usecase.fit.NameWidth;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.fit.FitSetup;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.WidthReadings;
import io.javalin.config.RoutesConfig;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The trial of a sprung frame at the bench: widths bare and with the sheet clamped on are read into the record, trial by trial,
 * and the page says to which bare width the frame is set before any adhesive.
 */
public final class FitFramePage implements Page {
    private static final String FRAME = "/fit/{id}/frame";
    private static final List<String> ENTERED = List.of("value", "instrument", "why", "new");
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public FitFramePage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(FRAME, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, fit(visit, sight), Map.of(), List.of()));
        });
        routes.post(FRAME, ctx -> act(new Visit(ctx), this::read), Asks.to(Act.WORK));
        routes.post(FRAME + "/name", ctx -> act(new Visit(ctx), this::name), Asks.to(Act.CHANGE_DEFINITION));
        routes.post(FRAME + "/correct", ctx -> act(new Visit(ctx), this::correct), Asks.to(Act.WORK));
    }

    /** What a form does. */
    private interface Deed {
        Outcome of(Visit visit, Sight sight, Fit fit, Sent sent);
    }

    private void act(Visit visit, Deed deed) {
        sights.with(visit, sight -> {
            Fit fit = fit(visit, sight);
            String by = sight.sender(visit);
            Outcome outcome =
                    deed.of(visit, sight, fit, Sent.live(visit.once(), by).seeing(visit.seenHead()));
            if (outcome.stands()) {
                visit.say("Kept.", visit.field("draft"));
                visit.lead("/fit/" + Visit.encoded(fit.id()) + "/frame");
                return;
            }
            if (Overtaken.show(sights, visit, sight, outcome, "/fit/" + Visit.encoded(fit.id()) + "/frame")) {
                return;
            }
            visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
            show(visit, sight, fit, entered(visit), Answers.refused(outcome));
        });
    }

    private static Map<String, String> entered(Visit visit) {
        Map<String, String> all = new LinkedHashMap<>();
        ENTERED.forEach(f -> all.put(f, visit.field(f)));
        NameWidth.FIELDS.forEach(f -> all.put(f, visit.field(f)));
        return all;
    }

    private Outcome read(Visit visit, Sight sight, Fit fit, Sent sent) {
        Map<String, String> values = new LinkedHashMap<>();
        values.put("value", FitSetup.withUnit(visit.field("value"), visit.field("unit")));
        if (!visit.field("instrument").isEmpty()) {
            values.put("instrument", visit.field("instrument"));
        }
        if (!visit.field("trial").equals("1")) {
            values.put("round", visit.field("trial"));
        }
        return new TakeReading(shop)
                .take(
                        sent,
                        sight.definition().facts().id(),
                        new Measured(
                                WidthReadings.KIND,
                                fit.id(),
                                visit.field("width"),
                                visit.field("state"),
                                values,
                                Optional.empty()));
    }

    private Outcome name(Visit visit, Sight sight, Fit fit, Sent sent) {
        Map<String, String> fields = new LinkedHashMap<>();
        NameWidth.FIELDS.forEach(f -> fields.put(f, visit.field(f)));
        return new NameWidth(new ChangeLines(shop))
                .name(sent, sight.definition().facts().id(), fit.id(), fields);
    }

    private Outcome correct(Visit visit, Sight sight, Fit fit, Sent sent) {
        String entry = visit.field("entry");
        boolean mine = LookAtFrames.of(sight.view(), fit.id()).orElseThrow().widths().widths().stream()
                .flatMap(w -> w.trials().stream())
                .flatMap(t -> t.readings().stream())
                .anyMatch(r -> String.valueOf(r.seq()).equals(entry));
        if (!mine) {
            return Outcome.refused("Entry " + entry + " is no width of this frame.");
        }
        CorrectStep correct = new CorrectStep(shop);
        String value = visit.field("new");
        return value.isEmpty()
                ? correct.withdraw(sent, Long.parseLong(entry), visit.field("why"))
                : correct.correct(
                        sent,
                        Long.parseLong(entry),
                        Mended.value(FitSetup.withUnit(
                                value, FitSetup.unit(sight.format().system()))),
                        visit.field("why"));
    }

    private void show(Visit visit, Sight sight, Fit fit, Map<String, String> typed, List<String> refused) {
        FrameSight frame = LookAtFrames.of(sight.view(), fit.id()).orElseThrow();
        FitFrameView view = FitFrameViews.of(
                sight, fit, frame, f -> visit.query(f).isEmpty() ? visit.field(f) : visit.query(f), typed, refused);
        sights.show(visit, "fitcard/frame.jte", sights.frame(visit, sight, "Frame: " + fit.name(), "/fits"), view);
    }

    private static Fit fit(Visit visit, Sight sight) {
        return sight.definition().fits().find(visit.inPath("id")).orElseThrow(() -> Refusal.absent("fit of that name"));
    }
}
