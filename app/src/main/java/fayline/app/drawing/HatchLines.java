package fayline.app.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Clips hatch lines and dots to an area by the even-odd rule. */
final class HatchLines {
    private HatchLines() {}

    static List<Shape.Polyline> of(Shape.Hatch hatch) {
        double turn = Math.toRadians(hatch.angleDeg());
        // y runs down on the sheet, so a positive turn lowers y
        double dx = Math.cos(turn);
        double dy = -Math.sin(turn);
        double nx = -dy;
        double ny = dx;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (List<Point> ring : hatch.rings()) {
            for (Point p : ring) {
                double across = nx * p.xMm() + ny * p.yMm();
                least = Math.min(least, across);
                most = Math.max(most, across);
            }
        }
        List<Shape.Polyline> lines = new ArrayList<>();
        double spacing = hatch.spacingMm();
        for (double across = least + spacing / 2; across < most; across += spacing) {
            List<Double> cuts = cuts(hatch.rings(), nx, ny, dx, dy, across);
            for (int i = 0; i + 1 < cuts.size(); i += 2) {
                lines.add(new Shape.Polyline(
                        List.of(at(across, cuts.get(i), nx, ny, dx, dy), at(across, cuts.get(i + 1), nx, ny, dx, dy)),
                        hatch.ink(),
                        hatch.widthMm(),
                        false));
            }
        }
        return lines;
    }

    private static Point at(double across, double along, double nx, double ny, double dx, double dy) {
        return new Point(across * nx + along * dx, across * ny + along * dy);
    }

    private static List<Double> cuts(
            List<List<Point>> rings, double nx, double ny, double dx, double dy, double across) {
        List<Double> cuts = new ArrayList<>();
        for (List<Point> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Point a = ring.get(i);
                Point b = ring.get((i + 1) % ring.size());
                double sa = nx * a.xMm() + ny * a.yMm() - across;
                double sb = nx * b.xMm() + ny * b.yMm() - across;
                if ((sa < 0) != (sb < 0)) {
                    double t = sa / (sa - sb);
                    double x = a.xMm() + t * (b.xMm() - a.xMm());
                    double y = a.yMm() + t * (b.yMm() - a.yMm());
                    cuts.add(dx * x + dy * y);
                }
            }
        }
        Collections.sort(cuts);
        return cuts;
    }

    static List<Point> dots(Shape.Dots dots) {
        List<Point> centres = new ArrayList<>();
        double step = dots.spacingMm();
        int row = 0;
        // rows of a triangular grid, each found as a hatch line of its own
        Shape.Hatch rows = new Shape.Hatch(dots.rings(), 0, step * Math.sqrt(3) / 2, dots.ink(), 0);
        double lastY = Double.NaN;
        for (Shape.Polyline line : of(rows)) {
            Point a = line.points().get(0);
            Point b = line.points().get(1);
            if (Double.isNaN(lastY) || Math.abs(a.yMm() - lastY) > 1e-9) {
                row++;
                lastY = a.yMm();
            }
            double offset = row % 2 == 0 ? step / 2 : 0;
            double first = Math.ceil((a.xMm() + dots.radiusMm() - offset) / step) * step + offset;
            for (double x = first; x <= b.xMm() - dots.radiusMm(); x += step) {
                centres.add(new Point(x, a.yMm()));
            }
        }
        return centres;
    }
}
