package fayline.method.fitup.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sections, what is refused, and motions that nothing resists. */
class FrameTest {
    private static final BeamSection BAR = BeamSection.rectangle(47_000, 16_500, 26, 15);

    /** Saint-Venant's series for a rectangle, long side 2a, short side 2b: an independent figure. */
    private static double series(double longSide, double shortSide) {
        double sum = 0;
        for (int n = 1; n < 200; n += 2) {
            sum += Math.tanh(n * Math.PI * longSide / (2 * shortSide)) / Math.pow(n, 5);
        }
        return longSide * Math.pow(shortSide, 3) / 3 * (1 - 192 / Math.pow(Math.PI, 5) * shortSide / longSide * sum);
    }

    @ParameterizedTest
    @CsvSource({"26, 15", "20, 20", "60, 4", "15, 26"})
    void should_twist_as_by_the_series_within_half_a_percent_when_a_rectangle(double y, double z) {
        double wanted = series(Math.max(y, z), Math.min(y, z));
        assertEquals(wanted, BeamSection.rectangle(1, 1, y, z).jMm4(), 0.005 * wanted);
    }

    @Test
    void should_have_the_figures_of_the_hatch_case_when_26_by_15() {
        assertEquals(390, BAR.areaMm2(), 1e-9);
        assertEquals(7312.5, BAR.iyMm4(), 1e-9);
        assertEquals(21970, BAR.izMm4(), 1e-9);
        assertEquals(18716.8965, BAR.jMm4(), 1e-4);
    }

    @Test
    void should_agree_with_the_solid_section_when_a_tube_or_box_has_hardly_a_hole() {
        BeamSection tube = BeamSection.tube(70_000, 26_000, 20, 10);
        assertEquals(Math.PI * 100, tube.areaMm2(), 1e-9);
        assertEquals(Math.PI * 1e4 / 4, tube.iyMm4(), 1e-9);
        BeamSection box = BeamSection.box(70_000, 26_000, 30, 20, 1);
        assertEquals(30 * 20 - 28 * 18, box.areaMm2(), 1e-9);
        assertEquals((30 * 8000 - 28 * 5832) / 12.0, box.iyMm4(), 1e-9);
        // Bredt: 4 (29 × 19)² · 1 / (2 (29 + 19)).
        assertEquals(4.0 * 551 * 551 / 96, box.jMm4(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> BeamSection.tube(1, 1, 20, 10.1));
        assertThrows(IllegalArgumentException.class, () -> BeamSection.box(1, 1, 20, 20, 10));
        assertThrows(IllegalArgumentException.class, () -> BeamSection.plane(0, 1, 1));
    }

    @Test
    void should_refuse_when_a_beam_runs_along_its_reference() {
        List<FramePoint> nodes = List.of(new FramePoint(0, 0, 0), new FramePoint(0, 0, 100));
        assertThrows(IllegalArgumentException.class, () -> Frame.inSpace(nodes, List.of(Beam.of(0, 1, BAR))));
        assertEquals(
                1,
                Frame.inSpace(nodes, List.of(new Beam(0, 1, BAR, Axis.X)))
                        .beams()
                        .size());
    }

    @Test
    void should_refuse_when_a_beam_has_no_length_or_leaves_the_plane_or_names_no_node() {
        List<FramePoint> same = List.of(FramePoint.of(1, 1), FramePoint.of(1, 1));
        assertThrows(IllegalArgumentException.class, () -> Frame.inPlane(same, List.of(Beam.of(0, 1, BAR))));
        List<FramePoint> high = List.of(FramePoint.of(0, 0), new FramePoint(1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> Frame.inPlane(high, List.of(Beam.of(0, 1, BAR))));
        assertThrows(IllegalArgumentException.class, () -> Frame.inSpace(high, List.of(Beam.of(0, 2, BAR))));
        assertThrows(IllegalArgumentException.class, () -> Beam.of(1, 1, BAR));
    }

    @Test
    void should_show_three_motions_when_a_plane_frame_lies_loose() {
        List<String> words = mechanism(chain(true, 150), List.of()).words();
        assertEquals(3, words.size());
        assertTrue(words.contains("it slides as a whole along x"), words.toString());
        assertTrue(words.contains("it slides as a whole along y"), words.toString());
        assertTrue(words.get(2).startsWith("it turns about z"), words.toString());
    }

    @Test
    void should_show_six_motions_when_a_frame_in_space_lies_loose() {
        assertEquals(6, mechanism(chain(false, 20), List.of()).motions().size());
    }

    @Test
    void should_show_the_swing_when_a_frame_hangs_on_one_pin() {
        Mechanism m = mechanism(chain(true, 150), List.of(at(0, Freedom.UX), at(0, Freedom.UY)));
        assertEquals(1, m.motions().size());
        NodalField swing = m.motions().get(0);
        assertEquals(1, swing.farthestShiftMm(), 1e-9);
        assertEquals(0.5, Math.abs(swing.at(75).uy()), 1e-6);
        assertTrue(
                m.words().get(0).startsWith("it turns about z; node 150 goes 1.00 along y"),
                m.words().toString());
    }

    @Test
    void should_stand_when_a_long_chain_is_held_at_one_end_only() {
        List<NodeFreedom> fast = List.of(at(0, Freedom.UX), at(0, Freedom.UY), at(0, Freedom.RZ));
        assertTrue(FrameStiffness.of(chain(true, 400)).held(fast).mechanism().isEmpty());
    }

    @Test
    void should_refuse_when_a_support_holds_what_does_not_move() {
        FrameStiffness k = FrameStiffness.of(chain(true, 3));
        assertThrows(IllegalArgumentException.class, () -> k.held(List.of(at(1, Freedom.UZ))));
        assertThrows(IllegalArgumentException.class, () -> k.held(List.of(at(9, Freedom.UX))));
    }

    private static Mechanism mechanism(Frame frame, List<NodeFreedom> supports) {
        return FrameStiffness.of(frame).held(supports).mechanism().orElseThrow();
    }

    private static NodeFreedom at(int node, Freedom freedom) {
        return new NodeFreedom(node, freedom);
    }

    private static Frame chain(boolean plane, int beams) {
        List<FramePoint> nodes = new ArrayList<>();
        for (int n = 0; n <= beams; n++) {
            nodes.add(plane ? FramePoint.of(10.0 * n, 0) : new FramePoint(10.0 * n, 3 * n % 7, n % 5));
        }
        return new Frame(
                nodes,
                IntStream.range(0, beams).mapToObj(n -> Beam.of(n, n + 1, BAR)).toList(),
                plane);
    }
}
