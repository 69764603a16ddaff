package fayline.app.drawing.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.Ink;
import fayline.app.drawing.Point;
import fayline.app.drawing.Shape;
import fayline.app.drawing.SvgRenderer;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The chain drawn, by coordinates. */
class ChainDrawingTest {
    private static ChainPicture.Bond bond(String name, boolean made, double share, boolean most, boolean corrected) {
        return new ChainPicture.Bond(
                name, name + " part", "on the bench", made, OptionalDouble.of(share), most, corrected);
    }

    private static final ChainPicture PICTURE = new ChainPicture(
            "Hatch",
            List.of(bond("first", false, 0.25, false, true), bond("second", true, 0.5, true, false)),
            "hull",
            List.of("door"),
            List.of(new ChainPicture.Rest("Readings", 0.2), new ChainPicture.Rest("States to come", 0.05)),
            "F1");

    private static List<Shape.Polygon> bars(Drawing d) {
        return d.flat().stream()
                .filter(Shape.Polygon.class::isInstance)
                .map(Shape.Polygon.class::cast)
                .filter(p -> p.fill() == Ink.DONE || p.fill() == Ink.TROUBLE)
                .toList();
    }

    private static double length(Shape.Polygon p) {
        return p.rings().get(0).get(1).xMm() - p.rings().get(0).get(0).xMm();
    }

    @Test
    void should_draw_bars_as_long_as_the_shares_and_whole_together() {
        List<Shape.Polygon> bars = bars(ChainDrawing.of(PICTURE));
        assertThat(bars)
                .extracting(ChainDrawingTest::length)
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
                .containsExactly(13.5, 27.0, 10.8, 2.7);
        assertThat(bars.stream().mapToDouble(ChainDrawingTest::length).sum())
                .isCloseTo(ChainDrawing.BAR_FULL_MM, within(1e-9));
        assertThat(bars)
                .filteredOn(b -> b.fill() == Ink.TROUBLE)
                .singleElement()
                .isSameAs(bars.get(1));
    }

    @Test
    void should_stand_the_parts_in_order_with_each_bond_between_them_broken_where_it_is_open() {
        Drawing d = ChainDrawing.of(PICTURE);
        List<Shape.Text> parts = d.flat().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .filter(t -> List.of("first part", "second part", "hull").contains(t.text()))
                .toList();
        assertThat(parts).extracting(Shape.Text::text).containsExactly("first part", "second part", "hull");
        List<Shape.Polyline> bonds = d.shapes().stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .toList();
        // the third is the neighbour's broken edge, below the ground
        assertThat(bonds).extracting(Shape.Polyline::dashed).containsExactly(true, false, true);
        assertThat(bonds.get(2).points().get(0))
                .isEqualTo(new Point(ChainDrawing.BAR_LEFT_MM, ChainDrawing.topOfPart(2) + ChainDrawing.PART_MM + 4));
        assertThat(bonds.get(0).points()).containsExactly(new Point(8, 10), new Point(8, ChainDrawing.topOfPart(1)));
        assertThat(ChainDrawing.topOfPart(1)).isEqualTo(27);
    }

    @Test
    void should_point_to_the_bond_that_takes_the_correction() {
        Drawing d = ChainDrawing.of(PICTURE);
        Shape.Group arrow = d.shapes().stream()
                .filter(Shape.Group.class::isInstance)
                .map(Shape.Group.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(arrow.label()).contains("first");
        Shape.Polygon head = (Shape.Polygon) arrow.shapes().get(1);
        assertThat(head.fill()).isEqualTo(Ink.HANDS);
        // the tip touches the first bond's line in the middle of its length
        assertThat(head.rings().get(0).get(1).xMm()).isCloseTo(7.1, within(1e-9));
        assertThat(head.rings().get(0).get(1).yMm()).isCloseTo(10 + 17 / 2.0, within(1e-9));
    }

    @Test
    void should_draw_no_bar_when_no_share_is_told_and_stay_on_its_sheet() {
        ChainPicture silent = new ChainPicture(
                "Hatch",
                List.of(new ChainPicture.Bond("first", "pane", "open", false, OptionalDouble.empty(), false, false)),
                "hull",
                List.of(),
                List.of(),
                "");
        assertThat(bars(ChainDrawing.of(silent))).isEmpty();
        for (ChainPicture p : List.of(PICTURE, silent)) {
            Drawing d = ChainDrawing.of(p);
            for (Shape s : d.flat()) {
                if (s instanceof Shape.Polygon a) {
                    assertThat(a.rings().get(0)).allSatisfy(q -> {
                        assertThat(q.xMm()).isBetween(0.0, d.widthMm());
                        assertThat(q.yMm()).isBetween(0.0, d.heightMm());
                    });
                }
            }
        }
    }

    @Test
    void should_tell_on_screen_by_theme_and_on_paper_in_colours_that_print_grey() {
        Drawing d = ChainDrawing.of(PICTURE);
        assertThat(SvgRenderer.forScreen().render(d))
                .contains("aria-label=\"Hatch: first, open, 25 %")
                .doesNotContain("#b3261e");
        assertThat(SvgRenderer.forPaper().render(d)).contains("#b3261e").contains("second");
    }
}
