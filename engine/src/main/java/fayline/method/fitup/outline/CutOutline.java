package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The line to cut to: the outline moved inwards (a neighbour's outwards), square to itself, by a depth that is linear in the arc
 * length between given places. On a sharp corner the two moved sides are brought to their intersection.
 */
public final class CutOutline {
    private static final double SAME_PLACE = 1e-9;

    private CutOutline() {}

    /**
     * One cut line, for a 1:1 template.
     *
     * @param outline the edge as it is
     * @param depths at least two places in rising arc length, which may run past the perimeter; beyond them nothing is cut
     * @param chordErrorMm how far a chord may be from the curve of a blend; positive
     * @return the points of the line from the first place to the last
     * @throws IllegalArgumentException if the places do not rise or go more than once round
     */
    public static List<Spot> line(PartOutline outline, List<DepthAt> depths, double chordErrorMm) {
        PartOutline.needError(chordErrorMm);
        check(outline, depths);
        return List.copyOf(walk(outline, depths, chordErrorMm, 1));
    }

    /**
     * The same of the neighbour that lies along the outline: its cut moves outwards. At a sharp corner both sides are brought to
     * their intersection, so that the neighbour's corner is whole.
     *
     * @param outline the edge that both follow
     * @param depths as for {@link #line}
     * @param chordErrorMm how far a chord may be from the curve of a blend; positive
     */
    public static List<Spot> outwards(PartOutline outline, List<DepthAt> depths, double chordErrorMm) {
        PartOutline.needError(chordErrorMm);
        check(outline, depths);
        return List.copyOf(walk(outline, depths, chordErrorMm, -1));
    }

    /**
     * The whole outline after cutting, the first point not repeated at the end.
     *
     * @param outline the edge as it is
     * @param cuts cut lines that do not overlap, each as for {@link #line}
     * @param chordErrorMm how far a chord may be from the curve of a blend
     * @throws IllegalArgumentException if two cuts overlap
     */
    public static List<Spot> whole(PartOutline outline, List<List<DepthAt>> cuts, double chordErrorMm) {
        PartOutline.needError(chordErrorMm);
        if (cuts.isEmpty()) {
            return outline.drawn(chordErrorMm);
        }
        cuts.forEach(c -> check(outline, c));
        List<List<DepthAt>> sorted = new ArrayList<>(cuts);
        sorted.sort(Comparator.comparingDouble(c -> outline.wrappedMm(c.get(0).sMm())));
        double start = outline.wrappedMm(sorted.get(0).get(0).sMm());
        double end = start + outline.perimeterMm();
        List<DepthAt> all = new ArrayList<>();
        double done = start;
        for (List<DepthAt> cut : sorted) {
            double shift = outline.wrappedMm(cut.get(0).sMm()) - cut.get(0).sMm();
            double from = cut.get(0).sMm() + shift;
            if (from < done - SAME_PLACE) {
                throw new IllegalArgumentException("two cut lines overlap at " + from + " mm");
            }
            if (from > done + SAME_PLACE) {
                all.add(new DepthAt(done, 0));
                all.add(new DepthAt(from, 0));
            }
            cut.forEach(d -> all.add(new DepthAt(Math.min(end, d.sMm() + shift), d.depthMm())));
            done = cut.get(cut.size() - 1).sMm() + shift;
        }
        if (done > end + SAME_PLACE) {
            throw new IllegalArgumentException("the last cut line runs into the first");
        }
        if (done < end - SAME_PLACE) {
            all.add(new DepthAt(done, 0));
            all.add(new DepthAt(end, 0));
        }
        List<Spot> ring = walk(outline, all, chordErrorMm, 1);
        close(outline, ring, start);
        return List.copyOf(ring);
    }

    private static void check(PartOutline outline, List<DepthAt> depths) {
        if (depths.size() < 2) {
            throw new IllegalArgumentException("a cut line needs two places, not " + depths.size());
        }
        for (int i = 1; i < depths.size(); i++) {
            if (!(depths.get(i).sMm() > depths.get(i - 1).sMm())) {
                throw new IllegalArgumentException(
                        "a cut line goes on from " + depths.get(i - 1).sMm() + " mm, not to "
                                + depths.get(i).sMm());
            }
        }
        double over = depths.get(depths.size() - 1).sMm() - depths.get(0).sMm();
        if (over > outline.perimeterMm() + SAME_PLACE) {
            throw new IllegalArgumentException("a cut line over " + over + " mm goes more than once round");
        }
    }

    private static List<Spot> walk(PartOutline outline, List<DepthAt> depths, double chordErrorMm, int inwards) {
        int n = outline.pieces().size();
        double p = outline.perimeterMm();
        double turn = p * Math.floor(depths.get(0).sMm() / p);
        double to = depths.get(depths.size() - 1).sMm();
        List<Spot> line = new ArrayList<>();
        for (int k = 0; ; k++) {
            double start = turn + Math.floorDiv(k, n) * p + outline.startMm(k % n);
            if (start >= to - SAME_PLACE) {
                return line;
            }
            List<Spot> part = part(outline, k % n, start, depths, chordErrorMm, inwards);
            if (!part.isEmpty()) {
                join(line, part, outline.sharpBefore(k % n));
            }
        }
    }

    /** The moved line of one piece; where the depth jumps, both depths in turn. */
    private static List<Spot> part(
            PartOutline outline, int i, double start, List<DepthAt> depths, double chordErrorMm, int inwards) {
        Piece piece = outline.pieces().get(i);
        double end = start + piece.lengthMm();
        List<DepthAt> at = new ArrayList<>();
        for (int k = 1; k < depths.size(); k++) {
            DepthAt a = depths.get(k - 1);
            DepthAt b = depths.get(k);
            double from = Math.max(start, a.sMm());
            double to = Math.min(end, b.sMm());
            if (to - from <= SAME_PLACE) {
                continue;
            }
            at.add(new DepthAt(from, between(a, b, from)));
            for (double u : piece.steps(chordErrorMm)) {
                double s = start + u;
                if (s > from + SAME_PLACE && s < to - SAME_PLACE) {
                    at.add(new DepthAt(s, between(a, b, s)));
                }
            }
            at.add(new DepthAt(to, between(a, b, to)));
        }
        List<Spot> points = new ArrayList<>();
        for (DepthAt d : at) {
            EdgePoint p = outline.point(d.sMm(), i, Math.min(piece.lengthMm(), Math.max(0, d.sMm() - start)), false);
            double by = -inwards * d.depthMm();
            append(points, p.at().plus(by * p.nx(), by * p.ny()));
        }
        return points;
    }

    private static double between(DepthAt a, DepthAt b, double s) {
        double share = Math.max(0, Math.min(1, (s - a.sMm()) / (b.sMm() - a.sMm())));
        return a.depthMm() + share * (b.depthMm() - a.depthMm());
    }

    private static void append(List<Spot> line, Spot p) {
        if (line.isEmpty() || line.get(line.size() - 1).distanceMm(p) > SAME_PLACE) {
            line.add(p);
        }
    }

    private static void join(List<Spot> line, List<Spot> part, boolean corner) {
        List<Spot> next = new ArrayList<>(part);
        if (corner) {
            meet(line, next);
        }
        next.forEach(p -> append(line, p));
    }

    private static void close(PartOutline outline, List<Spot> ring, double start) {
        if (outline.at(start).sharp()) {
            meet(ring, ring);
        }
        if (ring.size() > 1 && ring.get(0).distanceMm(ring.get(ring.size() - 1)) <= SAME_PLACE) {
            ring.remove(ring.size() - 1);
        }
    }

    /** Brings the end of one line and the start of the next to the place where their last and first segments meet. */
    private static void meet(List<Spot> line, List<Spot> next) {
        if (line.size() < 2 || next.size() < 2) {
            return;
        }
        Spot a = line.get(line.size() - 2);
        Spot b = line.get(line.size() - 1);
        Spot c = next.get(0);
        Spot d = next.get(1);
        double ux = b.xMm() - a.xMm();
        double uy = b.yMm() - a.yMm();
        double vx = d.xMm() - c.xMm();
        double vy = d.yMm() - c.yMm();
        double cross = ux * vy - uy * vx;
        boolean parallel = Math.abs(cross) <= SAME_PLACE * Math.hypot(ux, uy) * Math.hypot(vx, vy);
        if (b.distanceMm(c) > SAME_PLACE && !parallel) {
            double t = ((c.xMm() - a.xMm()) * vy - (c.yMm() - a.yMm()) * vx) / cross;
            Spot meet = a.plus(t * ux, t * uy);
            line.set(line.size() - 1, meet);
            next.set(0, meet);
        }
    }
}
