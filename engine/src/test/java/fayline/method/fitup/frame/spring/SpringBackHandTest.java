package fayline.method.fitup.frame.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Severity;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Beam;
import fayline.method.fitup.frame.BeamSection;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.bond.BondForce;
import fayline.method.fitup.frame.bond.BondSpring;
import fayline.method.fitup.frame.bond.Clearance;
import fayline.method.fitup.frame.pin.LatchPin;
import fayline.method.fitup.frame.pin.PinCalculator;
import fayline.method.fitup.frame.pin.PinPlace;
import fayline.method.fitup.frame.pin.PinShift;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two cantilevers whose tips are joined: every figure here is a line by hand. */
class SpringBackHandTest {
    private static final double LENGTH = 300;
    private static final double E = 45_000;
    private static final List<FramePoint> NODES =
            List.of(FramePoint.of(0, 10), FramePoint.of(LENGTH, 10), FramePoint.of(0, 0), FramePoint.of(LENGTH, 0));
    private static final NodeFreedom TIP = new NodeFreedom(1, Freedom.UY);
    private static final NodeFreedom OTHER_TIP = new NodeFreedom(3, Freedom.UY);

    private static double tip(double i) {
        return 3 * E * i / (LENGTH * LENGTH * LENGTH);
    }

    private static List<NodeFreedom> fast(int node) {
        return List.of(
                new NodeFreedom(node, Freedom.UX),
                new NodeFreedom(node, Freedom.UY),
                new NodeFreedom(node, Freedom.RZ));
    }

    private static Frame beam(int i, int j, BeamSection section) {
        return Frame.inPlane(NODES, List.of(Beam.of(i, j, section)));
    }

    private static SpringBack tips(BeamSection part, BeamSection structure, double bond, Clamp clamp) {
        return SpringBack.of(
                beam(0, 1, part),
                beam(2, 3, structure),
                List.of(BondSpring.inPlane(1, 3, 0, bond, 0)),
                fast(0),
                List.of(fast(0), fast(2)).stream().flatMap(List::stream).toList(),
                List.of(clamp),
                List.of(new Watch("part tip", TIP), new Watch("structure tip", OTHER_TIP)));
    }

    private static SpringBack tips(double iPart, double iStructure, double bond, double v) {
        return tips(
                BeamSection.plane(E, 300, iPart),
                BeamSection.plane(E, 300, iStructure),
                bond,
                Clamp.toNominal("C", TIP, v));
    }

