package fayline.app.drawing.fit;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.method.fitup.outline.PartOutline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * The gaps round a part, drawn as what they are: the edge to scale and outside it, a stated number of times as wide, the gap,
 * before dashed and after solid, over its tolerance; a pin for every station.
 */
public final class GapDrawing {
    private static final double CHORD_SHARE = 1e-3;

    private final GapPicture picture;
    private final List<EdgeTrace> traces;
    private final GapFrame frame;
    private final List<Shape> shapes = new ArrayList<>();

    private GapDrawing(GapPicture picture) {
        this.picture = picture;
        this.traces = EdgeTrace.of(picture);
        this.frame = GapFrame.of(picture, traces);
    }

    /** Draws. */
    public static Drawing of(GapPicture picture) {
        return new GapDrawing(picture).draw(true);
    }

    /** Draws for beside a keypad, where room is short: of the key only how many times as wide gaps are drawn. */
    public static Drawing withoutKey(GapPicture picture) {
        return new GapDrawing(picture).draw(false);
    }

    private Drawing draw(boolean key) {
        for (EdgeTrace t : traces) {
            band(t);
            comb(t);
        }
        for (EdgeTrace t : traces) {
            edge(t);
            if (picture.hasAfter()) {
                line(t, t.values(i -> station(i).beforeMm()), true);
                line(t, t.values(i -> station(i).afterMm()), false);
            } else {
                line(t, t.values(i -> station(i).beforeMm()), false);
            }
        }
        int leftOut = stations();
        double height = key
                ? GapKey.draw(picture, frame, leftOut, frame.heightMm(), shapes)
                : GapKey.scaleOnly(picture, frame, frame.heightMm(), shapes);
        return new Drawing(GapFrame.WIDTH_MM, height, title(), shapes);
    }

    private StationPicture station(int index) {
        return picture.stations().get(index);
    }

    private void edge(EdgeTrace t) {
        Optional<PartOutline> outline = picture.outline().filter(o -> GapFrame.isTrue(picture));
        if (outline.isPresent()) {
            double chord = CHORD_SHARE * outline.get().perimeterMm();
            List<Point> ring =
                    outline.get().drawn(chord / 10).stream().map(frame::on).toList();
            shapes.add(new Shape.Polygon(List.of(ring), Ink.NONE, Ink.INK, 0.6));
        } else if (t.samples().size() > 1) {
            shapes.add(new Shape.Polyline(
                    t.samples().stream().map(s -> frame.on(s.at())).toList(), Ink.QUIET, 0.5, false));
        }
    }

    private void band(EdgeTrace t) {
        double[] lower = t.values(i -> OptionalDouble.of(station(i).lowerMm()));
        double[] upper = t.values(i -> OptionalDouble.of(station(i).upperMm()));
        double[] nominal = t.values(i -> OptionalDouble.of(station(i).nominalMm()));
        for (int[] run : runs(upper)) {
            List<Point> ring = new ArrayList<>(points(t, upper, run));
            List<Point> back = new ArrayList<>(points(t, lower, run));
            java.util.Collections.reverse(back);
            ring.addAll(back);
            shapes.add(new Shape.Polygon(List.of(ring), Ink.NIGHT, Ink.NONE, 0));
            shapes.add(new Shape.Polyline(points(t, nominal, run), Ink.PAPER, 0.3, false));
        }
    }

    /** The ribbon: strokes across the gap that counts, as the gauge lies. */
    private void comb(EdgeTrace t) {
        double[] gap = t.values(i -> station(i).shownMm());
        for (int i = 0; i < gap.length; i += 2) {
            if (!Double.isNaN(gap[i])) {
                EdgeTrace.Sample s = t.samples().get(i);
                shapes.add(new Shape.Polyline(List.of(frame.on(s.at()), frame.gap(s, gap[i])), Ink.QUIET, 0.12, false));
            }
        }
    }

