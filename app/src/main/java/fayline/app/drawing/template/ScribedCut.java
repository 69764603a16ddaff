package fayline.app.drawing.template;

import fayline.method.fitup.outline.DepthAt;
import fayline.method.fitup.trim.cut.CutLine;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.ArrayList;
import java.util.List;

/**
 * Cuts that meet at a corner, scribed as one line.
 *
 * @param edge the edges it runs along
 * @param side what is cut
 * @param finished how deep in the end
 * @param first how deep at first
 */
record ScribedCut(String edge, CutSide side, List<DepthAt> finished, List<DepthAt> first) {
    private static final double SAME_PLACE_MM = 1e-6;

    ScribedCut {
        finished = List.copyOf(finished);
        first = List.copyOf(first);
    }

    /** The cuts, those that meet put together; never more than once round. */
    static List<ScribedCut> joined(List<CutLine> cuts, double perimeterMm) {
        List<ScribedCut> all = new ArrayList<>();
        cuts.forEach(c -> all.add(new ScribedCut(c.edge(), c.side(), c.finished(), c.first())));
        boolean found = true;
        while (found) {
            found = false;
            for (int i = 0; i < all.size() && !found; i++) {
                for (int j = 0; j < all.size() && !found; j++) {
                    if (i != j && all.get(i).meets(all.get(j), perimeterMm)) {
                        all.set(i, all.get(i).with(all.get(j)));
                        all.remove(j);
                        found = true;
                    }
                }
            }
        }
        return all;
    }

    private double from() {
        return finished.get(0).sMm();
    }

    private double to() {
        return finished.get(finished.size() - 1).sMm();
    }

    private boolean meets(ScribedCut next, double perimeterMm) {
        double off = (next.from() - to()) / perimeterMm;
        return side == next.side
                && Math.abs(off - Math.rint(off)) * perimeterMm < SAME_PLACE_MM
                && to() - from() + next.to() - next.from() < perimeterMm - SAME_PLACE_MM;
    }

    private ScribedCut with(ScribedCut next) {
        double shift = to() - next.from();
        return new ScribedCut(
                edge.equals(next.edge) ? edge : edge + ", " + next.edge,
                side,
                onwards(finished, next.finished, shift),
                onwards(first, next.first, shift));
    }

    private static List<DepthAt> onwards(List<DepthAt> line, List<DepthAt> next, double shift) {
        List<DepthAt> all = new ArrayList<>(line);
        next.stream().skip(1).forEach(d -> all.add(new DepthAt(d.sMm() + shift, d.depthMm())));
        return all;
    }
}
