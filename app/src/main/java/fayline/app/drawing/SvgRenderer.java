package fayline.app.drawing;

import java.util.List;
import java.util.Locale;

/**
 * Writes drawings as SVG. For the screen, colours are class names that the page's style sheet fills by theme, because the
 * content policy allows no inline style; for paper they are attributes. All text is escaped.
 */
public final class SvgRenderer {
    private final boolean screen;

    private SvgRenderer(boolean screen) {
        this.screen = screen;
    }

    /** For pages: class names for colours, links that lead. */
    public static SvgRenderer forScreen() {
        return new SvgRenderer(true);
    }

    /** For paper: colours as attributes, no links. */
    public static SvgRenderer forPaper() {
        return new SvgRenderer(false);
    }

    /** The drawing as one SVG element in its own size. */
    public String render(Drawing drawing) {
        return render(drawing, 1);
    }

    /**
     * The drawing as one SVG element, made larger or smaller.
     *
     * @param drawing the drawing
     * @param scale how many times its own size
     */
    public String render(Drawing drawing, double scale) {
        StringBuilder s = new StringBuilder(2048);
        s.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(number(drawing.widthMm() * scale))
                .append("mm\" height=\"")
                .append(number(drawing.heightMm() * scale))
                .append("mm\" viewBox=\"0 0 ")
                .append(number(drawing.widthMm()))
                .append(' ')
                .append(number(drawing.heightMm()))
                .append('"');
        if (screen) {
            s.append(" class=\"drawing\" role=\"")
                    .append(leads(drawing.shapes()) ? "group" : "img")
                    .append("\" aria-label=\"")
                    .append(escape(drawing.title()))
                    .append('"');
        } else {
            s.append(" font-family=\"Atkinson Hyperlegible\"");
        }
        s.append('>');
        drawing.shapes().forEach(shape -> write(shape, s));
        return s.append("</svg>").toString();
    }

    private static boolean leads(List<Shape> shapes) {
        return shapes.stream()
                .anyMatch(x -> x instanceof Shape.Group g && (!g.link().isEmpty() || leads(g.shapes())));
    }

    private void write(Shape shape, StringBuilder s) {
        if (shape instanceof Shape.Polyline line) {
            path(s, "M" + points(line.points()), Ink.NONE, line.ink(), line.widthMm(), line.dashed());
        } else if (shape instanceof Shape.Polygon area) {
            path(s, rings(area.rings()), area.fill(), area.edge(), area.widthMm(), false);
        } else if (shape instanceof Shape.Disc disc) {
            disc(s, disc);
        } else if (shape instanceof Shape.Text text) {
            text(s, text);
        } else if (shape instanceof Shape.Hatch hatch) {
            StringBuilder d = new StringBuilder();
            hatch.lines().forEach(line -> d.append('M').append(points(line.points())));
            path(s, d.toString(), Ink.NONE, hatch.ink(), hatch.widthMm(), false);
        } else if (shape instanceof Shape.Dots dots) {
            dots.centres().forEach(c -> disc(s, new Shape.Disc(c, dots.radiusMm(), dots.ink(), Ink.NONE, 0)));
        } else if (shape instanceof Shape.Group group) {
            group(s, group);
        } else {
            throw new IllegalStateException("no way to draw " + shape.getClass().getSimpleName());
        }
    }

    private void group(StringBuilder s, Shape.Group group) {
        boolean link = screen && !group.link().isEmpty();
        if (link) {
            s.append("<a href=\"")
                    .append(escape(group.link()))
                    .append("\" aria-label=\"")
                    .append(escape(group.label()))
                    .append("\">");
        } else {
            s.append("<g>");
        }
        if (screen && !group.label().isEmpty()) {
            s.append("<title>").append(escape(group.label())).append("</title>");
        }
        group.shapes().forEach(inner -> write(inner, s));
        s.append(link ? "</a>" : "</g>");
    }

    private void path(StringBuilder s, String d, Ink fill, Ink stroke, double widthMm, boolean dashed) {
        if (d.isEmpty()) {
            return;
        }
        s.append("<path d=\"").append(d).append('"');
        colours(s, fill, stroke, widthMm);
        if (dashed) {
            s.append(" stroke-dasharray=\"1.2 0.8\"");
        }
        s.append(" fill-rule=\"evenodd\"/>");
    }

    private void disc(StringBuilder s, Shape.Disc disc) {
        s.append("<circle cx=\"")
                .append(number(disc.centre().xMm()))
                .append("\" cy=\"")
                .append(number(disc.centre().yMm()))
                .append("\" r=\"")
                .append(number(disc.radiusMm()))
                .append('"');
        colours(s, disc.fill(), disc.edge(), disc.widthMm());
        s.append("/>");
    }

    private void text(StringBuilder s, Shape.Text text) {
        if (text.text().isEmpty()) {
            return;
        }
        s.append("<text x=\"")
                .append(number(text.at().xMm()))
                .append("\" y=\"")
                .append(number(text.at().yMm()))
                .append("\" font-size=\"")
                .append(number(text.sizeMm()))
                .append('"');
        if (text.anchor() != Shape.Anchor.START) {
            s.append(" text-anchor=\"")
                    .append(text.anchor().name().toLowerCase(Locale.ROOT))
                    .append('"');
        }
        if (text.bold()) {
            s.append(" font-weight=\"bold\"");
        }
        colours(s, text.ink(), Ink.NONE, 0);
        s.append('>').append(escape(text.text())).append("</text>");
    }

    private void colours(StringBuilder s, Ink fill, Ink stroke, double widthMm) {
        if (screen) {
            s.append(" class=\"f-").append(fill.key());
            s.append(" s-").append(stroke.key()).append('"');
        } else {
            s.append(" fill=\"").append(fill.paper()).append("\" stroke=\"");
            s.append(stroke.paper()).append('"');
        }
        if (stroke != Ink.NONE) {
            s.append(" stroke-width=\"").append(number(widthMm)).append('"');
        }
    }

    private static String rings(List<List<Point>> rings) {
        StringBuilder d = new StringBuilder();
        rings.forEach(ring -> d.append('M').append(points(ring)).append('Z'));
        return d.toString();
    }

    private static String points(List<Point> points) {
        StringBuilder d = new StringBuilder();
        for (Point p : points) {
            if (d.length() > 0) {
                d.append('L');
            }
            d.append(number(p.xMm())).append(' ').append(number(p.yMm()));
        }
        return d.toString();
    }

    /** A number to a thousandth of a millimetre, without idle zeros. */
    public static String number(double value) {
        String s = String.format(Locale.ROOT, "%.3f", value);
        s = s.replaceAll("0+$", "").replaceAll("\\.$", "");
        return s.equals("-0") ? "0" : s;
    }

    /** Text as data for XML: markup escaped, characters that XML forbids left out. */
    public static String escape(String text) {
        StringBuilder s = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> s.append("&amp;");
                case '<' -> s.append("&lt;");
                case '>' -> s.append("&gt;");
                case '"' -> s.append("&quot;");
                case '\'' -> s.append("&#39;");
                default -> {
                    if (c >= 0x20 || c == '\t' || c == '\n') {
                        s.appendCodePoint(c);
                    }
                }
            }
        });
        return s.toString();
    }
}
