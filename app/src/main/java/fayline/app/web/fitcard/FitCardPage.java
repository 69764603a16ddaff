package fayline.app.web.fitcard;

import fayline.app.pdf.fitcard.FitCardPdf;
import fayline.app.pdf.fitcard.FitCardWords;
import fayline.app.pdf.fitcard.FitSheet;
import fayline.app.usecase.fit.FitSight;
import fayline.app.usecase.fit.FrameSight;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.fit.LookAtFrames;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.card.fit.FitCardMaker;
import io.javalin.config.RoutesConfig;

/** The card of a fit: whether to go on to the adhesive, how to set the part, what to read before gel; on screen and paper. */
public final class FitCardPage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public FitCardPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/fit/{id}/card", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                FitSheet sheet = sheet(visit, sight);
                sights.show(
                        visit,
                        "fitcard/card.jte",
                        sights.frame(visit, sight, "Card: " + sheet.name(), "/fits"),
                        new FitCardView(sheet, assume(visit)));
            });
        });
        routes.get("/fit/{id}/card.pdf", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                FitSheet sheet = sheet(visit, sight);
                byte[] pdf = FitCardPdf.print(
                        sheet, Printing.setting(visit, sight, sight.time().today()));
                visit.send(pdf, "application/pdf", "fit-" + sheet.fit() + ".pdf");
            });
        });
    }

    private static boolean assume(Visit visit) {
        return visit.query("assume").equals("yes");
    }

    private static FitSheet sheet(Visit visit, Sight sight) {
        FitSight fit = LookAtFits.of(sight.view(), visit.inPath("id"), assume(visit))
                .orElseThrow(() -> Refusal.absent("fit of that name"));
        FrameSight frame = LookAtFrames.of(sight.view(), visit.inPath("id")).orElseThrow();
        return new FitCardWords(sight.format(), sight.time().zone(), sight::personName)
                .sheet(
                        FitCardMaker.make(
                                sight.definition(),
                                sight.result(),
                                sight.plan(),
                                fit.result(),
                                frame.widths(),
                                frame.sprung()),
                        fit.result());
    }
}
