package fayline.app.web.fitcard;

import fayline.app.usecase.fit.FitLines;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.fit.LookAtFrames;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.why.WhyView;
import fayline.flow.result.fit.frame.SprungResult;
import fayline.method.fitup.motion.Side;
import io.javalin.config.RoutesConfig;

/** Why a figure of a frame is what it is: formula and source, and each input back to the line or reading it comes from. */
public final class FrameWhyPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public FrameWhyPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/fit/{id}/frame/why", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                SprungResult r = LookAtFrames.of(sight.view(), visit.inPath("id"))
                        .flatMap(f -> f.sprung())
                        .orElseThrow(() -> Refusal.absent("frame of that name"));
                sights.show(
                        visit,
                        "why.jte",
                        sights.frame(visit, sight, "Why: " + r.fit().name(), "/fits"),
                        view(visit, sight, r));
            });
        });
    }

    private static WhyView view(Visit visit, Sight sight, SprungResult r) {
        String id = r.fit().id();
        Side side =
                LookAtFits.of(sight.view(), id, false).orElseThrow().result().side();
        FrameFigures figures = new FrameFigures(sight, side, r, FitLines.of(sight.view(), id));
        return new WhyView(
                r.fit().name(),
                "/fit/" + Visit.encoded(id),
                switch (visit.query("of")) {
                    case "clamps" -> figures.clamps();
                    case "release" -> figures.release();
                    case "pins" -> figures.pins();
                    case "bond" -> figures.bond();
                    case "stiffness" -> figures.stiffness();
                    default -> throw Refusal.absent("such figure");
                });
    }
}
