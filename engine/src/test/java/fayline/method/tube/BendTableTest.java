package fayline.method.tube;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.RandomStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a bend table keeps of its route; the printed rows stand in the tables of the shop, tube.csv. */
class BendTableTest {
    private static final double RADIUS_M = 0.025;

    private static TubeRoute route(double least, double... mm) {
        List<RoutePoint> points = new ArrayList<>();
        for (int i = 0; i < mm.length; i += 3) {
            points.add(new RoutePoint(mm[i] / 1e3, mm[i + 1] / 1e3, mm[i + 2] / 1e3));
        }
        return new TubeRoute(points, RADIUS_M, least);
    }

    /** A route that begins as one drawn from a table does: from the origin along x, the first bend towards y. */
    private static TubeRoute random(RandomStream random) {
        List<RoutePoint> points = new ArrayList<>(List.of(RoutePoint.ORIGIN));
        RoutePoint along = new RoutePoint(1, 0, 0);
        RoutePoint normal = new RoutePoint(0, 0, 1);
        RoutePoint at = RoutePoint.ORIGIN;
        int bends = 1 + (int) (random.nextUnit() * 6);
        for (int i = 0; i <= bends; i++) {
            at = at.plus(along, 0.35 + random.nextUnit());
            points.add(at);
            if (i > 0) {
                normal = normal.turned(along, Math.PI * (2 * random.nextUnit() - 1));
            }
            along = along.turned(normal, Math.toRadians(3 + 155 * random.nextUnit()))
                    .unit();
        }
        return new TubeRoute(points, RADIUS_M, 0.01);
    }

    @Test
    void should_give_the_route_again_when_its_table_is_drawn() {
        RandomStream random = new RandomStream(41, 0);
        for (int run = 0; run < 300; run++) {
            TubeRoute route = random(random);
            BendTable table = BendTableCalculator.calculate(route).table().orElseThrow();
            List<RoutePoint> again = BendTableCalculator.points(table);
            assertThat(again).hasSameSizeAs(route.points());
            for (int i = 0; i < again.size(); i++) {
                assertThat(again.get(i).to(route.points().get(i))).isLessThan(1e-9);
            }
        }
    }

    @Test
    void should_keep_every_length_and_turn_every_rotation_when_the_other_hand_is_made() {
        RandomStream random = new RandomStream(42, 0);
        for (int run = 0; run < 200; run++) {
            TubeRoute route = random(random);
            BendTable own = BendTableCalculator.calculate(route).table().orElseThrow();
            BendTable other =
                    BendTableCalculator.calculate(route.mirrored()).table().orElseThrow();
            BendTable told = own.mirrored();
            assertThat(other.developedM()).isCloseTo(own.developedM(), within(1e-12));
            for (int i = 0; i < own.bends(); i++) {
                assertThat(other.anglesRad().get(i)).isCloseTo(own.anglesRad().get(i), within(1e-9));
                assertThat(other.rotationsRad().get(i))
                        .isCloseTo(told.rotationsRad().get(i), within(1e-9));
            }
        }
    }

    @Test
    void should_be_the_same_line_when_it_is_bent_from_its_other_end() {
        RandomStream random = new RandomStream(43, 0);
        for (int run = 0; run < 200; run++) {
            TubeRoute route = random(random);
            BendTable own = BendTableCalculator.calculate(route).table().orElseThrow();
            List<RoutePoint> back = new ArrayList<>(route.points());
            java.util.Collections.reverse(back);
            BendTable other = BendTableCalculator.calculate(new TubeRoute(back, RADIUS_M, 0))
                    .table()
                    .orElseThrow();
            BendTable told = own.fromOtherEnd();
            for (int i = 0; i < own.bends(); i++) {
                assertThat(other.straightsM().get(i))
                        .isCloseTo(told.straightsM().get(i), within(1e-9));
                assertThat(other.anglesRad().get(i)).isCloseTo(told.anglesRad().get(i), within(1e-9));
                assertThat(other.rotationsRad().get(i))
                        .isCloseTo(told.rotationsRad().get(i), within(1e-8));
            }
            assertThat(told.fromOtherEnd()).isEqualTo(own);
        }
    }

    @Test
    void should_name_leg_and_shortfall_when_a_straight_is_too_short_for_the_bender() {
        BentTube touching = BendTableCalculator.calculate(route(0, 0, 0, 0, 100, 0, 0, 100, 50, 0, 200, 50, 0));
        assertThat(touching.isFeasible()).isTrue();
        BentTube held = BendTableCalculator.calculate(route(0.012, 0, 0, 0, 100, 0, 0, 100, 50, 0, 200, 50, 0));
        assertThat(held.isFeasible()).isFalse();
        assertThat(held.shortM()).isCloseTo(0.012, within(1e-12));
        assertThat(held.findings().get(0).sentence())
                .isEqualTo(
                        "From point 2 to point 3 there are 50.0 mm; the bends at both ends take 50.0 mm of it, and the"
                                + " bender needs 12.0 mm straight between them: 12.0 mm are missing.");
        BentTube end = BendTableCalculator.calculate(route(0.012, 0, 0, 0, 20, 0, 0, 20, 100, 0));
        assertThat(end.findings().get(0).sentence())
                .isEqualTo(
                        "From point 1 to point 2 there are 20.0 mm; the bend takes 25.0 mm of it: 5.0 mm are missing.");
    }

