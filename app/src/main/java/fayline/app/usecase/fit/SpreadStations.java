package fayline.app.usecase.fit;

import fayline.flow.project.design.Hand;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.outline.EdgePoint;
import fayline.method.fitup.outline.EvenStations;
import fayline.method.fitup.outline.PartOutline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Stations spread along an edge in one go, named in the builder's ways: which edge, and the how-manieth from where. */
final class SpreadStations {
    private final PartOutline outline;
    private final Side side;

    SpreadStations(PartOutline outline, Hand hand) {
        this.outline = outline;
        this.side = hand == Hand.RIGHT ? Side.RIGHT : Side.LEFT;
    }

    /** So many stations, marked 1, 2, 3 as one walks round the edge; their directions follow from it. */
    List<NewFit.Marked> stations(int number) {
        List<EdgePoint> points = EvenStations.along(outline, number);
        Map<String, Integer> on = new HashMap<>();
        points.forEach(p -> on.merge(edge(p), 1, Integer::sum));
        List<NewFit.Marked> all = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            EdgePoint p = points.get(i);
            long before = points.stream()
                    .filter(o -> edge(o).equals(edge(p)) && isBefore(o, p))
                    .count();
            String order = on.getOrDefault(edge(p), 1) == 1
                    ? ""
                    : ", " + (before + 1) + " of " + on.get(edge(p)) + (upright(p) ? " from below" : " from the front");
            all.add(new NewFit.Marked(
                    String.valueOf(i + 1),
                    edge(p) + order,
                    NewEdge.number(p.at().xMm()) + " " + NewEdge.number(p.at().yMm()),
                    ""));
        }
        return all;
    }

    /** The two places at which a move is told: where the edge comes nearest to the upper aft and the lower front corner. */
    List<String> marks() {
        List<Spot> drawn = outline.drawn(outline.perimeterMm() * 1e-3);
        double left = drawn.stream().mapToDouble(Spot::xMm).min().orElseThrow();
        double right = drawn.stream().mapToDouble(Spot::xMm).max().orElseThrow();
        double low = drawn.stream().mapToDouble(Spot::yMm).min().orElseThrow();
        double high = drawn.stream().mapToDouble(Spot::yMm).max().orElseThrow();
        double aft = side == Side.LEFT ? right : left;
        double front = side == Side.LEFT ? left : right;
        return List.of(mark("upper aft corner", aft, high), mark("lower front corner", front, low));
    }

    private String mark(String name, double x, double y) {
        Spot at = outline.nearest(new Spot(x, y)).at();
        return "{name: " + name + ", at: \"" + NewEdge.number(at.xMm()) + " " + NewEdge.number(at.yMm()) + "\"}";
    }

    private static boolean upright(EdgePoint p) {
        return Math.abs(p.nx()) > Math.abs(p.ny());
    }

    private String edge(EdgePoint p) {
        if (upright(p)) {
            return side.along(p.nx()).equals("aft") ? "aft edge" : "front edge";
        }
        return p.ny() > 0 ? "upper edge" : "lower edge";
    }

    private boolean isBefore(EdgePoint other, EdgePoint p) {
        if (upright(p)) {
            return other.at().yMm() < p.at().yMm();
        }
        return side.along(p.at().xMm() - other.at().xMm()).equals("aft")
                && other.at().xMm() != p.at().xMm();
    }
}
