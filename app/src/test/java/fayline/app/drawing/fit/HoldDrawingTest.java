package fayline.app.drawing.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.template.SampleTemplate;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.outline.PartOutline;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HoldDrawingTest {
    private static final PartOutline OUTLINE = SampleTemplate.outline();

    private static Station station(String id, double share) {
        var p = OUTLINE.at(share * OUTLINE.perimeterMm());
        return new Station(id, p.at(), p.nx(), p.ny());
    }

    private static HoldPicture picture(Side side, Move move) {
        return new HoldPicture(
                "Pane",
                side,
                Optional.of(OUTLINE),
                List.of(station("S1", 0.1), station("S2", 0.6)),
                List.of(
                        new HoldPicture.Hold(station("P1", 0.3), "3.28 mm"),
                        new HoldPicture.Hold(station("P2", 0.8), "")),
                Optional.of(move),
                new Spot(300, 200));
    }

    private static List<Shape.Polygon> wedges(Drawing d) {
        return d.flat().stream()
                .filter(s -> s instanceof Shape.Polygon p && p.fill() == Ink.HANDS && p.edge() == Ink.INK)
                .map(s -> (Shape.Polygon) s)
                .toList();
    }

    private static List<Shape.Polyline> thick(Drawing d) {
        return d.flat().stream()
                .filter(s -> s instanceof Shape.Polyline l && l.ink() == Ink.HANDS)
                .map(s -> (Shape.Polyline) s)
                .toList();
    }

    private static List<String> texts(Drawing d) {
        return d.flat().stream()
                .filter(s -> s instanceof Shape.Text)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }

    @Test
    void should_touch_the_edge_with_every_wedge_where_the_shim_goes() {
        Drawing d = HoldDrawing.of(picture(Side.LEFT, new Move(0.5, 0.2, 0)));
        List<Point> ring = d.flat().stream()
                .filter(s -> s instanceof Shape.Polygon p && p.fill() == Ink.NONE)
                .map(s -> ((Shape.Polygon) s).rings().get(0))
                .findFirst()
                .orElseThrow();
        assertThat(wedges(d)).hasSize(2);
        for (Shape.Polygon wedge : wedges(d)) {
            Point tip = wedge.rings().get(0).get(0);
            assertThat(ring.stream()
                            .mapToDouble(p -> Math.hypot(p.xMm() - tip.xMm(), p.yMm() - tip.yMm()))
                            .min()
                            .orElseThrow())
                    .isLessThan(60);
            assertThat(onEdge(ring, tip)).isCloseTo(0, within(0.1));
        }
        assertThat(texts(d)).contains("P1", "3.28 mm", "P2", "S1", "S2", "Right is aft, up is up.");
    }

    private static double onEdge(List<Point> ring, Point p) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < ring.size(); i++) {
            Point a = ring.get(i);
            Point b = ring.get((i + 1) % ring.size());
            double dx = b.xMm() - a.xMm();
            double dy = b.yMm() - a.yMm();
            double t = ((p.xMm() - a.xMm()) * dx + (p.yMm() - a.yMm()) * dy) / (dx * dx + dy * dy);
            double u = Math.max(0, Math.min(1, t));
            least = Math.min(least, Math.hypot(a.xMm() + u * dx - p.xMm(), a.yMm() + u * dy - p.yMm()));
        }
        return least;
    }

    @Test
    void should_point_the_way_the_part_goes_and_bow_the_way_it_turns() {
        Drawing d = HoldDrawing.of(picture(Side.RIGHT, new Move(0.3, 0.4, 0.01)));
        List<Shape.Polyline> lines = thick(d);
        assertThat(lines).hasSize(2);
        Point a = lines.get(0).points().get(0);
        Point b = lines.get(0).points().get(1);
        // 3 along x and 4 up: the sheet's y runs down
        assertThat((b.yMm() - a.yMm()) / (b.xMm() - a.xMm())).isCloseTo(-4.0 / 3, within(1e-9));
        assertThat(b.xMm()).isGreaterThan(a.xMm());
        List<Point> bow = lines.get(1).points();
        // counter-clockwise over the pivot: it runs from right to left
        assertThat(bow.get(bow.size() - 1).xMm()).isLessThan(bow.get(0).xMm());
        List<Point> back = thick(HoldDrawing.of(picture(Side.RIGHT, new Move(0, 0, -0.01))))
                .get(0)
                .points();
        assertThat(back.get(back.size() - 1).xMm()).isGreaterThan(back.get(0).xMm());
        assertThat(texts(d)).contains("Right is forward, up is up.");
        assertThat(thick(HoldDrawing.of(picture(Side.LEFT, Move.NONE)))).isEmpty();
    }
}
