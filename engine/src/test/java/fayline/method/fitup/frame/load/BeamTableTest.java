package fayline.method.fitup.frame.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.frame.Beam;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodeFreedom;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The beam tables, by case F28 and by their formulas. */
class BeamTableTest {
    @Test
    void should_hold_when_computed() {
        FitCase c = FitCase.read("checks/fitup/F28-beam-tables");
        FitCase.Node in = c.inputs();
        BeamTableResult r = BeamTableCalculator.calculate(new BeamTable(
                in.number("E"), in.number("A"), in.number("I"), in.number("length"), in.number("force"), (int)
                        in.number("elements")));
        FitCase.Node wanted = c.expected();
        c.holds("deflection", wanted.get("cantileverTip"), r.cantileverTipMm());
        c.holds("rotationRad", wanted.get("cantileverTip"), r.cantileverTipRad());
        c.holds("deflection", wanted.get("simplySupportedCentre"), r.simplySupportedCentreMm());
        c.holds("deflection", wanted.get("fixedFixedCentre"), r.fixedFixedCentreMm());
        c.holds("deflection", wanted.get("proppedCentre"), r.proppedCentreMm());
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 50, 400})
    void should_follow_the_formulas_when_cut_into_any_number_of_pieces(int elements) {
        double ei = 12_000 * 3_000.0;
        double pl3 = -40 * Math.pow(650, 3);
        BeamTableResult r = BeamTableCalculator.calculate(new BeamTable(12_000, 150, 3_000, 650, -40, elements));
        double near = 1e-6;
        assertEquals(pl3 / (3 * ei), r.cantileverTipMm(), near * Math.abs(r.cantileverTipMm()));
        assertEquals(-40 * 650.0 * 650 / (2 * ei), r.cantileverTipRad(), near);
        assertEquals(pl3 / (48 * ei), r.simplySupportedCentreMm(), near);
        assertEquals(pl3 / (192 * ei), r.fixedFixedCentreMm(), near);
        assertEquals(7 * pl3 / (768 * ei), r.proppedCentreMm(), near);
    }

    @Test
    void should_refuse_when_the_middle_is_no_node() {
        assertThrows(IllegalArgumentException.class, () -> new BeamTable(1, 1, 1, 1, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> new BeamTable(1, 1, 1, 0, 1, 2));
    }

    @Test
    void should_twist_and_bend_both_ways_when_a_cantilever_in_space_is_loaded() {
        BeamSection s = BeamSection.entered(50_000, 18_000, 300, 4_000, 9_000, 7_000);
        Frame frame =
                Frame.inSpace(List.of(new FramePoint(0, 0, 0), new FramePoint(0, 400, 0)), List.of(Beam.of(0, 1, s)));
        List<NodeFreedom> fast = List.of(Freedom.values()).stream()
                .map(f -> new NodeFreedom(0, f))
                .toList();
        FrameResult r = FrameCalculator.calculate(new FrameCase(
                frame,
                fast,
                List.of(
                        new FrameLoad(new NodeFreedom(1, Freedom.UZ), 10),
                        new FrameLoad(new NodeFreedom(1, Freedom.UX), 10),
                        new FrameLoad(new NodeFreedom(1, Freedom.RY), 500))));
        double l3 = Math.pow(400, 3);
        // Along z the beam bends in its x-z plane, Iy; across in the plane of the frame, Iz.
        assertEquals(
                10 * l3 / (3 * 50_000 * 4_000.0), r.motion().orElseThrow().at(1).uz(), 1e-9);
        assertEquals(
                10 * l3 / (3 * 50_000 * 9_000.0), r.motion().orElseThrow().at(1).ux(), 1e-9);
        assertEquals(
                500 * 400 / (18_000 * 7_000.0), r.motion().orElseThrow().at(1).ry(), 1e-12);
        assertEquals(-10, r.reactions().orElseThrow().at(0).uz(), 1e-9);
        assertEquals(-4_000, r.reactions().orElseThrow().at(0).rx(), 1e-6);
    }

    @Test
    void should_say_mechanism_when_nothing_holds_the_frame() {
        Frame frame = Frame.inPlane(
                List.of(FramePoint.of(0, 0), FramePoint.of(9, 0)), List.of(Beam.of(0, 1, BeamSection.plane(1, 1, 1))));
        FrameResult r = FrameCalculator.calculate(new FrameCase(frame, List.of(), List.of()));
        assertTrue(r.motion().isEmpty());
        assertEquals(3, r.findings().size());
        assertTrue(r.findings().get(0).sentence().startsWith("MECHANISM"));
    }
}
