package fayline.app.web.fit;

import fayline.app.drawing.template.Template;
import fayline.app.drawing.template.TemplateDxf;
import fayline.app.drawing.template.TemplateSvg;
import fayline.app.pdf.Paper;
import fayline.app.pdf.TemplatePdf;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.project.design.Hand;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.trim.cut.CutLine;
import fayline.method.fitup.trim.cut.CutPlanResult;
import io.javalin.config.RoutesConfig;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
                Template template = template(sight, r)
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

    private static Optional<Template> template(Sight sight, FitResult r) {
        List<CutLine> cuts =
                r.advice().flatMap(FitAdvice::cut).map(CutPlanResult::lines).orElse(List.of());
        List<fayline.method.fitup.Station> stations = new ArrayList<>();
        r.fit()
                .stations()
                .forEach(s -> Optional.ofNullable(r.places().get(s.id())).ifPresent(stations::add));
        String part = r.fit().part().map(sight::madeName).orElse(r.fit().name());
        String state = r.advice()
                .map(FitAdvice::rows)
                .map(List<FitRow>::size)
                .map(n -> "from " + n + " stations read")
                .orElse("nothing read");
        Template.Heading heading = new Template.Heading(
                part + ", " + r.fit().name(),
                state,
                "revision " + sight.definition().facts().revision(),
                sight.time().full());
        return r.outline()
                .map(o -> Template.of(heading, r.side() == Side.RIGHT ? Hand.RIGHT : Hand.LEFT, o, cuts, stations)
                        .in(sight.format().system()));
    }

    private static void send(Visit visit, Template template, String id) {
        switch (visit.inPath("kind")) {
            case "pdf" -> {
                Paper paper = Paper.of(visit.query("paper").isEmpty() ? "a4" : visit.query("paper"))
                        .orElseThrow(() -> Refusal.input("Paper is a4 or letter."));
                visit.send(
                        TemplatePdf.print(template, paper, TemplatePdf.Extent.CUTS),
                        "application/pdf",
                        "template-" + id + ".pdf");
            }
            case "dxf" ->
                visit.send(
                        TemplateDxf.write(template).getBytes(StandardCharsets.UTF_8),
                        "image/vnd.dxf",
                        "template-" + id + ".dxf");
            case "svg" ->
                visit.send(
                        TemplateSvg.write(template).getBytes(StandardCharsets.UTF_8),
                        "image/svg+xml",
                        "template-" + id + ".svg");
            default -> throw Refusal.absent("template of that kind");
        }
    }
}
