package fayline.app.usecase.fit;

import fayline.basis.units.Length;
import java.util.Locale;

/**
 * The edge of a fit begun on the spot, as the definition takes it.
 *
 * @param key {@code vertices}, {@code traced} or {@code file}
 * @param value the corners, the measured points, or the drawing's name
 * @param radii radius of the corners, one for all or one each; empty for sharp ones and for what is no polygon
 * @param corners which of the measured points are corners; empty for none
 * @param unit the unit of the numbers; empty for mm, or for what a drawing says itself
 * @param drawing the drawing's text; empty for what is no drawing
 */
public record NewEdge(String key, String value, String radii, String corners, String unit, String drawing) {
    /** A rectangle about its middle, all corners alike. */
    public static NewEdge rectangle(Length width, Length height, Length radius) {
        double x = width.millimetres() / 2;
        double y = height.millimetres() / 2;
        return new NewEdge(
                "vertices",
                String.format(
                        Locale.ROOT,
                        "%s %s, %s %s, %s %s, %s %s",
                        number(-x),
                        number(-y),
                        number(x),
                        number(-y),
                        number(x),
                        number(y),
                        number(-x),
                        number(y)),
                radius.metres() > 0 ? number(radius.millimetres()) : "",
                "",
                "",
                "");
    }

    /** A polygon by its corners, as {@code x y, x y, ...}. */
    public static NewEdge polygon(String vertices, String radii, String unit) {
        return new NewEdge("vertices", vertices, radii, "", unit, "");
    }

    /** A line of points measured along the edge. */
    public static NewEdge traced(String points, String corners, String unit) {
        return new NewEdge("traced", points, "", corners, unit, "");
    }

    /** A drawing by its text, DXF or SVG as the text itself tells. */
    public static NewEdge drawn(String fit, String text) {
        String ending = text.contains("<svg") ? "svg" : "dxf";
        return new NewEdge("file", "outlines/fit-" + fit + "." + ending, "", "", "", text);
    }

    /** Millimetres as a file has them, to a thousandth. */
    static String number(double mm) {
        String text = String.format(Locale.ROOT, "%.3f", mm == 0 ? 0.0 : mm);
        return text.replaceAll("\\.?0+$", "").replaceAll("^-0$", "0");
    }
}
