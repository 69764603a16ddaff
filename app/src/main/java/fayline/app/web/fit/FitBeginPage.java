package fayline.app.web.fit;

import fayline.app.usecase.fit.BeginFit;
import fayline.app.usecase.fit.NewFit;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.design.Hand;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A fit begun on the spot, also where the shop has no project yet. */
public final class FitBeginPage implements Page {
    private static final String NEW = "/fits/new";
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
        routes.get(NEW, ctx -> show(new Visit(ctx), FitBeginView.EMPTY));
        routes.post(NEW, ctx -> begin(new Visit(ctx)));
    }

    private void begin(Visit visit) {
        String by = id(visit.needed("by", "Who you are"));
        FitBeginView typed = new FitBeginView(
                visit.field("name"),
                visit.field("hand"),
                visit.field("gap"),
                visit.field("tolerance"),
                visit.text("stations"),
                List.of());
        String project =
                sights.look(visit).map(s -> s.definition().facts().id()).orElse(BeginFit.BENCH);
        String fit = id(typed.name());
        Outcome outcome = new BeginFit(shop)
                .begin(
                        Sent.live(visit.once(), by),
                        project,
                        new NewFit(
                                fit,
                                typed.name(),
                                typed.hand().equals("right") ? Hand.RIGHT : Hand.LEFT,
                                typed.gap(),
                                typed.tolerance(),
                                "0 mm",
                                typed.tolerance(),
                                stations(typed.stations())));
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.remember("person", by);
            visit.say(Answers.said(outcome), "fit-new");
            visit.lead("/fit/" + Visit.encoded(fit) + "/read");
        } else {
            visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
            show(visit, typed.refused(Answers.refused(outcome)));
        }
    }

    /** A line each: mark, words in quotes or none, place, direction, with semicolons between. */
    private static List<NewFit.Marked> stations(String text) {
        List<NewFit.Marked> all = new ArrayList<>();
        for (String line :
                text.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
            String[] p = line.split(";", -1);
            all.add(new NewFit.Marked(
                    p[0].strip(), part(p, 1).isEmpty() ? p[0].strip() : part(p, 1), part(p, 2), part(p, 3)));
        }
        return all;
    }

    private static String part(String[] parts, int index) {
        return parts.length > index ? parts[index].strip() : "";
    }

    /** A name as an id: small letters, figures and hyphens. */
    private static String id(String name) {
        String id = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        return id.length() > 60 ? id.substring(0, 60).replaceAll("-+$", "") : id;
    }

    private void show(Visit visit, FitBeginView view) {
        Optional<Sight> sight = sights.look(visit);
        Frame frame = sight.map(s -> sights.frame(visit, s, "Begin a fit", "/fits"))
                .orElseGet(() -> sights.bare(visit, "Begin a fit", "/fits"));
        sights.show(visit, "fit/begin.jte", frame, view);
    }
}