    private static SpringBackShape shape(SpringBack q) {
        return SpringBackCalculator.calculate(q).shape().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({"2500, 2500, 0.5", "2500, 5000, 0.333333333", "20000, 2500, 0.888888889"})
    void should_spring_back_by_the_share_of_stiffness_when_the_bond_is_hard(double i1, double i2, double share) {
        SpringBackShape s = shape(tips(i1, i2, 1e9, 1.8));
        assertEquals(share * 1.8, s.watched().get(0).shiftMm(), 1e-6);
        assertEquals(share * 1.8, s.watched().get(1).shiftMm(), 1e-6);
        assertEquals(-1.8 * tip(i1), s.clampForces().get(0).forceN(), 1e-6);
    }

    @Test
    void should_go_back_farther_when_the_bond_is_soft_in_series() {
        double k1 = tip(2500);
        double k2 = tip(4000);
        double kb = 9;
        double effective = 1 / (1 / k2 + 1 / kb);
        SpringBackShape s = shape(tips(2500, 4000, kb, 2));
        double part = 2 * k1 / (k1 + effective);
        double load = k1 * (2 - part);
        assertEquals(part, s.watched().get(0).shiftMm(), 1e-9);
        assertEquals(load / k2, s.watched().get(1).shiftMm(), 1e-9);
        BondForce bond = s.bonds().get(0);
        assertEquals(load, bond.force().uy(), 1e-9);
        assertEquals(load / kb, bond.openingMm().orElseThrow(), 1e-9);
        assertEquals(load / (LENGTH / 2), bond.peelNPerMm().orElseThrow(), 1e-9);
    }

    @Test
    void should_add_the_position_when_a_clamp_holds_the_part_off_nominal() {
        // Free 2.0 up, held 0.5 up: pulled by 1.5, of which half comes back, from 0.5 on.
        SpringBackShape s = shape(tips(
                BeamSection.plane(E, 300, 2500),
                BeamSection.plane(E, 300, 2500),
                1e9,
                new Clamp("C", TIP, 2.0, 0.5, Clamp.Way.BOTH)));
        assertEquals(-1.5 * tip(2500), s.clampForces().get(0).forceN(), 1e-9);
        assertEquals(0.5 + 0.75, s.watched().get(0).shiftMm(), 1e-6);
        assertEquals(0.75, s.watched().get(1).shiftMm(), 1e-6);
        assertEquals(0.5, s.clamped().get(TIP), 1e-9);
    }

    @Test
    void should_stay_at_nothing_when_the_clamp_is_also_a_support_of_the_assembly() {
        SpringBack q = tips(2500, 2500, 1e9, 1.0);
        List<NodeFreedom> more = new java.util.ArrayList<>(q.assemblySupports());
        more.add(TIP);
        SpringBackShape s = shape(
                SpringBack.of(q.part(), q.structure(), q.bonds(), q.partSupports(), more, q.clamps(), q.watches()));
        assertEquals(0, s.watched().get(0).shiftMm(), 0);
        assertEquals(-12.5, s.supportForces().get(TIP), 1e-5);
    }

    @Test
    void should_bend_as_by_hand_when_the_depth_is_known() {
        // Strip 12 wide, 5 deep (along y): M = F L, strain = M c/(E I).
        BeamSection strip = BeamSection.rectangle(E, 1, 5, 12);
        SpringBackShape s = shape(tips(strip, strip, 1e9, Clamp.toNominal("C", TIP, 40)));
        double hand = 3 * 40 * 2.5 / (LENGTH * LENGTH);
        assertEquals(hand, s.bendingClamped().orElseThrow().strain(), 1e-9);
        assertEquals(hand / 2, s.bendingReleased().orElseThrow().strain(), 1e-7);
    }

    @Test
    void should_say_do_not_pull_it_in_when_force_or_strain_is_beyond_the_limit() {
        BeamSection strip = BeamSection.rectangle(E, 1, 20, 30);
        SpringBackResult r = SpringBackCalculator.calculate(tips(strip, strip, 1e9, Clamp.toNominal("C", TIP, 9)));
        assertTrue(r.shape().orElseThrow().clampForces().get(0).beyondHand());
        assertEquals(
                2,
                r.findings().stream()
                        .filter(f -> f.sentence().contains("do not pull it in; correct the part"))
                        .count());
        assertTrue(SpringBackCalculator.calculate(tips(2500, 2500, 1e7, 1)).findings().stream()
                .noneMatch(f -> f.sentence().contains("do not pull")));
    }

    @Test
    void should_say_wrong_way_when_a_clamp_can_only_push_against_what_it_must_pull() {
        SpringBackResult r = SpringBackCalculator.calculate(tips(
                BeamSection.plane(E, 300, 2500),
                BeamSection.plane(E, 300, 2500),
                1e7,
                new Clamp("C", TIP, 1, 0, Clamp.Way.ALONG_ONLY)));
        assertTrue(r.shape().orElseThrow().clampForces().get(0).wrongWay());
        assertEquals(Severity.STOP, r.findings().get(0).severity());
        assertFalse(shape(tips(
                        BeamSection.plane(E, 300, 2500),
                        BeamSection.plane(E, 300, 2500),
                        1e7,
                        new Clamp("C", TIP, 1, 0, Clamp.Way.AGAINST_ONLY)))
                .clampForces()
                .get(0)
                .wrongWay());
    }

    @Test
    void should_flag_opening_overlap_and_creep_when_they_come_about() {
        BeamSection beam = BeamSection.plane(E, 300, 2500);
        Frame part = beam(0, 1, beam);
        BondSpring film = BondSpring.ofFilm(1, 3, 100, 0.3, 0, 1.5, Axis.Y);
        assertEquals(500, film.kyNPerMm(), 1e-9);
        assertEquals(0, film.kxNPerMm(), 1e-9);
        SpringBack up = tips(2500, 2500, 1, 1);
        SpringBack sprung = SpringBack.of(
                        part,
                        up.structure(),
                        List.of(BondSpring.ofFilm(1, 3, 100, 0.3, 0, 0.015, Axis.Y)),
                        up.partSupports(),
                        up.assemblySupports(),
                        List.of(Clamp.toNominal("C", TIP, -2)),
                        up.watches())
                .withBondLine(Axis.Y, List.of(new Clearance("edge", 1, 3, Axis.Y, 0.4)), true);
        List<String> said = SpringBackCalculator.calculate(sprung).findings().stream()
                .map(f -> f.sentence())
                .toList();
        // Part tip −2 of 12.5 N/mm against 12.5 and 5 in series: −1.556; structure −0.444; closed by 1.111.
        assertTrue(
                said.stream().anyMatch(t -> t.contains("close by 1.11 mm, more than its thickness")), said.toString());
        assertTrue(
                said.stream().anyMatch(t -> t.contains("Gap edge of 0.40 mm would close to -0.71 mm")),
                said.toString());
        assertTrue(said.stream().anyMatch(t -> t.startsWith("Acrylic creeps")), said.toString());
        SpringBackResult opened = SpringBackCalculator.calculate(tips(2500, 2500, 5, 2));
        assertTrue(opened.findings().stream().anyMatch(f -> f.sentence().contains("pulled open by 1.11 mm")));
    }

    @Test
    void should_show_the_mode_when_the_part_hangs_loose() {
        SpringBack q = tips(2500, 2500, 1e6, 1);
        SpringBackResult r = SpringBackCalculator.calculate(SpringBack.of(
                q.part(),
                q.structure(),
                q.bonds(),
                List.of(new NodeFreedom(0, Freedom.UX), new NodeFreedom(0, Freedom.UY)),
                q.assemblySupports(),
                q.clamps(),
                q.watches()));
        assertEquals(SpringBackResult.Status.MECHANISM, r.status());
        assertTrue(r.shape().isEmpty());
        assertEquals(1, Math.abs(r.mechanism().orElseThrow().motions().get(0).get(TIP)), 1e-9);
        assertTrue(r.findings().get(0).sentence().startsWith("MECHANISM: nothing holds the part in its fixture"));
    }

    @Test
    void should_refuse_when_two_clamps_hold_one_spot_or_one_pulls_at_a_support() {
        SpringBack q = tips(2500, 2500, 1e6, 1);
        SpringBackResult twice = SpringBackCalculator.calculate(
                q.withClamps(List.of(Clamp.toNominal("A", TIP, 1), Clamp.toNominal("B", TIP, 1.2))));
        assertEquals(SpringBackResult.Status.CLAMPS_NOT_INDEPENDENT, twice.status());
        assertTrue(twice.findings().get(0).sentence().startsWith("Clamps A and B"));
        SpringBackResult fixed = SpringBackCalculator.calculate(
                q.withClamps(List.of(Clamp.toNominal("A", new NodeFreedom(0, Freedom.UY), 1))));
        assertEquals(SpringBackResult.Status.CLAMP_ON_SUPPORT, fixed.status());
        assertThrows(IllegalArgumentException.class, () -> q.withClamps(List.of()));
        assertThrows(IllegalArgumentException.class, () -> q.withClamps(List.of(Clamp.toNominal("A", OTHER_TIP, 1))));
    }

    @Test
    void should_warn_when_two_clamps_are_close_and_not_when_they_are_apart() {
        assertTrue(closeness(299.9).stream().anyMatch(t -> t.contains("nearly the same motion")));
        assertTrue(closeness(150).stream().noneMatch(t -> t.contains("nearly the same motion")));
    }

    private static List<String> closeness(double x) {
        BeamSection beam = BeamSection.plane(E, 300, 2500);
        List<FramePoint> nodes = List.of(FramePoint.of(0, 0), FramePoint.of(x, 0), FramePoint.of(300, 0));
        Frame part = Frame.inPlane(nodes, List.of(Beam.of(0, 1, beam), Beam.of(1, 2, beam)));
        return SpringBackCalculator.calculate(SpringBack.of(
                        part,
                        Frame.inPlane(nodes, List.of(Beam.of(1, 2, beam))),
                        List.of(),
                        fast(0),
                        fast(0),
                        List.of(
                                Clamp.toNominal("A", new NodeFreedom(1, Freedom.UY), 0.5),
                                Clamp.toNominal("B", new NodeFreedom(2, Freedom.UY), 1)),
                        List.of()))
                .findings()
                .stream()
                .map(f -> f.sentence())
                .toList();
    }

    @Test
    void should_take_the_difference_of_both_motions_when_the_striker_moves_too() {
        SpringBackShape s = shape(tips(2500, 2500, 10, 2));
        double part = s.watched().get(0).shiftMm();
        double other = s.watched().get(1).shiftMm();
        PinPlace place = new PinPlace(1, new FramePoint(0, 0, 0), true);
        PinPlace striker = new PinPlace(3, new FramePoint(0, 0, 0), false);
        PinShift alone = pin(new LatchPin("P", place, Axis.X, 0.9, Optional.empty()), s);
        PinShift both = pin(new LatchPin("P", place, Axis.X, 0.9, Optional.of(striker)), s);
        assertEquals(part, alone.lateralMm(), 1e-9);
        assertTrue(alone.binds());
        assertEquals(part - other, both.lateralMm(), 1e-9);
        assertEquals(0.9 - (part - other), both.clearanceLeftMm(), 1e-9);
        assertEquals(
                0, pin(new LatchPin("P", place, Axis.Y, 0, Optional.empty()), s).lateralMm(), 1e-12);
    }

    @Test
    void should_swing_with_the_arm_when_the_pin_sits_off_the_node() {
        SpringBackShape s = shape(tips(2500, 2500, 10, 2));
        double turn = s.part().get(new NodeFreedom(1, Freedom.RZ));
        PinShift pin =
                pin(new LatchPin("P", new PinPlace(1, new FramePoint(20, 5, 0), true), Axis.Z, 9, Optional.empty()), s);
        assertEquals(-5 * turn, pin.displacement().xMm(), 1e-12);
        assertEquals(
                s.watched().get(0).shiftMm() + 20 * turn, pin.displacement().yMm(), 1e-12);
        assertEquals(0, pin.tiltRad(), 1e-15);
    }

    private static PinShift pin(LatchPin pin, SpringBackShape s) {
        return PinCalculator.calculate(List.of(pin), s, Optional.empty()).pins().get(0);
    }
}
