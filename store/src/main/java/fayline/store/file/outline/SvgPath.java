package fayline.store.file.outline;

import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the path data of SVG: every command, absolute and relative, arcs included (SVG 1.1, chapter 8 and appendix F.6 for
 * arcs). Coordinates are handed to a placing function, which scales, turns and shifts, before curves are flattened.
 */
final class SvgPath {
    private static final Pattern TOKEN =
            Pattern.compile("\\s*,?\\s*(?:([MmZzLlHhVvCcSsQqTtAa])|([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?))");
    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");
    private static final Pattern FLAG = Pattern.compile("\\s*,?\\s*([01])");

    private final String data;
    private final UnaryOperator<Point> place;
    private final List<List<Point>> pieces = new ArrayList<>();
    private List<Point> current = new ArrayList<>();
    private int at;
    private Point pen = new Point(0, 0);
    private Point start = new Point(0, 0);
    private Point handle = new Point(0, 0);
    private char before = 'M';

    private SvgPath(String data, UnaryOperator<Point> place) {
        this.data = data;
        this.place = place;
    }

    /** The pieces of a path, each a run of points. */
    static List<List<Point>> read(String data, UnaryOperator<Point> place) {
        return new SvgPath(data, place).run();
    }

    /** The numbers of a list as SVG writes them. */
    static double[] numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .mapToDouble(r -> Double.parseDouble(r.group()))
                .toArray();
    }

    private List<List<Point>> run() {
        char command = 0;
        while (!data.substring(at).isBlank()) {
            Matcher m = TOKEN.matcher(data).region(at, data.length());
            if (!m.lookingAt()) {
                throw wrong("what stands at character " + (at + 1));
            }
            if (m.group(1) != null) {
                command = m.group(1).charAt(0);
                at = m.end();
            } else if (command == 'M' || command == 'm') {
                command = command == 'M' ? 'L' : 'l';
            } else if (command == 0 || command == 'Z' || command == 'z') {
                throw wrong("a number at character " + (at + 1) + " without a command");
            }
            step(command);
            before = command;
        }
        finish();
        return pieces;
    }

    private UnreadableOutlineException wrong(String what) {
        return new UnreadableOutlineException("in the path " + what, "path data as SVG defines it", "export it again");
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        switch (Character.toUpperCase(command)) {
            case 'M' -> {
                finish();
                pen = point(relative);
                start = pen;
                current.add(place.apply(pen));
            }
            case 'Z' -> {
                line(start);
                finish();
                pen = start;
            }
            case 'L' -> line(point(relative));
            case 'H' -> line(new Point(number() + (relative ? pen.xM() : 0), pen.yM()));
            case 'V' -> line(new Point(pen.xM(), number() + (relative ? pen.yM() : 0)));
            case 'C' -> cubic(point(relative), point(relative), point(relative));
            case 'S' -> cubic(follows("CS") ? reflected() : pen, point(relative), point(relative));
            case 'Q' -> quadratic(point(relative), point(relative));
            case 'T' -> quadratic(follows("QT") ? reflected() : pen, point(relative));
            default -> arc(relative);
        }
    }

    private boolean follows(String commands) {
        return commands.indexOf(Character.toUpperCase(before)) >= 0;
    }

    private Point reflected() {
        return new Point(2 * pen.xM() - handle.xM(), 2 * pen.yM() - handle.yM());
    }

    private void finish() {
        if (current.size() > 1) {
            pieces.add(current);
        }
        current = new ArrayList<>();
    }

    private void begin() {
        if (current.isEmpty()) {
            current.add(place.apply(pen));
        }
    }

    private void line(Point to) {
        begin();
        current.add(place.apply(to));
        pen = to;
    }

    private void follow(java.util.function.DoubleFunction<Point> curve, Point to) {
        begin();
        List<Point> piece = Curve.flatten(t -> place.apply(curve.apply(t)), 0, 1);
        current.addAll(piece.subList(1, piece.size()));
        pen = to;
    }

    private void cubic(Point b, Point c, Point d) {
        Point a = pen;
        follow(
                t -> {
                    double u = 1 - t;
                    double wa = u * u * u;
                    double wb = 3 * u * u * t;
                    double wc = 3 * u * t * t;
                    double wd = t * t * t;
                    return new Point(
                            wa * a.xM() + wb * b.xM() + wc * c.xM() + wd * d.xM(),
                            wa * a.yM() + wb * b.yM() + wc * c.yM() + wd * d.yM());
                },
                d);
        handle = c;
    }

    private void quadratic(Point b, Point c) {
        Point a = pen;
        follow(
                t -> {
                    double u = 1 - t;
                    return new Point(
                            u * u * a.xM() + 2 * u * t * b.xM() + t * t * c.xM(),
                            u * u * a.yM() + 2 * u * t * b.yM() + t * t * c.yM());
                },
                c);
        handle = b;
    }

    private void arc(boolean relative) {
        double rx = Math.abs(number());
        double ry = Math.abs(number());
        double tilt = Math.toRadians(number());
        boolean large = flag();
        boolean sweep = flag();
        Point to = point(relative);
        if (rx == 0 || ry == 0) {
            line(to);
            return;
        }
        if (to.equals(pen)) {
            return;
        }
        SvgArc arc = SvgArc.between(pen, to, new double[] {rx, ry, tilt}, large, sweep);
        follow(t -> t >= 1 ? to : arc.at(t), to);
    }

    private Point point(boolean relative) {
        double x = number();
        double y = number();
        return relative ? new Point(pen.xM() + x, pen.yM() + y) : new Point(x, y);
    }

    private double number() {
        Matcher m = TOKEN.matcher(data).region(at, data.length());
        if (!m.lookingAt() || m.group(2) == null) {
            throw wrong(String.format(Locale.ROOT, "no number at character %d", at + 1));
        }
        at = m.end();
        return Double.parseDouble(m.group(2));
    }

    /** Flags of arcs may stand without a blank before the next number. */
    private boolean flag() {
        Matcher m = FLAG.matcher(data).region(at, data.length());
        if (!m.lookingAt()) {
            throw wrong(String.format(Locale.ROOT, "no 0 or 1 at character %d", at + 1));
        }
        at = m.end();
        return m.group(1).equals("1");
    }
}
