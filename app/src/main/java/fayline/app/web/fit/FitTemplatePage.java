package fayline.app.web.fit;

import fayline.app.drawing.template.Template;
import fayline.app.pdf.fitcard.FitTemplate;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Printing;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import io.javalin.config.RoutesConfig;
import java.util.List;

/** The 1:1 template of a trim as PDF, DXF and SVG. */
public final class FitTemplatePage implements Page {
    private final Sights sights;

    /** Makes the page. */
    public FitTemplatePage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/fit/{id}/template.{kind}", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                FitResult r = LookAtFits.of(
                                sight.view(),
                                visit.inPath("id"),
                                visit.query("assume").equals("yes"))
                        .orElseThrow(() -> Refusal.absent("fit of that name"))
                        .result();
                Template template = FitTemplate.of(
                                sight.definition(),
                                r,
                                sight.format().system(),
                                sight.time().full())
                        .orElseThrow(() -> new Refusal(
                                404,
                                "There is no template: the outline is not drawn.",
                                List.of("Give the fit an outline under Definition.")));
                send(visit, template, r.fit().id());
            });
        });
    }

    /** The files offered where something is cut along a drawn outline. */
    static List<FitAnswer.Link> links(FitResult r, FitAdvice a, boolean assume) {
        if (a.cut().filter(c -> !c.lines().isEmpty()).isEmpty() || r.outline().isEmpty()) {
            return List.of();
        }
        String base = "/fit/" + Visit.encoded(r.fit().id()) + "/template.";
        String as = assume ? "?assume=yes" : "";
        return List.of(
                new FitAnswer.Link("Template 1:1, PDF on A4", base + "pdf" + as),
                new FitAnswer.Link("on Letter", base + "pdf?paper=letter" + (assume ? "&assume=yes" : "")),
                new FitAnswer.Link("DXF", base + "dxf" + as),
                new FitAnswer.Link("SVG", base + "svg" + as));
    }

    private static void send(Visit visit, Template template, String id) {
        FitTemplate.Kind kind =
                FitTemplate.Kind.of(visit.inPath("kind")).orElseThrow(() -> Refusal.absent("template of that kind"));
        visit.send(
                FitTemplate.write(template, kind, Printing.paper(visit)),
                kind.type(),
                "template-" + id + "." + kind.ending());
    }
}