    @Test
    void should_ask_for_two_bends_when_the_line_turns_back() {
        BentTube back = BendTableCalculator.calculate(route(0, 0, 0, 0, 100, 0, 0, 0, 2, 0));
        assertThat(back.table()).isEmpty();
        assertThat(back.findings().get(0).sentence()).contains("at point 2").contains("Make it of two bends");
        assertThat(BendTableCalculator.calculate(route(0, 0, 0, 0, 1000, 0, 0, 8, 100, 0))
                        .table())
                .isPresent();
    }

    @Test
    void should_pass_over_a_point_on_a_straight_and_say_so() {
        BentTube bent = BendTableCalculator.calculate(route(0, 0, 0, 0, 50, 0, 0, 100, 0, 0, 100, 90, 0));
        assertThat(bent.table().orElseThrow().bends()).isEqualTo(1);
        assertThat(bent.findings().get(0).sentence()).contains("Point 2 lies on a straight");
        BentTube straight = BendTableCalculator.calculate(route(0, 0, 0, 0, 50, 0, 0));
        assertThat(straight.table().orElseThrow().straightsM()).containsExactly(0.05);
    }

    @Test
    void should_refuse_what_is_no_route_no_tube_and_no_table() {
        assertThatThrownBy(() -> route(0, 0, 0, 0)).hasMessageContaining("at least two points");
        assertThatThrownBy(() -> route(0, 0, 0, 0, 0, 0, 0)).hasMessageContaining("points 1 and 2 are in one place");
        assertThatThrownBy(() -> route(-1, 0, 0, 0, 1, 0, 0)).hasMessageContaining("shortest straight");
        assertThatThrownBy(() -> new RoutePoint(Double.NaN, 0, 0)).hasMessageContaining("finite");
        assertThatThrownBy(() -> new TubeRoute(List.of(RoutePoint.ORIGIN, new RoutePoint(1, 0, 0)), 0, 0))
                .hasMessageContaining("radius above nought");
        assertThatThrownBy(() -> new BendTable(List.of(1.0), List.of(0.0), List.of(1.0), 0.1))
                .hasMessageContaining("one straight more");
        assertThatThrownBy(() -> new BendTable(List.of(1.0, 1.0), List.of(0.0), List.of(Math.PI), 0.1))
                .hasMessageContaining("make it of two bends");
        assertThatThrownBy(() -> new TubeSection(0.01, 0.005)).hasMessageContaining("less than half its diameter");
        assertThatThrownBy(() -> TubeSection.outerOfNumberM(0)).hasMessageContaining("1 or more");
        assertThatThrownBy(() -> TubeSection.neutralRadiusM(0.03, 0.01, 1.2)).hasMessageContaining("k from 0 to 1");
    }

    @Test
    void should_set_more_than_is_wanted_by_the_line_through_test_bends() {
        Springback s = Springback.of(List.of(
                new TrialBend(Math.toRadians(30), Math.toRadians(28)),
                new TrialBend(Math.toRadians(90), Math.toRadians(86))));
        assertThat(Math.toDegrees(s.setRad(Math.toRadians(86)))).isCloseTo(90, within(1e-9));
        assertThat(Math.toDegrees(s.setRad(Math.toRadians(57)))).isCloseTo(60, within(1e-9));
        assertThat(s.worstRad()).isCloseTo(0, within(1e-12));
        assertThat(s.covers(Math.toRadians(86))).isTrue();
        assertThat(s.covers(Math.toRadians(87))).isFalse();
    }

    @Test
    void should_ask_for_a_trial_piece_when_test_bends_are_too_few_or_say_nothing() {
        TrialBend one = new TrialBend(Math.toRadians(90), Math.toRadians(86));
        assertThatThrownBy(() -> Springback.of(List.of(one))).hasMessageContaining("bend a trial piece first");
        assertThatThrownBy(() -> Springback.of(List.of(one, new TrialBend(Math.toRadians(80), Math.toRadians(76)))))
                .hasMessageContaining("at least 15 deg apart");
        assertThatThrownBy(() -> Springback.of(List.of(one, new TrialBend(Math.toRadians(110), Math.toRadians(80)))))
                .hasMessageContaining("the opposite");
        assertThatThrownBy(() -> new TrialBend(1, 1.1)).hasMessageContaining("springs back");
        assertThatThrownBy(() -> new TrialBend(4, 1)).hasMessageContaining("between 0 and 180");
    }

    @Test
    void should_mark_bends_along_the_tube_and_thin_its_wall_outside() {
        BendTable t = new BendTable(List.of(0.1, 0.05, 0.1), List.of(0.0, 1.0), List.of(1.0, 0.5), RADIUS_M);
        assertThat(t.marksM(RADIUS_M)).containsExactly(0.1, 0.1 + RADIUS_M + 0.05);
        assertThat(t.developedM()).isCloseTo(0.25 + 1.5 * RADIUS_M, within(1e-15));
        TubeSection tube = new TubeSection(0.009525, 0.000889);
        assertThat(tube.outsideWallM(RADIUS_M)).isLessThan(tube.wallM()).isGreaterThan(0.8 * tube.wallM());
        assertThat(tube.usualLeastRadiusM().orElseThrow()).isCloseTo(0.0238125, within(1e-9));
        assertThat(SupportTable.of(0.02)).isEmpty();
        assertThat(SupportTable.HALF.aluminiumSupportsM()).isLessThan(SupportTable.HALF.steelSupportsM());
    }
}
