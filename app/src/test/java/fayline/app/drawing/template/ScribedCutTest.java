package fayline.app.drawing.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.project.design.Hand;
import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.outline.RoundedPolygon;
import fayline.method.fitup.trim.cut.CutLine;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two cuts that meet at the sharp lower aft corner (400, 0) of a 400 by 300 rectangle, worked by hand. */
class ScribedCutTest {
    private static final PartOutline OUTLINE = OutlineCalculator.calculate(new RoundedPolygon(
                    List.of(new Spot(0, 0), new Spot(400, 0), new Spot(400, 300), new Spot(0, 300)),
                    List.of(0.0, 0.0, 0.0, 0.0)))
            .outline()
            .orElseThrow();

    private static Template cut(CutSide side) {
        CutLine lower = new CutLine(
                "lower",
                side,
                List.of(new CutLine.Stop("L1", true, 300, 1, 1), new CutLine.Stop("the corner", false, 400, 1, 1)));
        CutLine aft = new CutLine(
                "aft",
                side,
                List.of(new CutLine.Stop("the corner", false, 400, 1, 1), new CutLine.Stop("A1", true, 500, 1, 1)));
        return Template.of(
                new Template.Heading("Part", "", "", ""), Hand.LEFT, OUTLINE, List.of(aft, lower), List.of());
    }

    private static double nearest(List<Spot> line, double x, double y) {
        return line.stream()
                .mapToDouble(p -> p.distanceMm(new Spot(x, y)))
                .min()
                .orElseThrow();
    }

    @Test
    void should_scribe_one_line_that_turns_inside_the_corner_when_the_part_is_cut() {
        Template t = cut(CutSide.PART);
        assertThat(t.scribes()).hasSize(1);
        assertThat(t.scribes().get(0).edge()).isEqualTo("lower, aft");
        List<Spot> line = t.scribes().get(0).finish();
        assertThat(nearest(line, 300, 1)).isCloseTo(0, within(1e-9));
        assertThat(nearest(line, 399, 1)).isCloseTo(0, within(1e-9));
        assertThat(nearest(line, 399, 100)).isCloseTo(0, within(1e-9));
    }

    @Test
    void should_bring_both_sides_to_their_corner_when_the_neighbour_is_cut() {
        List<Spot> line = cut(CutSide.NEIGHBOUR).scribes().get(0).finish();
        assertThat(nearest(line, 401, -1)).isCloseTo(0, within(1e-9));
        assertThat(nearest(line, 401, 100)).isCloseTo(0, within(1e-9));
    }
}
