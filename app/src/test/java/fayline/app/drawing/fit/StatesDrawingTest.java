package fayline.app.drawing.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.SvgRenderer;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class StatesDrawingTest {
    private static final double NONE = Double.NaN;

    private static StatesPicture.Row row(String id, double... gaps) {
        return new StatesPicture.Row(
                id,
                2.5,
                3,
                3.5,
                Arrays.stream(gaps)
                        .mapToObj(g -> Double.isNaN(g) ? OptionalDouble.empty() : OptionalDouble.of(g))
                        .toList(),
                "last",
                "told");
    }

    private static StatesPicture picture(StatesPicture.Row... rows) {
        return new StatesPicture(
                "Canopy",
                List.of(
                        new StatesPicture.State("trimmed", false),
                        new StatesPicture.State("hung", false),
                        new StatesPicture.State("painted", true)),
                List.of(rows));
    }

    private static List<Shape> field(Drawing d, int station) {
        return ((Shape.Group) d.shapes().get(station)).shapes();
    }

    private static List<Point> dots(Drawing d, int station) {
        return field(d, station).stream()
                .filter(s -> s instanceof Shape.Disc)
                .map(s -> ((Shape.Disc) s).centre())
                .toList();
    }

    private static List<Point> band(Drawing d, int station) {
        return field(d, station).stream()
                .filter(s -> s instanceof Shape.Polygon p && p.fill() == Ink.NIGHT)
                .map(s -> ((Shape.Polygon) s).rings().get(0))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_set_every_dot_by_its_gap_against_the_tolerance_when_all_fields_share_a_scale() {
        double[][] gaps = {{3.1, 2.4, 2.1}, {3.0, 3.2, 3.4}, {2.9, 3.9, 3.6}};
        Drawing d = StatesDrawing.of(picture(row("F1", gaps[0]), row("F2", gaps[1]), row("R1", gaps[2])));
        for (int i = 0; i < gaps.length; i++) {
            double top = band(d, i).get(0).yMm();
            double low = band(d, i).get(2).yMm();
            // the band is 3.5 to 2.5 mm: a millimetre of gap is as high as the band
            double perMm = low - top;
            assertThat(perMm)
                    .isCloseTo(band(d, 0).get(2).yMm() - band(d, 0).get(0).yMm(), within(1e-9));
            List<Point> dots = dots(d, i);
            assertThat(dots).hasSize(3);
            for (int k = 0; k < 3; k++) {
                assertThat(dots.get(k).yMm())
                        .as("station %d in state %d", i, k)
                        .isCloseTo(top + (3.5 - gaps[i][k]) * perMm, within(1e-9));
            }
            assertThat(dots.get(2).xMm() - dots.get(1).xMm())
                    .isCloseTo(dots.get(1).xMm() - dots.get(0).xMm(), within(1e-9));
        }
    }

    @Test
    void should_dash_what_is_foretold_and_mark_what_is_outside() {
        Drawing d = StatesDrawing.of(picture(row("F1", 3.1, 2.4, 2.1)));
        List<Shape.Polyline> lines = field(d, 0).stream()
                .filter(s -> s instanceof Shape.Polyline l
                        && l.widthMm() >= 0.4
                        && l.points().size() == 2)
                .map(s -> (Shape.Polyline) s)
                .toList();
        assertThat(lines).extracting(Shape.Polyline::dashed).containsSequence(false, true);
        List<Shape.Disc> dots = field(d, 0).stream()
                .filter(s -> s instanceof Shape.Disc)
                .map(s -> (Shape.Disc) s)
                .toList();
        // outside is a mark besides, so that it is seen in grey
        assertThat(dots).extracting(Shape.Disc::fill).containsExactly(Ink.INK, Ink.TROUBLE, Ink.PAPER);
        Drawing sound = StatesDrawing.of(picture(row("F1", 3.1, 2.9, 3.1)));
        assertThat(field(d, 0).size()).isGreaterThan(field(sound, 0).size());
    }

    @Test
    void should_join_over_a_state_that_was_not_read_and_name_every_state_once() {
        Drawing d = StatesDrawing.of(picture(row("F1", 3.1, NONE, 2.9), row("F2", NONE, NONE, NONE)));
        assertThat(dots(d, 0)).hasSize(2);
        assertThat(dots(d, 1)).isEmpty();
        String svg = SvgRenderer.forScreen().render(d);
        assertThat(svg).contains("1  trimmed").contains("2  hung").contains("3  painted (foretold)");
        assertThat(d.widthMm()).isEqualTo(GapFrame.WIDTH_MM);
        d.flat().stream()
                .filter(s -> s instanceof Shape.Text)
                .map(s -> (Shape.Text) s)
                .forEach(t -> assertThat(t.at().yMm()).isBetween(0.0, d.heightMm()));
    }

    @Test
    void should_refuse_a_station_that_lacks_a_state() {
        assertThatThrownBy(() -> picture(row("F1", 3, 3))).hasMessageContaining("F1 has 2 gaps for 3 states");
    }
}
