package fayline.app.pdf.fitcard;

import fayline.app.drawing.template.Template;
import fayline.app.drawing.template.TemplateDxf;
import fayline.app.drawing.template.TemplateSvg;
import fayline.app.pdf.Paper;
import fayline.app.pdf.TemplatePdf;
import fayline.basis.units.UnitSystem;
import fayline.flow.card.PrintMark;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Part;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.trim.cut.CutLine;
import fayline.method.fitup.trim.cut.CutPlanResult;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The 1:1 template of what a fit's readings say must come off. */
public final class FitTemplate {
    private FitTemplate() {}

    /** What a template is written as. */
    public enum Kind {
        /** Sheets to print. */
        PDF("application/pdf"),
        /** A drawing for other programs. */
        DXF("image/vnd.dxf"),
        /** A picture in true size. */
        SVG("image/svg+xml");

        private final String type;

        Kind(String type) {
            this.type = type;
        }

        /** Its media type. */
        public String type() {
            return type;
        }

        /** How its files end. */
        public String ending() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The kind of a file's ending. */
        public static Optional<Kind> of(String ending) {
            for (Kind k : values()) {
                if (k.ending().equalsIgnoreCase(ending)) {
                    return Optional.of(k);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * The template of a fit.
     *
     * @param definition the definition
     * @param r what follows from the fit's readings
     * @param units units of the depths
     * @param date the moment, as it shall be read
     * @return empty where no outline is drawn
     */
    public static Optional<Template> of(Definition definition, FitResult r, UnitSystem units, String date) {
        List<CutLine> cuts =
                r.advice().flatMap(FitAdvice::cut).map(CutPlanResult::lines).orElse(List.of());
        String part = r.fit()
                .part()
                .flatMap(p -> definition.parts().find(p))
                .map(Part::name)
                .map(name -> name + ", " + r.fit().name())
                .orElse(r.fit().name());
        String state = r.advice()
                .map(FitAdvice::rows)
                .map(List<FitRow>::size)
                .map(n -> "from " + n + " stations read")
                .orElse("nothing read");
        Template.Heading heading = new Template.Heading(
                part,
                state,
                "revision " + definition.facts().revision()
                        + r.fit()
                                .part()
                                .map(p ->
                                        ", mark " + PrintMark.of(definition, p).text())
                                .orElse(""),
                date);
        return r.outline()
                .map(o -> Template.of(heading, r.hand(), o, cuts, r.drawn()).in(units));
    }

    /** The template as a file. */
    public static byte[] write(Template template, Kind kind, Paper paper) {
        return switch (kind) {
            case PDF -> TemplatePdf.print(template, paper, TemplatePdf.Extent.CUTS);
            case DXF -> TemplateDxf.write(template).getBytes(StandardCharsets.UTF_8);
            case SVG -> TemplateSvg.write(template).getBytes(StandardCharsets.UTF_8);
        };
    }
}