    private void line(EdgeTrace t, double[] gaps, boolean dashed) {
        for (int[] run : runs(gaps)) {
            shapes.add(new Shape.Polyline(
                    points(t, gaps, run), dashed ? Ink.QUIET : Ink.INK, dashed ? 0.4 : 0.55, dashed));
        }
    }

    private List<Point> points(EdgeTrace t, double[] gaps, int[] run) {
        List<Point> points = new ArrayList<>();
        for (int i = run[0]; i <= run[1]; i++) {
            points.add(frame.gap(t.samples().get(i), gaps[i]));
        }
        return points;
    }

    /** First and last of every unbroken stretch of two and more. */
    private static List<int[]> runs(double[] values) {
        List<int[]> runs = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= values.length; i++) {
            if (i == values.length || Double.isNaN(values[i])) {
                if (i - from >= 2) {
                    runs.add(new int[] {from, i - 1});
                }
                from = i + 1;
            }
        }
        return runs;
    }

    /** Pins, then words: those of the station read now and those in trouble find room first. */
    private int stations() {
        PinShapes pins = new PinShapes(frame, picture);
        List<EdgeTrace.Sample> at = traces.stream()
                .flatMap(t -> t.samples().stream())
                .filter(s -> s.station() >= 0)
                .collect(Collectors.toMap(EdgeTrace.Sample::station, s -> s, (a, b) -> a, java.util.TreeMap::new))
                .values()
                .stream()
                .toList();
        Labels labels = new Labels(GapFrame.WIDTH_MM, frame.heightMm(), drawnPoints());
        List<EdgeTrace.Sample> order = new ArrayList<>(at);
        order.sort(Comparator.comparingInt(s -> rank(station(s.station()))));
        int leftOut = 0;
        List<Shape> words = new ArrayList<>();
        for (EdgeTrace.Sample s : order) {
            StationPicture p = station(s.station());
            List<String> lines = pins.lines(p);
            Point tip = pins.outermost(p, s);
            Point foot = frame.on(s.at());
            Optional<Labels.Box> box =
                    labels.place(tip, foot, s.nx(), -s.ny(), PinShapes.width(p, lines), PinShapes.height(lines));
            leftOut += box.isPresent() ? 0 : 1;
            List<Shape> all = new ArrayList<>(pins.pin(p, s));
            box.ifPresent(b -> all.addAll(pins.words(p, lines, b, tip, foot)));
            words.add(new Shape.Group(spoken(p), p.link(), all));
        }
        shapes.addAll(words);
        return leftOut;
    }

    private int rank(StationPicture s) {
        return picture.isCurrent(s) ? 0 : s.trouble().isEmpty() ? 2 : 1;
    }

    private List<Point> drawnPoints() {
        List<Point> points = new ArrayList<>();
        for (EdgeTrace t : traces) {
            double[] upper = t.values(i -> OptionalDouble.of(station(i).reachMm()));
            for (int i = 0; i < upper.length; i++) {
                EdgeTrace.Sample s = t.samples().get(i);
                points.add(frame.on(s.at()));
                if (!Double.isNaN(upper[i])) {
                    points.add(frame.gap(s, upper[i]));
                }
            }
        }
        return points;
    }

    private static String spoken(StationPicture s) {
        if (s.shownMm().isEmpty()) {
            return "Station " + s.id() + ": no reading";
        }
        return "Station " + s.id() + ": " + s.label() + (s.trouble().isEmpty() ? "" : ", " + s.trouble());
    }

    private String title() {
        long trouble =
                picture.stations().stream().filter(s -> !s.trouble().isEmpty()).count();
        long read =
                picture.stations().stream().filter(s -> s.shownMm().isPresent()).count();
        return String.format(
                Locale.ROOT,
                "%s: gaps at %d of %d stations, %d out of tolerance.",
                picture.title(),
                read,
                picture.stations().size(),
                trouble);
    }
}
