package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import java.util.List;

/**
 * The direction of a traced line: the line of closest fit [pearson1901] to the stretch of ± max(5 mm, two points), weighted by
 * length, never across a corner.
 */
final class TangentWindow {
    private static final double LEAST_MM = 5;
    private static final int LEAST_POINTS = 2;
    private static final double NOTHING = 1e-9;

    private TangentWindow() {}

    /**
     * A fitted direction.
     *
     * @param tx unit tangent, x
     * @param ty unit tangent, y
     * @param turnRad angle between the first and the last segment of the stretch
     */
    record Direction(double tx, double ty, double turnRad) {}

    static Direction at(PartOutline outline, int piece, double u) {
        Moments m = new Moments();
        double half =
                Math.max(LEAST_MM, Math.max(toSecondPoint(outline, piece, u, 1), toSecondPoint(outline, piece, u, -1)));
        int last = walk(outline, piece, u, 1, half, m);
        int first = walk(outline, piece, u, -1, half, m);
        List<Piece> pieces = outline.pieces();
        Piece a = pieces.get(first);
        Piece b = pieces.get(last);
        double turn = Math.abs(Math.atan2(a.tx() * b.ty() - a.ty() * b.tx(), a.tx() * b.tx() + a.ty() * b.ty()));
        double angle = m.angle();
        double tx = Math.cos(angle);
        double ty = Math.sin(angle);
        double along = tx * m.chordX + ty * m.chordY;
        return along >= 0 ? new Direction(tx, ty, turn) : new Direction(-tx, -ty, turn);
    }

    /** How far the second point on one side is; less where a corner comes first. */
    private static double toSecondPoint(PartOutline outline, int piece, double u, int way) {
        double done = 0;
        int points = 0;
        int i = piece;
        double there = way > 0 ? outline.pieces().get(i).lengthMm() - u : u;
        while (true) {
            done += there;
            points += there > 0 ? 1 : 0;
            if (points >= LEAST_POINTS || outline.sharpBefore(way > 0 ? i + 1 : i)) {
                return done;
            }
            i = Math.floorMod(i + way, outline.pieces().size());
            there = outline.pieces().get(i).lengthMm();
        }
    }

    /** Adds the stretch on one side to the moments; returns the piece it ends in. */
    private static int walk(PartOutline outline, int piece, double u, int way, double half, Moments m) {
        int n = outline.pieces().size();
        double left = half;
        int i = piece;
        double from = u;
        for (int k = 0; k <= n; k++) {
            Piece p = outline.pieces().get(i);
            double there = way > 0 ? p.lengthMm() - from : from;
            double take = Math.min(there, left);
            if (take > 0) {
                Spot a = p.at(from);
                Spot b = p.at(from + way * take);
                m.add(way > 0 ? a : b, way > 0 ? b : a);
                left -= take;
            }
            if (left <= NOTHING || outline.sharpBefore(way > 0 ? i + 1 : i)) {
                return i;
            }
            i = Math.floorMod(i + way, n);
            from = way > 0 ? 0 : outline.pieces().get(i).lengthMm();
        }
        return i;
    }

    /** Length-weighted first and second moments of segments. */
    private static final class Moments {
        private double length;
        private double x;
        private double y;
        private double xx;
        private double xy;
        private double yy;
        private double chordX;
        private double chordY;

        void add(Spot a, Spot b) {
            double l = a.distanceMm(b);
            double mx = (a.xMm() + b.xMm()) / 2;
            double my = (a.yMm() + b.yMm()) / 2;
            double dx = b.xMm() - a.xMm();
            double dy = b.yMm() - a.yMm();
            length += l;
            x += l * mx;
            y += l * my;
            xx += l * (mx * mx + dx * dx / 12);
            xy += l * (mx * my + dx * dy / 12);
            yy += l * (my * my + dy * dy / 12);
            chordX += dx;
            chordY += dy;
        }

        double angle() {
            double cx = x / length;
            double cy = y / length;
            double sxx = xx / length - cx * cx;
            double sxy = xy / length - cx * cy;
            double syy = yy / length - cy * cy;
            return Math.atan2(2 * sxy, sxx - syy) / 2;
        }
    }
}
