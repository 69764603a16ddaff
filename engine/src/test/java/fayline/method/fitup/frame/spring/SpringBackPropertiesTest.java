package fayline.method.fitup.frame.spring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Beam;
import fayline.method.fitup.frame.Frame;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.Freedom;
import fayline.method.fitup.frame.NodalField;
import fayline.method.fitup.frame.NodeFreedom;
import fayline.method.fitup.frame.RandomFrames;
import fayline.method.fitup.frame.StrainEnergy;
import fayline.method.fitup.frame.bond.BondSpring;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every frame: least energy, the same answer however the axes lie, relief that does what it says. */
class SpringBackPropertiesTest {
    private static final List<Freedom> WAYS = List.of(Freedom.values());

    private static SpringBackShape shape(SpringBack question) {
        return SpringBackCalculator.calculate(question).shape().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void should_have_least_energy_when_released(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        SpringBackShape s = shape(q);
        ToDoubleFunction<NodalField> energy = u -> StrainEnergy.of(q.part(), u.minus(s.free()))
                + StrainEnergy.of(q.structure(), u)
                + StrainEnergy.of(q.bonds(), u);
        assertStill(energy, s.structure(), Set.copyOf(q.assemblySupports()));
        Random random = new Random(seed);
        double least = energy.applyAsDouble(s.structure());
        for (int k = 0; k < 20; k++) {
            NodalField other = s.structure();
            for (int n = 0; n < other.nodes(); n++) {
                NodeFreedom at = new NodeFreedom(n, WAYS.get(random.nextInt(WAYS.size())));
                if (!q.assemblySupports().contains(at)) {
                    other = other.with(at, other.get(at) + (random.nextDouble() - 0.5) * 0.01);
                }
            }
            assertTrue(energy.applyAsDouble(other) > least);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void should_be_the_shape_of_least_energy_through_the_deviations_when_free(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        SpringBackShape s = shape(q);
        Set<NodeFreedom> held = new HashSet<>(q.partSupports());
        for (Clamp c : q.clamps()) {
            held.add(c.at());
            assertEquals(c.deviationMm(), s.free().get(c.at()), 1e-9);
        }
        assertStill(u -> StrainEnergy.of(q.part(), u), s.free(), held);
    }

    private static void assertStill(ToDoubleFunction<NodalField> energy, NodalField u, Set<NodeFreedom> held) {
        double h = 1e-3;
        for (int n = 0; n < u.nodes(); n++) {
            for (Freedom f : Freedom.values()) {
                NodeFreedom at = new NodeFreedom(n, f);
                if (!held.contains(at)) {
                    double step = f.isTurn() ? h / 100 : h;
                    double up = energy.applyAsDouble(u.with(at, u.get(at) + step));
                    double down = energy.applyAsDouble(u.with(at, u.get(at) - step));
                    assertEquals(0, (up - down) / (2 * step), f.isTurn() ? 0.05 : 5e-4, at.words());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void should_give_the_same_when_the_axes_are_named_anew(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        SpringBackShape one = shape(q);
        SpringBackShape other = shape(cycled(q));
        for (int j = 0; j < one.clampForces().size(); j++) {
            double f = one.clampForces().get(j).forceN();
            assertEquals(f, other.clampForces().get(j).forceN(), 1e-7 * (1 + Math.abs(f)));
        }
        for (int w = 0; w < one.watched().size(); w++) {
            assertEquals(one.watched().get(w).shiftMm(), other.watched().get(w).shiftMm(), 1e-9);
        }
    }

    /** The same question with x called y, y called z, z called x, and moved to another place. */
    private static SpringBack cycled(SpringBack q) {
        List<FramePoint> nodes = q.part().nodes().stream()
                .map(p -> new FramePoint(p.zMm() + 70, p.xMm() - 900, p.yMm() + 33))
                .toList();
        return SpringBack.of(
                Frame.inSpace(nodes, cycled(q.part().beams())),
                Frame.inSpace(nodes, cycled(q.structure().beams())),
                q.bonds().stream()
                        .map(b -> new BondSpring(
                                b.partNode(),
                                b.structureNode(),
                                b.kzNPerMm(),
                                b.kxNPerMm(),
                                b.kyNPerMm(),
                                b.krNMmPerRad(),
                                b.thicknessMm()))
                        .toList(),
                q.partSupports().stream().map(SpringBackPropertiesTest::cycled).toList(),
                q.assemblySupports().stream()
                        .map(SpringBackPropertiesTest::cycled)
                        .toList(),
                q.clamps().stream()
                        .map(c -> Clamp.toNominal(c.id(), cycled(c.at()), c.deviationMm()))
                        .toList(),
                q.watches().stream().map(w -> Watch.at(cycled(w.at()))).toList());
    }

    private static List<Beam> cycled(List<Beam> beams) {
        return beams.stream()
                .map(b -> new Beam(
                        b.i(),
                        b.j(),
                        b.section(),
                        new Axis(b.zref().z(), b.zref().x(), b.zref().y())))
                .toList();
    }

    private static NodeFreedom cycled(NodeFreedom at) {
        Freedom f = switch (at.freedom()) {
            case UX -> Freedom.UY;
            case UY -> Freedom.UZ;
            case UZ -> Freedom.UX;
            case RX -> Freedom.RY;
            case RY -> Freedom.RZ;
            case RZ -> Freedom.RX;
        };
        return new NodeFreedom(at.node(), f);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23})
    void should_mirror_the_answer_when_the_question_is_mirrored(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        SpringBackShape one = shape(q);
        SpringBackShape other = shape(mirrored(q));
        for (int j = 0; j < one.clampForces().size(); j++) {
            double f =
                    one.clampForces().get(j).forceN() * sign(q.clamps().get(j).at());
            assertEquals(f, other.clampForces().get(j).forceN(), 1e-7 * (1 + Math.abs(f)));
        }
        for (int n = 0; n < one.part().nodes(); n++) {
            for (Freedom f : Freedom.values()) {
                NodeFreedom at = new NodeFreedom(n, f);
                assertEquals(
                        sign(at) * one.structure().get(at), other.structure().get(at), 1e-9, at.words());
            }
        }
    }

    private static int sign(NodeFreedom at) {
        return switch (at.freedom()) {
            case UX, RY, RZ -> -1;
            case UY, UZ, RX -> 1;
        };
    }

    /** The same question with x turned round; sections are symmetric, so only places and references are mirrored. */
    private static SpringBack mirrored(SpringBack q) {
        List<FramePoint> nodes = q.part().nodes().stream()
                .map(p -> new FramePoint(-p.xMm(), p.yMm(), p.zMm()))
                .toList();
        return SpringBack.of(
                Frame.inSpace(nodes, mirrored(q.part().beams())),
                Frame.inSpace(nodes, mirrored(q.structure().beams())),
                q.bonds(),
                q.partSupports(),
                q.assemblySupports(),
                q.clamps().stream()
                        .map(c -> Clamp.toNominal(c.id(), c.at(), sign(c.at()) * c.deviationMm()))
                        .toList(),
                q.watches());
    }

    private static List<Beam> mirrored(List<Beam> beams) {
        return beams.stream()
                .map(b -> new Beam(
                        b.i(),
                        b.j(),
                        b.section(),
                        new Axis(-b.zref().x(), b.zref().y(), b.zref().z())))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void should_bring_the_watch_to_nominal_when_one_clamp_is_relieved_or_shimmed(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        Watched watched = shape(q).watched().get(1);
        double sum = 0;
        for (int j = 0; j < q.clamps().size(); j++) {
            Share share = watched.shares().get(j);
            sum += share.shareMm();
            Clamp c = q.clamps().get(j);
            double relieved = shape(q.withClamps(with(
                            q.clamps(),
                            j,
                            Clamp.toNominal(
                                    c.id(),
                                    c.at(),
                                    c.deviationMm() + share.relieveMm().orElseThrow()))))
                    .watched()
                    .get(1)
                    .shiftMm();
            double shimmed = shape(q.withClamps(with(
                            q.clamps(),
                            j,
                            new Clamp(
                                    c.id(),
                                    c.at(),
                                    c.deviationMm(),
                                    share.shimMm().orElseThrow(),
                                    Clamp.Way.BOTH))))
                    .watched()
                    .get(1)
                    .shiftMm();
            assertEquals(0, relieved, 1e-8);
            assertEquals(0, shimmed, 1e-8);
        }
        assertEquals(watched.shiftMm(), sum, 1e-9);
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42})
    void should_bring_every_watch_to_nominal_when_the_least_relief_is_made(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        List<Double> relief = shape(q).leastRelief();
        List<Clamp> better = new ArrayList<>();
        for (int j = 0; j < relief.size(); j++) {
            Clamp c = q.clamps().get(j);
            better.add(Clamp.toNominal(c.id(), c.at(), c.deviationMm() + relief.get(j)));
        }
        shape(q.withClamps(better)).watched().forEach(w -> assertEquals(0, w.shiftMm(), 1e-8));
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52})
    void should_have_the_covariance_of_its_parts_when_the_deviations_have_one(long seed) {
        SpringBack q = RandomFrames.inSpace(seed);
        double[] std = {0.3, 0.2, 0.001, 0.4};
        DenseMatrix d = DenseMatrix.diagonal(std);
        DenseMatrix correlated =
                DenseMatrix.of(new double[][] {{1, 0.5, 0, 0}, {0.5, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}});
        SpringBackShape s = shape(q.withCovariance(d.times(correlated).times(d)));
        for (int w = 0; w < s.watched().size(); w++) {
            double[] row = s.sensitivity().row(w);
            double whole = 2 * 0.5 * row[0] * row[1] * std[0] * std[1];
            for (int j = 0; j < row.length; j++) {
                whole += row[j] * row[j] * std[j] * std[j];
            }
            assertEquals(whole, s.covariance().orElseThrow().get(w, w), 1e-12 + 1e-9 * whole);
            double shares = s.watched().get(w).shares().stream()
                    .mapToDouble(x -> x.varianceShare().orElseThrow())
                    .sum();
            assertEquals(1, shares, 1e-9);
        }
    }

    private static List<Clamp> with(List<Clamp> clamps, int j, Clamp other) {
        List<Clamp> all = new ArrayList<>(clamps);
        all.set(j, other);
        return all;
    }
}
