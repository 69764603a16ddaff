package fayline.app.web.forecast;

import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.method.rate.BookedWork;
import fayline.method.rate.Rates;
import fayline.method.rate.Rates.KindRate;
import fayline.method.rate.Rates.PersonRate;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Locale;

/** Learned rates: what finished steps took against the recipes, and what the plan makes of it. */
public final class RatesPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public RatesPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/rates", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "forecast/rates.jte",
                            sights.frame(visit, sight, "Learned rates", "/recipes"),
                            view(sight)));
        });
    }

    static RatesView view(Sight sight) {
        Rates rates = sight.view().rates().rates();
        return new RatesView(
                rates.kinds().stream().map(RatesPage::kind).toList(),
                rates.people().stream().map(p -> who(sight, p)).toList(),
                rates.counted().stream().map(w -> done(sight, w)).toList(),
                rates.leftOut().stream().map(w -> done(sight, w)).toList(),
                String.format(Locale.ROOT, "%.0f %%", 100 * (Math.exp(rates.scatter()) - 1)));
    }

    private static RatesView.Kind kind(KindRate k) {
        return new RatesView.Kind(
                k.kind().replace('-', ' '),
                k.works(),
                hours(k.estimatedMin()),
                hours(k.bookedMin()),
                factor(k.factor()),
                factor(k.low()) + " to " + factor(k.high()),
                k.repetition()
                        .map(r -> String.format(
                                Locale.ROOT,
                                "each doubling leaves %.0f %%, from %d repeats",
                                100 * r.rate(),
                                r.repeats()))
                        .orElse(""));
    }

    private static RatesView.Who who(Sight sight, PersonRate p) {
        return new RatesView.Who(
                sight.personNames(List.of(p.person())),
                p.works(),
                factor(p.factor()),
                factor(p.low()) + " to " + factor(p.high()));
    }

    private static RatesView.Done done(Sight sight, BookedWork w) {
        return new RatesView.Done(
                sight.stepName(w.id()),
                Sight.cardLink(w.id()),
                Math.round(w.estimatedMin()) + " min",
                Math.round(w.bookedMin()) + " min",
                factor(w.ratio()));
    }

    private static String hours(double minutes) {
        return String.format(Locale.ROOT, "%.1f h", minutes / 60);
    }

    private static String factor(double f) {
        return String.format(Locale.ROOT, "%.2f", f);
    }
}
