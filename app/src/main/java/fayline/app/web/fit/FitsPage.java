package fayline.app.web.fit;

import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.fit.FitResult;
import io.javalin.config.RoutesConfig;
import java.util.List;

/** All fits of the project, each with how it stands. */
public final class FitsPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public FitsPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/fits", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                List<FitsView.Row> rows = LookAtFits.all(sight.view(), false).stream()
                        .map(f -> row(sight, f))
                        .toList();
                sights.show(
                        visit,
                        "fit/fits.jte",
                        sights.frame(visit, sight, "Fits", "/fits"),
                        new FitsView(rows, chains(sight)));
            });
        });
    }

    private static List<FitView.Fact> chains(Sight sight) {
        return sight.definition().chains().stream()
                .map(c -> new FitView.Fact(
                        c.name(), sight.definition().fits().get(c.endsAt()).name(), "/chain/" + Visit.encoded(c.id())))
                .toList();
    }

    private static FitsView.Row row(Sight sight, FitSight f) {
        FitResult r = f.result();
        Fit fit = r.fit();
        String link = "/fit/" + Visit.encoded(fit.id());
        return new FitsView.Row(
                fit.name(),
                link,
                fit.part().map(sight::madeName).orElse(""),
                fit.part().map(sight::madeLink).orElse(""),
                r.states().stream()
                        .map(s -> s.state().name() + ": " + s.read() + " of "
                                + s.stations().size() + " gaps")
                        .toList(),
                FitAnswers.move(sight, r),
                FitAnswers.troubles(sight, r),
                link + "/read");
    }
}
