package fayline.app.drawing.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.fit.SprungPicture.Bar;
import fayline.app.drawing.fit.SprungPicture.State;
import fayline.method.fitup.frame.FramePoint;
import java.util.List;
import org.junit.jupiter.api.Test;

class SprungDrawingTest {
    private static final FramePoint NONE = new FramePoint(0, 0, 0);
    private static final List<FramePoint> RAIL =
            List.of(new FramePoint(0, 0, 0), new FramePoint(300, 0, 0), new FramePoint(600, 0, 0));

    private static List<FramePoint> middle(double y) {
        return List.of(NONE, new FramePoint(0, y, 0), NONE);
    }

    private static SprungPicture rail(double out) {
        List<FramePoint> places =
                RAIL.stream().map(p -> new FramePoint(p.xMm(), p.yMm(), out)).toList();
        return new SprungPicture(
                "Rail",
                List.of(
                        new Bar(State.CARRIER, places, middle(0)),
                        new Bar(State.FREE, places, middle(2)),
                        new Bar(State.CLAMPED, places, middle(0)),
                        new Bar(State.CARRIER_AFTER, places, middle(0.5))),
                List.of(
                        new SprungPicture.Force("K1 40 N down", places.get(1), new FramePoint(0, 1, 0), -40),
                        new SprungPicture.Force("K2 13 N aft", places.get(2), new FramePoint(1, 0, 0), 40.0 / 3)),
                List.of(new SprungPicture.Joint(places.get(1), true)),
                List.of(new SprungPicture.Pin("L1", places.get(0), true)));
    }

    private static List<Point> line(Drawing d, Ink ink, double width) {
        return d.flat().stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .filter(l ->
                        l.ink() == ink && l.widthMm() == width && l.points().size() == 3)
                .findFirst()
                .orElseThrow()
                .points();
    }

    @Test
    void should_draw_each_state_to_scale_with_its_shift_as_large_as_stated() {
        SprungPicture picture = rail(0);
        Drawing d = SprungDrawing.of(picture);
        double factor = SprungDrawing.factor(picture);
        List<Point> clamped = line(d, Ink.INK, 0.25);
        List<Point> free = line(d, Ink.QUIET, 0.4);
        List<Point> after = line(d, Ink.INK, 0.75);
        // 600 mm over the 60 mm between the sides: a tenth.
        assertThat(clamped.get(2).xMm() - clamped.get(0).xMm()).isEqualTo(60, within(1e-9));
        assertThat(clamped.get(1).yMm() - free.get(1).yMm()).isEqualTo(factor * 2 * 0.1, within(1e-9));
        assertThat(clamped.get(1).yMm() - after.get(1).yMm()).isEqualTo(factor * 0.5 * 0.1, within(1e-9));
        assertThat(free.get(0)).isEqualTo(clamped.get(0));
        assertThat(text(d)).contains("Shifts drawn 30 times as large as they are.");
        assertThat(factor).isEqualTo(30);
    }

    private static List<String> text(Drawing d) {
        return d.flat().stream()
                .filter(Shape.Text.class::isInstance)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }

    @Test
    void should_point_each_arrow_at_its_clamp_the_way_the_part_is_forced_and_as_long_as_it_is_strong() {
        Drawing d = SprungDrawing.of(rail(0));
        List<Point> clamped = line(d, Ink.INK, 0.25);
        List<Shape.Polyline> arrows = d.flat().stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .filter(l -> l.ink() == Ink.HOLD)
                .toList();
        // Down, on a line through the middle: from above, the full length; aft at the aft end: from the place, a third.
        assertThat(arrows.get(0).points().get(1)).isEqualTo(clamped.get(1));
        assertThat(arrows.get(0).points().get(0).yMm())
                .isEqualTo(clamped.get(1).yMm() - SprungDrawing.ARROW_MM, within(1e-9));
        assertThat(arrows.get(1).points().get(0)).isEqualTo(clamped.get(2));
        assertThat(arrows.get(1).points().get(1).xMm())
                .isEqualTo(clamped.get(2).xMm() + SprungDrawing.ARROW_MM / 3, within(1e-9));
        assertThat(text(d)).contains("K1 40 N down", "K2 13 N aft", "L1 binds");
        assertThat(d.title()).contains("L1 binds").contains("K1 40 N down");
    }

    @Test
    void should_draw_slanted_what_lies_out_of_the_plane_and_say_so() {
        assertThat(text(SprungDrawing.of(rail(100)))).contains("What lies out of the plane is drawn slanted.");
        assertThat(text(SprungDrawing.of(rail(0)))).doesNotContain("What lies out of the plane is drawn slanted.");
        SprungPicture bow = new SprungPicture(
                "Bow",
                List.of(new Bar(
                        State.CLAMPED,
                        List.of(new FramePoint(0, 0, 0), new FramePoint(0, 100, 200), new FramePoint(0, 200, 0)),
                        List.of(NONE, NONE, NONE))),
                List.of(),
                List.of(),
                List.of());
        List<Point> p = line(SprungDrawing.of(bow), Ink.INK, 0.25);
        double scale = (p.get(0).yMm() - p.get(2).yMm()) / 200;
        assertThat(p.get(1).xMm() - p.get(0).xMm()).isEqualTo(SprungDrawing.SLANT * 200 * scale, within(1e-9));
        assertThat(p.get(0).yMm() - p.get(1).yMm()).isEqualTo((100 + SprungDrawing.SLANT * 200) * scale, within(1e-9));
    }
}
