package fayline.method.laminate.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.RandomStream;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.Plies;
import fayline.method.laminate.Ply;
import fayline.method.laminate.PlyStress;
import fayline.method.laminate.SectionLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What every criterion keeps, whatever stack and load: drawn at random with a seed. */
class StrengthPropertiesTest {
    /** AS4/3501-6, the 1998 failure exercise, recalled. */
    private static final PlyStrength AS4 = PlyStrength.of(1950e6, 1480e6, 48e6, 200e6, 79e6);

    private static final List<Criterion> ALL = List.of(
            Criterion.maxStress(),
            Criterion.maxStrain(),
            Criterion.tsaiHill(),
            Criterion.tsaiWu(-0.5),
            Criterion.tsaiWu(0),
            Criterion.hashin());

    private static List<StrongPly> stack(double... angles) {
        List<StrongPly> plies = new ArrayList<>();
        for (double a : angles) {
            plies.add(StrongPly.of(new Ply(Plies.AS4, 0.125e-3, a), AS4));
        }
        return plies;
    }

    private static List<SectionLoad> loads() {
        RandomStream chance = new RandomStream(3, 0);
        List<SectionLoad> all = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            all.add(new SectionLoad(
                    2e5 * (chance.nextUnit() - 0.5),
                    2e5 * (chance.nextUnit() - 0.5),
                    2e5 * (chance.nextUnit() - 0.5),
                    10 * (chance.nextUnit() - 0.5),
                    10 * (chance.nextUnit() - 0.5),
                    10 * (chance.nextUnit() - 0.5),
                    i % 2 == 0 ? 0 : -40 - 60 * chance.nextUnit()));
        }
        return all;
    }

    private static PlyStress at(Laminate l, SectionLoad load, int ply, int face, double ratio) {
        double change = load.temperatureChangeK();
        return l.stress(ply, face, l.strain(load))
                .times(ratio)
                .plus(l.residual(ply, face, l.expansionPerK().times(change), change));
    }

    @Test
    void should_meet_the_criterion_at_the_ratio_and_nowhere_below_it() {
        List<StrongPly> plies = stack(0, 45, -45, 90, 30, 0);
        for (SectionLoad load : loads()) {
            for (Criterion c : ALL) {
                FirstPlyResult r = FirstPlyCalculator.calculate(new Strength(plies, load, c));
                PlyFailure first = r.first().orElseThrow();
                double there = c.index(
                        Plies.AS4, AS4, at(r.laminate(), load, first.ply(), first.face(), first.ratio() * (1 + 1e-9)));
                assertThat(there).as(c.name()).isGreaterThanOrEqualTo(1 - 1e-6);
                for (int k = 0; k < plies.size(); k++) {
                    for (int face = 0; face < 2; face++) {
                        for (double share : new double[] {0, 0.3, 0.7, 0.999}) {
                            PlyStress s = at(r.laminate(), load, k, face, share * first.ratio());
                            assertThat(c.index(Plies.AS4, AS4, s)).as(c.name()).isLessThan(1);
                        }
                    }
                }
            }
        }
    }

    @Test
    void should_halve_the_ratio_when_the_load_is_doubled_and_nothing_is_left_by_temperature() {
        List<StrongPly> plies = stack(0, 60, -60);
        for (Criterion c : ALL) {
            double one = ratio(plies, new SectionLoad(1e5, -3e4, 2e4, 1, 0, 0, 0), c);
            double two = ratio(plies, new SectionLoad(2e5, -6e4, 4e4, 2, 0, 0, 0), c);
            assertThat(two).as(c.name()).isCloseTo(one / 2, within(1e-12 * one));
        }
    }

    private static double ratio(List<StrongPly> plies, SectionLoad load, Criterion c) {
        return FirstPlyCalculator.calculate(new Strength(plies, load, c))
                .first()
                .orElseThrow()
                .ratio();
    }

    @Test
    void should_bear_less_when_cooling_has_pulled_the_plies_across() {
        SectionLoad pull = SectionLoad.inPlane(1e5, 0, 0);
        for (Criterion c : List.of(Criterion.maxStress(), Criterion.hashin())) {
            assertThat(ratio(stack(0, 90, 90, 0), pull.at(-100), c))
                    .as(c.name())
                    .isLessThan(ratio(stack(0, 90, 90, 0), pull, c));
        }
        // Cooled so far that the resin is pulled apart before anything is loaded.
        assertThat(ratio(stack(0, 90, 90, 0), pull.at(-400), Criterion.maxStress()))
                .isZero();
    }

    @Test
    void should_end_with_the_first_ply_when_all_run_one_way_off_the_load() {
        Strength q = new Strength(stack(30, 30), SectionLoad.inPlane(1e5, 0, 0), Criterion.maxStress());
        LastPlyResult r = LastPlyCalculator.calculate(q, LastPlyCalculator.USUAL_SHARE);
        assertThat(r.allFibresGone()).isTrue();
        assertThat(r.lastRatio()).isCloseTo(ratio(q.plies(), q.load(), q.criterion()), within(0.02 * r.lastRatio()));
    }

    @Test
    void should_go_on_to_the_fibres_when_a_cross_ply_is_pulled() {
        Strength q = new Strength(stack(0, 90, 90, 0), SectionLoad.inPlane(1e5, 0, 0), Criterion.maxStress());
        LastPlyResult r = LastPlyCalculator.calculate(q, LastPlyCalculator.USUAL_SHARE);
        assertThat(r.steps().get(0).mode()).isEqualTo("transverse tension");
        assertThat(r.steps().get(0).ply()).isEqualTo(1);
        // Two plies of four carry nearly all: 1950 MPa on half the thickness of 0.5 mm is 4.9 times 100 N/mm.
        assertThat(r.lastRatio()).isBetween(4.875, 4.875 * 1.03);
        assertThat(r.steps()).extracting(PlyFailure::ratio).isSortedAccordingTo(Double::compare);
    }

    @Test
    void should_be_the_same_all_round_when_directions_are_evenly_spread() {
        List<PolarPoint> round = PolarCalculator.calculate(stack(0, 60, -60, -60, 60, 0), Optional.empty(), 0, 15);
        assertThat(round).hasSize(24);
        double e = round.get(0).modulusPa();
        assertThat(round).allSatisfy(p -> assertThat(p.modulusPa()).isCloseTo(e, within(1e-10 * e)));
        List<PolarPoint> strong =
                PolarCalculator.calculate(stack(0, 90, 90, 0), Optional.of(Criterion.tsaiWu(-0.5)), -60, 45);
        assertThat(strong.get(0).tensionPa().getAsDouble())
                .isCloseTo(strong.get(2).tensionPa().getAsDouble(), within(1.0));
        assertThat(strong.get(1).tensionPa().getAsDouble())
                .isLessThan(strong.get(0).tensionPa().getAsDouble());
    }

    @Test
    void should_refuse_what_no_strength_can_be() {
        assertThatThrownBy(() -> PlyStrength.of(1950e6, 1480e6, 0, 200e6, 79e6)).hasMessageContaining("YT");
        assertThatThrownBy(() -> Criterion.tsaiWu(-1)).hasMessageContaining("F12*");
        assertThat(Criterion.tsaiWu(-0.999).name()).contains("-0.999");
        assertThatThrownBy(() -> LastPlyCalculator.calculate(
                        new Strength(stack(0), SectionLoad.inPlane(1, 0, 0), Criterion.hashin()), 1))
                .hasMessageContaining("share");
        assertThatThrownBy(() -> new Strength(
                        List.of(new StrongPly(new Ply(Plies.AS4, 1e-3, 0), Optional.empty(), Optional.empty())),
                        SectionLoad.NONE,
                        Criterion.hashin()))
                .hasMessageContaining("strengths");
    }
}
