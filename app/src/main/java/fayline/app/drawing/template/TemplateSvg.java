package fayline.app.drawing.template;

import fayline.app.drawing.SvgRenderer;
import fayline.basis.units.UnitSystem;
import fayline.method.fitup.Spot;
import java.util.List;
import java.util.Locale;

/**
 * Writes a template as SVG in true size: width and height in mm, one unit of the view box 1 mm. Groups {@code edge}, {@code
 * finish}, {@code first}, {@code marks} and {@code text} keep the kinds of line apart.
 */
public final class TemplateSvg {
    private static final double MARGIN_MM = 30;
    private static final double FOOT_MM = 20;
    private static final double MARK_MM = 8;

    private final StringBuilder out = new StringBuilder(16_384);
    private final Spot low;
    private final Spot high;

    private TemplateSvg(Template template) {
        low = template.bounds().get(0);
        high = template.bounds().get(1);
    }

    /** The file's text. */
    public static String write(Template template) {
        return new TemplateSvg(template).all(template);
    }

    private String all(Template t) {
        double width = Math.max(high.xMm() - low.xMm(), 120) + 2 * MARGIN_MM;
        double height = high.yMm() - low.yMm() + 2 * MARGIN_MM + FOOT_MM;
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(number(width))
                .append("mm\" height=\"")
                .append(number(height))
                .append("mm\" viewBox=\"0 0 ")
                .append(number(width))
                .append(' ')
                .append(number(height))
                .append("\">\n");
        out.append("<title>").append(SvgRenderer.escape(t.heading().part())).append("</title>\n");
        group("edge", "stroke=\"#000\" stroke-width=\"0.2\"");
        path(t.edge(), true);
        end();
        group("finish", "stroke=\"#b3261e\" stroke-width=\"0.2\"");
        t.scribes().forEach(s -> path(s.finish(), false));
        end();
        group("first", "stroke=\"#b3261e\" stroke-width=\"0.15\" stroke-dasharray=\"4 2\"");
        t.scribes().stream().filter(s -> !Template.same(s)).forEach(s -> path(s.first(), false));
        end();
        group("marks", "stroke=\"#1f5f99\" stroke-width=\"0.15\"");
        t.marks().forEach(this::mark);
        end();
        out.append("<g id=\"text\" fill=\"#000\" font-family=\"sans-serif\" font-size=\"3\">\n");
        t.marks().forEach(m -> label(m, t.units()));
        foot(t, height - FOOT_MM);
        end();
        return out.append("</svg>\n").toString();
    }

    private void foot(Template t, double y) {
        text(MARGIN_MM, y, "start", t.heading().part());
        text(MARGIN_MM, y + 4.5, "start", t.heading().details());
        text(MARGIN_MM, y + 9, "start", "Seen from outside, true size. Right is " + t.alongX() + ", up is up.");
    }

    private void group(String id, String stroke) {
        out.append("<g id=\"")
                .append(id)
                .append("\" fill=\"none\" ")
                .append(stroke)
                .append(">\n");
    }

    private void end() {
        out.append("</g>\n");
    }

    private void path(List<Spot> points, boolean closed) {
        out.append("<path d=\"");
        for (int i = 0; i < points.size(); i++) {
            out.append(i == 0 ? 'M' : 'L').append(x(points.get(i))).append(' ').append(y(points.get(i)));
        }
        out.append(closed ? "Z" : "").append("\"/>\n");
    }

    private void mark(TemplateMark m) {
        double dx = MARK_MM * m.place().nx();
        double dy = MARK_MM * m.place().ny();
        path(List.of(m.place().at().plus(-dx, -dy), m.place().at().plus(dx, dy)), false);
    }

    private void label(TemplateMark m, UnitSystem units) {
        double nx = m.place().nx();
        Spot p = m.place()
                .at()
                .plus((MARK_MM + 1.5) * nx, (MARK_MM + 1.5) * m.place().ny());
        String anchor = nx > 0.4 ? "start" : nx < -0.4 ? "end" : "middle";
        text(p.xMm() - low.xMm() + MARGIN_MM, high.yMm() - p.yMm() + MARGIN_MM + 1, anchor, m.words(units));
    }

    private void text(double x, double y, String anchor, String words) {
        out.append("<text x=\"")
                .append(number(x))
                .append("\" y=\"")
                .append(number(y))
                .append("\" text-anchor=\"")
                .append(anchor)
                .append("\">")
                .append(SvgRenderer.escape(words))
                .append("</text>\n");
    }

    private String x(Spot p) {
        return number(p.xMm() - low.xMm() + MARGIN_MM);
    }

    private String y(Spot p) {
        return number(high.yMm() - p.yMm() + MARGIN_MM);
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }
}
