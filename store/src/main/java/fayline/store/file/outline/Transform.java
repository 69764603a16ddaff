package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plane transform x' = a x + c y + e, y' = b x + d y + f, as SVG writes it.
 *
 * @param a factor
 * @param b factor
 * @param c factor
 * @param d factor
 * @param e shift of x
 * @param f shift of y
 */
record Transform(double a, double b, double c, double d, double e, double f) {
    static final Transform NONE = new Transform(1, 0, 0, 1, 0, 0);
    private static final Pattern ONE = Pattern.compile("\\s*,?\\s*([a-zA-Z]+)\\s*\\(([^()]*)\\)");

    Point apply(Point p) {
        return new Point(a * p.xM() + c * p.yM() + e, b * p.xM() + d * p.yM() + f);
    }

    /** This after another: the other is applied first. */
    Transform after(Transform o) {
        return new Transform(
                a * o.a + c * o.b,
                b * o.a + d * o.b,
                a * o.c + c * o.d,
                b * o.c + d * o.d,
                a * o.e + c * o.f + e,
                b * o.e + d * o.f + f);
    }

    /** Reads a transform attribute; the last written is applied first. */
    static Transform parse(String text) {
        Transform all = NONE;
        Matcher m = ONE.matcher(text);
        int at = 0;
        while (at < text.length() && m.find(at) && m.start() == at) {
            all = all.after(one(m.group(1), SvgPath.numbers(m.group(2))));
            at = m.end();
        }
        if (!text.substring(at).isBlank()) {
            throw new UnreadableOutlineException(
                    "a transform \"" + text + "\"", "translate, scale, rotate, skewX, skewY or matrix", "");
        }
        return all;
    }

    private static Transform one(String name, double[] v) {
        double first = v.length > 0 ? v[0] : 0;
        double second = v.length > 1 ? v[1] : 0;
        return switch (name) {
            case "translate" -> new Transform(1, 0, 0, 1, first, second);
            case "scale" -> new Transform(first, 0, 0, v.length > 1 ? second : first, 0, 0);
            case "rotate" -> {
                double r = Math.toRadians(first);
                Transform turn = new Transform(Math.cos(r), Math.sin(r), -Math.sin(r), Math.cos(r), 0, 0);
                yield v.length < 3
                        ? turn
                        : new Transform(1, 0, 0, 1, second, v[2])
                                .after(turn)
                                .after(new Transform(1, 0, 0, 1, -second, -v[2]));
            }
            case "skewX" -> new Transform(1, 0, Math.tan(Math.toRadians(first)), 1, 0, 0);
            case "skewY" -> new Transform(1, Math.tan(Math.toRadians(first)), 0, 1, 0, 0);
            case "matrix" -> {
                if (v.length != 6) {
                    throw new UnreadableOutlineException("a matrix of " + v.length + " numbers", "six", "");
                }
                yield new Transform(v[0], v[1], v[2], v[3], v[4], v[5]);
            }
            default -> throw new UnreadableOutlineException("a transform " + name, "one that SVG knows", "");
        };
    }
}
