package fayline.store.file.outline;

import fayline.basis.geometry.Outline;
import fayline.basis.geometry.Outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Joins pieces of edge end to end into closed loops; the largest loop is the outer edge, those within it are cut-outs. */
final class Chaining {
    private static final double JOIN_M = 0.05e-3;

    private Chaining() {}

    static Outline outline(List<List<Point>> pieces) {
        List<List<Point>> loops = loops(pieces);
        if (loops.isEmpty()) {
            throw new UnreadableOutlineException(
                    "nothing that encloses an area", "lines, arcs or curves that close", "look at the layer");
        }
        loops.sort(Comparator.comparing((List<Point> l) -> Outline.of(l).area()).reversed());
        List<Point> outer = loops.get(0);
        List<List<Point>> holes = loops.subList(1, loops.size());
        for (List<Point> hole : holes) {
            if (hole.stream().anyMatch(p -> !within(p, outer))) {
                throw new UnreadableOutlineException(
                        "a second outline at " + show(hole.get(0)) + " outside the first",
                        "one outer edge, with cut-outs within it",
                        "put other shapes on a layer of their own and name the layer");
            }
        }
        return new Outline(outer, holes);
    }

    private static List<List<Point>> loops(List<List<Point>> pieces) {
        List<List<Point>> loops = new ArrayList<>();
        List<List<Point>> open = new ArrayList<>();
        for (List<Point> piece : pieces) {
            List<Point> clean = clean(piece);
            if (clean.size() < 2) {
                continue;
            }
            if (near(clean.get(0), last(clean)) && clean.size() > 3) {
                loops.add(clean.subList(0, clean.size() - 1));
            } else {
                open.add(clean);
            }
        }
        while (!open.isEmpty()) {
            List<Point> chain = new ArrayList<>(open.remove(0));
            while (!near(chain.get(0), last(chain))) {
                append(chain, open);
            }
            chain.remove(chain.size() - 1);
            if (chain.size() >= 3) {
                loops.add(chain);
            }
        }
        return loops;
    }

    private static void append(List<Point> chain, List<List<Point>> open) {
        for (int i = 0; i < open.size(); i++) {
            List<Point> next = new ArrayList<>(open.get(i));
            if (near(last(chain), last(next))) {
                Collections.reverse(next);
            }
            if (near(last(chain), next.get(0))) {
                open.remove(i);
                chain.addAll(next.subList(1, next.size()));
                return;
            }
        }
        throw new UnreadableOutlineException(
                "an open edge from " + show(chain.get(0)) + " to " + show(last(chain)),
                "edges that close, each end within 0.05 mm of the next",
                "close the gap, or put helping lines on another layer");
    }

    private static List<Point> clean(List<Point> piece) {
        List<Point> out = new ArrayList<>();
        for (Point p : piece) {
            if (out.isEmpty()
                    || Math.hypot(p.xM() - last(out).xM(), p.yM() - last(out).yM()) > 1e-9) {
                out.add(p);
            }
        }
        return out;
    }

    private static Point last(List<Point> points) {
        return points.get(points.size() - 1);
    }

    private static boolean near(Point a, Point b) {
        return Math.hypot(a.xM() - b.xM(), a.yM() - b.yM()) <= JOIN_M;
    }

    private static boolean within(Point p, List<Point> ring) {
        boolean in = false;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            if (a.yM() > p.yM() != b.yM() > p.yM()
                    && p.xM() < (b.xM() - a.xM()) * (p.yM() - a.yM()) / (b.yM() - a.yM()) + a.xM()) {
                in = !in;
            }
        }
        return in;
    }

    private static String show(Point p) {
        return String.format(Locale.ROOT, "(%.2f, %.2f) mm", p.xM() * 1000, p.yM() * 1000);
    }
}
