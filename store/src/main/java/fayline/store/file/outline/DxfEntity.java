package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** One drawn thing of a DXF: its group codes and values in order. */
final class DxfEntity {
    private final String kind;
    private final int line;
    private final List<Integer> codes = new ArrayList<>();
    private final List<String> values = new ArrayList<>();

    DxfEntity(String kind, int line) {
        this.kind = kind;
        this.line = line;
    }

    void put(int code, String value) {
        codes.add(code);
        values.add(value);
    }

    String kind() {
        return kind;
    }

    String text(int code) {
        int i = codes.indexOf(code);
        return i < 0 ? "" : values.get(i);
    }

    double number(int code, double otherwise) {
        int i = codes.indexOf(code);
        return i < 0 ? otherwise : parse(values.get(i));
    }

    private double parse(String value) {
        try {
            double v = Double.parseDouble(value);
            if (Double.isFinite(v)) {
                return v;
            }
        } catch (NumberFormatException e) {
            // told below
        }
        throw new UnreadableOutlineException(
                "a " + kind + " from line " + line + " with the value \"" + value + "\"",
                "a number",
                "export it again");
    }

    private List<Double> numbers(int code) {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < codes.size(); i++) {
            if (codes.get(i) == code) {
                all.add(parse(values.get(i)));
            }
        }
        return all;
    }

    Point point(int code, double unitM) {
        return new Point(number(code, 0) * unitM, number(code + 10, 0) * unitM);
    }

    private List<Point> points(int code, double unitM) {
        List<Double> x = numbers(code);
        List<Double> y = numbers(code + 10);
        if (x.size() != y.size()) {
            throw new UnreadableOutlineException(
                    "a " + kind + " from line " + line + " with " + x.size() + " x and " + y.size() + " y",
                    "as many of both",
                    "export it again");
        }
        List<Point> all = new ArrayList<>();
        for (int i = 0; i < x.size(); i++) {
            all.add(new Point(x.get(i) * unitM, y.get(i) * unitM));
        }
        return all;
    }

    boolean closed() {
        return ((int) number(70, 0) & 1) != 0;
    }

    /** The points of an entity that is whole in itself. */
    List<Point> points(double unitM) {
        return switch (kind) {
            case "LINE" -> List.of(point(10, unitM), point(11, unitM));
            case "CIRCLE" -> mirrored(Curve.arc(point(10, unitM), number(40, 0) * unitM, 0, 2 * Math.PI));
            case "ARC" -> mirrored(arc(unitM));
            case "ELLIPSE" -> ellipse(unitM);
            case "LWPOLYLINE" -> mirrored(polyline(points(10, unitM), bulges(), closed()));
            case "SPLINE" -> spline(unitM);
            default -> List.of();
        };
    }

    private List<Point> arc(double unitM) {
        double from = Math.toRadians(number(50, 0));
        double turn = Math.toRadians(number(51, 360)) - from;
        while (turn <= 0) {
            turn += 2 * Math.PI;
        }
        return Curve.arc(point(10, unitM), number(40, 0) * unitM, from, Math.min(turn, 2 * Math.PI));
    }

    private List<Point> ellipse(double unitM) {
        Point c = point(10, unitM);
        Point major = point(11, unitM);
        double ratio = number(40, 1) * (number(230, 1) < 0 ? -1 : 1);
        double from = number(41, 0);
        double to = number(42, 2 * Math.PI);
        double end = to <= from ? to + 2 * Math.PI : to;
        return Curve.flatten(
                t -> new Point(
                        c.xM() + major.xM() * Math.cos(t) - major.yM() * ratio * Math.sin(t),
                        c.yM() + major.yM() * Math.cos(t) + major.xM() * ratio * Math.sin(t)),
                from,
                end);
    }

    /** A bulge belongs to the corner whose numbers it follows; corners without one have none. */
    private List<Double> bulges() {
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < codes.size(); i++) {
            if (codes.get(i) == 10) {
                all.add(0.0);
            } else if (codes.get(i) == 42 && !all.isEmpty()) {
                all.set(all.size() - 1, parse(values.get(i)));
            }
        }
        return all;
    }

    static List<Point> polyline(List<Point> corners, List<Double> bulges, boolean closed) {
        List<Point> points = new ArrayList<>();
        int edges = closed ? corners.size() : corners.size() - 1;
        for (int i = 0; i < edges; i++) {
            List<Point> piece = Curve.bulge(corners.get(i), corners.get((i + 1) % corners.size()), bulges.get(i));
            points.addAll(points.isEmpty() ? piece : piece.subList(1, piece.size()));
        }
        return points;
    }

    private List<Point> spline(double unitM) {
        List<Point> control = points(10, unitM);
        if (control.isEmpty()) {
            throw new UnreadableOutlineException(
                    "a spline from line " + line + " by fit points alone",
                    "a spline with control points",
                    "convert it to a polyline or let the drawing program write control points");
        }
        List<Double> weights = numbers(41);
        SplineCurve s = new SplineCurve(
                (int) number(71, 3),
                numbers(40),
                control,
                weights.isEmpty() ? Collections.nCopies(control.size(), 1.0) : weights);
        if (!s.fault().isEmpty()) {
            throw new UnreadableOutlineException(
                    "a spline from line " + line + " with " + s.fault(), "a whole spline", "export it again");
        }
        return s.flatten();
    }

    /** An extrusion against z means that the drawing plane is seen from behind. */
    List<Point> mirrored(List<Point> points) {
        if (number(230, 1) >= 0) {
            return points;
        }
        return points.stream().map(p -> new Point(-p.xM(), p.yM())).toList();
    }
}
