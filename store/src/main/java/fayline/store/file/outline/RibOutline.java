package fayline.store.file.outline;

import fayline.basis.geometry.Outline;
import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Makes the outline of a rib of an airfoil: scaled to its chord and cut between two shares of it. */
final class RibOutline {
    private RibOutline() {}

    /**
     * Makes the outline.
     *
     * @param contour from the trailing edge over the upper face to the leading edge and back, in chords
     * @param chordM the chord in metres
     * @param from where the rib begins, as a share of the chord
     * @param to where it ends
     */
    static Outline outline(List<Point> contour, double chordM, double from, double to) {
        int nose = 0;
        for (int i = 1; i < contour.size(); i++) {
            nose = contour.get(i).xM() < contour.get(nose).xM() ? i : nose;
        }
        List<Point> upper = new ArrayList<>(contour.subList(0, nose + 1));
        Collections.reverse(upper);
        List<Point> lower = contour.subList(nose, contour.size());
        List<Point> ring = new ArrayList<>(cut(upper, from, to));
        Collections.reverse(ring);
        ring.addAll(cut(lower, from, to));
        List<Point> clean = new ArrayList<>();
        for (Point p : ring) {
            Point scaled = new Point(p.xM() * chordM, p.yM() * chordM);
            if (clean.isEmpty() || apart(clean.get(clean.size() - 1), scaled)) {
                clean.add(scaled);
            }
        }
        if (clean.size() > 1 && !apart(clean.get(0), clean.get(clean.size() - 1))) {
            clean.remove(clean.size() - 1);
        }
        if (clean.size() < 3) {
            throw new UnreadableOutlineException("nothing between from and to", "from less than to", "");
        }
        return Outline.of(clean);
    }

    private static boolean apart(Point a, Point b) {
        return Math.hypot(a.xM() - b.xM(), a.yM() - b.yM()) > 1e-7;
    }

    /** The part of a face, given from nose to tail, between two x, with the ends interpolated. */
    private static List<Point> cut(List<Point> face, double from, double to) {
        List<Point> kept = new ArrayList<>();
        for (int i = 0; i < face.size(); i++) {
            Point p = face.get(i);
            if (i > 0) {
                Point q = face.get(i - 1);
                for (double edge : new double[] {from, to}) {
                    if (q.xM() < edge && p.xM() > edge) {
                        double share = (edge - q.xM()) / (p.xM() - q.xM());
                        kept.add(new Point(edge, q.yM() + share * (p.yM() - q.yM())));
                    }
                }
            }
            if (p.xM() >= from && p.xM() <= to || from <= 0 && p.xM() < from || to >= 1 && p.xM() > to) {
                kept.add(p);
            }
        }
        return kept;
    }
}
