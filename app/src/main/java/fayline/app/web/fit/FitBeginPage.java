package fayline.app.web.fit;

import fayline.app.usecase.fit.BeginFit;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Actor;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.basis.units.UnitSystem;
import fayline.method.fitup.scheme.Assumption;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A fit begun on the spot, also where the shop has no project yet. */
public final class FitBeginPage implements Page {
    private static final String NEW = "/fits/new";
    private static final List<String> GAUGES =
            List.of("taper gauge", "feeler leaves", "spacer sticks", "drill shanks", "calipers");
    private static final Map<String, String> FRESH = Map.of("spread", "12");
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     */
    public FitBeginPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(NEW, ctx -> show(new Visit(ctx), FRESH, List.of(), List.of()), Asks.to(Act.CHANGE_DEFINITION));
        routes.post(NEW, ctx -> begin(new Visit(ctx)), Asks.to(Act.CHANGE_DEFINITION));
    }

    private void begin(Visit visit) {
        Optional<Sight> sight = sights.look(visit);
        FitBeginForm form = new FitBeginForm(visit, units(visit, sight));
        String by =
                visit.actor().map(Actor::person).orElseGet(() -> FitBeginForm.id(visit.needed("by", "Who you are")));
        String project = sight.map(s -> s.definition().facts().id()).orElse(BeginFit.BENCH);
        Outcome outcome;
        try {
            outcome = new BeginFit(shop).begin(Sent.live(visit.once(), by), project, form.fit());
        } catch (Refusal e) {
            outcome = Outcome.refused("The fit was not begun. " + e.getMessage());
        }
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.remember("person", by);
            visit.say(Answers.said(outcome), "fit-new");
            visit.lead(reading(form));
        } else {
            visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
            show(visit, form.typed(), form.against(), Answers.refused(outcome));
        }
    }

    /** Where its stations are read, with what is read and how warm it is. */
    private static String reading(FitBeginForm form) {
        String link = "/fit/" + Visit.encoded(form.id()) + "/read?kind=gap";
        for (String name : List.of("gauge", "temperature")) {
            String value = form.typed().getOrDefault(name, "");
            if (!value.isEmpty()) {
                link += "&" + (name.equals("gauge") ? "instrument" : name) + "=" + Visit.encoded(value);
            }
        }
        return link;
    }

    private static UnitSystem units(Visit visit, Optional<Sight> sight) {
        return sight.map(s -> s.format().system()).orElseGet(() -> visit.units().orElse(UnitSystem.METRIC));
    }

    private void show(Visit visit, Map<String, String> typed, List<String> against, List<String> refused) {
        Optional<Sight> sight = sights.look(visit);
        Frame frame = sight.map(s -> sights.frame(visit, s, "Begin a fit", "/fits"))
                .orElseGet(() -> sights.bare(visit, "Begin a fit", "/fits"));
        List<Frame.Choice> parts = sight.map(s -> s.definition().parts().stream()
                        .map(p -> new Frame.Choice(p.id(), p.name(), against.contains(p.id())))
                        .toList())
                .orElse(List.of());
        sights.show(
                visit,
                "fit/begin.jte",
                frame,
                new FitBeginView(
                        typed,
                        parts,
                        GAUGES,
                        List.of(
                                Assumption.READING.words().in(units(visit, sight)),
                                Assumption.READING_COMMON.words().in(units(visit, sight))),
                        FitSetup.unit(units(visit, sight)),
                        refused));
    }
}
