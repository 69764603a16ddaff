package fayline.app.drawing.fit;

import fayline.app.drawing.Ink;
import fayline.app.drawing.Mark;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A station's pin and its words. */
final class PinShapes {
    /** Size of the letters. */
    static final double LETTERS_MM = 3.2;

    private static final double LINE_MM = 3.7;
    private static final double MEAN_LETTER = 0.56;
    private static final double MARK_MM = 3.2;

    private final GapFrame frame;
    private final GapPicture picture;

    PinShapes(GapFrame frame, GapPicture picture) {
        this.frame = frame;
        this.picture = picture;
    }

    List<Shape> pin(StationPicture s, EdgeTrace.Sample at) {
        List<Shape> shapes = new ArrayList<>();
        Point foot = frame.on(at.at());
        boolean read = s.shownMm().isPresent();
        Point tip = frame.gap(at, s.shownMm().orElse(s.nominalMm()));
        boolean trouble = !s.trouble().isEmpty();
        if (picture.isCurrent(s)) {
            shapes.add(new Shape.Disc(foot, 2.6, Ink.NONE, Ink.HANDS, 0.9));
        }
        if (s.afterMm().isPresent() && s.beforeMm().isPresent()) {
            shapes.add(new Shape.Disc(frame.gap(at, s.beforeMm().getAsDouble()), 0.6, Ink.PAPER, Ink.QUIET, 0.25));
        }
        shapes.add(new Shape.Polyline(List.of(foot, tip), read ? Ink.INK : Ink.QUIET, 0.35, !read));
        shapes.add(
                read
                        ? new Shape.Disc(tip, 0.95, trouble ? Ink.TROUBLE : Ink.INK, Ink.PAPER, 0.2)
                        : new Shape.Disc(tip, 0.95, Ink.PAPER, Ink.QUIET, 0.35));
        return shapes;
    }

    /** Where the words of a pin have to begin: the outermost of what is drawn at the station. */
    Point outermost(StationPicture s, EdgeTrace.Sample at) {
        double most = Stream.of(s.upperMm(), s.beforeMm().orElse(0), s.afterMm().orElse(0))
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
        return frame.gap(at, Math.max(0, most));
    }

    List<String> lines(StationPicture s) {
        List<String> lines = new ArrayList<>();
        lines.add(s.id());
        if (s.shownMm().isPresent() && !s.label().isBlank()) {
            lines.add(s.label());
        }
        if (!s.trouble().isEmpty()) {
            lines.add(s.trouble());
        }
        if (picture.isCurrent(s)) {
            lines.add("read now");
        }
        return lines;
    }

    static double width(StationPicture s, List<String> lines) {
        double most = 0;
        for (String line : lines) {
            double mark = !s.trouble().isEmpty() && line.equals(s.trouble()) ? MARK_MM + 0.5 : 0;
            most = Math.max(most, line.length() * LETTERS_MM * MEAN_LETTER + mark);
        }
        return most + 1;
    }

    static double height(List<String> lines) {
        return lines.size() * LINE_MM + 0.6;
    }

    List<Shape> words(StationPicture s, List<String> lines, Labels.Box box, Point tip, Point foot) {
        List<Shape> shapes = new ArrayList<>();
        Point from = away(box, tip) <= away(box, foot) ? tip : foot;
        if (away(box, from) > 2) {
            shapes.add(new Shape.Polyline(List.of(from, nearest(box, from)), Ink.QUIET, 0.15, false));
        }
        if (picture.isCurrent(s)) {
            shapes.add(Shape.Polygon.rectangle(box.x(), box.y(), box.width(), box.height(), Ink.PAPER, Ink.HANDS, 0.5));
        }
        double middle = box.x() + box.width() / 2;
        double y = box.y() - 0.6;
        for (int i = 0; i < lines.size(); i++) {
            y += LINE_MM;
            String line = lines.get(i);
            if (i > 0 && line.equals(s.trouble())) {
                double x = middle - (line.length() * LETTERS_MM * MEAN_LETTER + MARK_MM + 0.5) / 2;
                shapes.addAll(trouble(x, y - MARK_MM + 0.3, MARK_MM));
                shapes.add(Shape.text(x + MARK_MM + 0.5, y, line, LETTERS_MM, Ink.INK));
            } else {
                shapes.add(
                        new Shape.Text(new Point(middle, y), line, LETTERS_MM, Ink.INK, Shape.Anchor.MIDDLE, i == 0));
            }
        }
        return shapes;
    }

    private static Point nearest(Labels.Box box, Point p) {
        return new Point(
                Math.max(box.x(), Math.min(box.x() + box.width(), p.xMm())),
                Math.max(box.y(), Math.min(box.y() + box.height(), p.yMm())));
    }

    private static double away(Labels.Box box, Point p) {
        Point n = nearest(box, p);
        return Math.hypot(n.xMm() - p.xMm(), n.yMm() - p.yMm());
    }

    /** The mark of trouble, in a square of a size. */
    static List<Shape> trouble(double x, double y, double sizeMm) {
        double k = sizeMm / Mark.TROUBLE.drawing().widthMm();
        List<Shape> shapes = new ArrayList<>();
        for (Shape s : Mark.TROUBLE.drawing().flat()) {
            if (s instanceof Shape.Polygon p) {
                shapes.add(new Shape.Polygon(
                        p.rings().stream().map(r -> moved(r, x, y, k)).toList(), p.fill(), p.edge(), p.widthMm() * k));
            } else if (s instanceof Shape.Polyline l) {
                shapes.add(new Shape.Polyline(moved(l.points(), x, y, k), l.ink(), l.widthMm() * k, l.dashed()));
            } else {
                throw new IllegalStateException("the mark of trouble holds " + s);
            }
        }
        return shapes;
    }

    private static List<Point> moved(List<Point> points, double x, double y, double k) {
        return points.stream()
                .map(p -> new Point(x + k * p.xMm(), y + k * p.yMm()))
                .toList();
    }
}
