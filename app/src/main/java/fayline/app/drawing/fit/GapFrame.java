package fayline.app.drawing.fit;

import fayline.app.drawing.Point;
import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.PartOutline;
import java.util.ArrayList;
import java.util.List;

/**
 * How the plane of the part lies on the sheet, and how many times as wide as they are gaps are drawn.
 *
 * @param scale mm of the sheet per mm of the part
 * @param originX where the part's x = 0 lies on the sheet
 * @param originY where its y = 0 lies
 * @param factor how many times as wide gaps are drawn
 * @param heightMm height that the drawing takes, with room for the words round it
 */
record GapFrame(double scale, double originX, double originY, double factor, double heightMm) {
    /** Width of the sheet: that of a small phone's screen. */
    static final double WIDTH_MM = 94;

    private static final double SIDE_MM = 23;
    private static final double ABOVE_MM = 24;
    private static final double MOST_HEIGHT_MM = 66;
    private static final double REACH_MM = 7.5;
    private static final double STRIP_SIDE_MM = 9;
    private static final double STRIP_REACH_MM = 12;
    private static final double STRIP_ABOVE_MM = 25;
    private static final double[] STEPS = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8};

    static GapFrame of(GapPicture picture, List<EdgeTrace> traces) {
        List<Spot> spots = new ArrayList<>();
        traces.forEach(t -> t.samples().forEach(s -> spots.add(s.at())));
        if (spots.isEmpty()) {
            spots.add(new Spot(0, 0));
        }
        double left = spots.stream().mapToDouble(Spot::xMm).min().orElseThrow();
        double right = spots.stream().mapToDouble(Spot::xMm).max().orElseThrow();
        double low = spots.stream().mapToDouble(Spot::yMm).min().orElseThrow();
        double high = spots.stream().mapToDouble(Spot::yMm).max().orElseThrow();
        boolean strip = isStrip(picture);
        double scale = strip
                ? 1
                : Math.min(
                        (WIDTH_MM - 2 * SIDE_MM) / Math.max(right - left, 1e-3),
                        MOST_HEIGHT_MM / Math.max(high - low, 1e-3));
        double reach = picture.stations().stream()
                .mapToDouble(StationPicture::reachMm)
                .max()
                .orElse(0);
        double above = strip ? STRIP_ABOVE_MM : ABOVE_MM;
        double x0 = strip ? STRIP_SIDE_MM : (WIDTH_MM - (right - left) * scale) / 2;
        return new GapFrame(
                scale,
                x0 - left * scale,
                above + high * scale,
                factor((strip ? STRIP_REACH_MM : REACH_MM) / scale, reach),
                above + (high - low) * scale + (strip ? 3 : ABOVE_MM));
    }

    static boolean isStrip(GapPicture picture) {
        return !picture.stations().isEmpty() && !picture.placed();
    }

    /** Whether the true outline is drawn. */
    static boolean isTrue(GapPicture picture) {
        return picture.outline().map(PartOutline::perimeterMm).isPresent() && !isStrip(picture);
    }

    /** The largest round number (1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 15, ...) with which the widest gap stays within its room; at least 1. */
    static double factor(double roomMm, double widestMm) {
        double most = widestMm > 0 ? roomMm / widestMm : 1;
        double best = 1;
        for (double power = 1; power <= 1000; power *= 10) {
            for (double step : STEPS) {
                best = step * power <= most * (1 + 1e-9) ? step * power : best;
            }
        }
        return best;
    }

    Point on(Spot p) {
        return new Point(originX + p.xMm() * scale, originY - p.yMm() * scale);
    }

    /** Where a gap ends that opens at a place of the edge. */
    Point gap(EdgeTrace.Sample s, double gapMm) {
        return on(s.out(factor * gapMm));
    }
}
