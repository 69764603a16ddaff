package fayline.app.web.fitwhy;

import fayline.app.usecase.fit.FitLines;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.web.fit.Asked;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.why.WhyView;
import fayline.flow.result.fit.FitResult;
import io.javalin.config.RoutesConfig;
import java.util.List;

/** Why a figure of a fit is what it is: formula and source, and each input back to the reading or the line it comes from. */
public final class FitWhyPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public FitWhyPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/fit/{id}/why", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                boolean assume = Asked.assumes(visit);
                FitResult result = LookAtFits.of(sight.view(), visit.inPath("id"), assume)
                        .map(FitSight::result)
                        .orElseThrow(() -> Refusal.absent("fit of that name"));
                sights.show(
                        visit,
                        "why.jte",
                        sights.frame(visit, sight, "Why: " + result.fit().name(), "/fits"),
                        view(visit, sight, result, assume));
            });
        });
    }

    private static WhyView view(Visit visit, Sight sight, FitResult result, boolean assume) {
        Grounds grounds = new Grounds(
                sight, result, FitLines.of(sight.view(), result.fit().id()), assume);
        return new WhyView(
                result.fit().name(),
                "/fit/" + Visit.encoded(result.fit().id()) + (assume ? "?assume=yes" : ""),
                figures(visit.query("of"), grounds));
    }

    private static List<WhyView.Shown> figures(String of, Grounds g) {
        return switch (of) {
            case "move" -> MoveFigures.move(g);
            case "ways" -> WayFigures.ways(g);
            case "gaps" -> MoveFigures.gaps(g);
            case "shims" -> HoldFigures.shims(g);
            case "trim" -> HoldFigures.trim(g);
            case "chance" -> ChanceFigures.chances(g);
            case "heat" -> ChanceFigures.heat(g);
            case "bond" -> ChanceFigures.bond(g);
            default -> throw Refusal.absent("such figure");
        };
    }
}
