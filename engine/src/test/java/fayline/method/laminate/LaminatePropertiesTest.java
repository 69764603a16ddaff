package fayline.method.laminate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.RandomStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What every stack keeps, whatever its plies: drawn at random with a seed. */
class LaminatePropertiesTest {
    private static final int[] SWAPPED = {1, 0, 2};

    private static List<Laminate> drawn() {
        RandomStream chance = new RandomStream(7, 0);
        List<Laminate> all = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            List<Ply> plies = new ArrayList<>();
            int n = 1 + (int) (9 * chance.nextUnit());
            for (int k = 0; k < n; k++) {
                double e1 = 20e9 + 150e9 * chance.nextUnit();
                double e2 = e1 * (0.05 + 0.95 * chance.nextUnit());
                plies.add(new Ply(
                        new Lamina(e1, e2, 1e9 + 6e9 * chance.nextUnit(), 0.05 + 0.3 * chance.nextUnit(), 1e-6, 3e-5),
                        1e-4 + 5e-4 * chance.nextUnit(),
                        -90 + 180 * chance.nextUnit()));
            }
            all.add(Laminate.of(plies));
        }
        return all;
    }

    @Test
    void should_swap_x_and_y_when_a_laminate_is_turned_by_90_degrees() {
        for (Laminate l : drawn()) {
            Laminate t = Laminate.of(l.plies().stream().map(p -> p.turned(90)).toList());
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    int sign = (i == 2) == (j == 2) ? 1 : -1;
                    int si = SWAPPED[i];
                    int sj = SWAPPED[j];
                    assertThat(t.a(i, j)).isCloseTo(sign * l.a(si, sj), within(1e-10 * l.a(0, 0) + 1e-10 * l.a(1, 1)));
                    assertThat(t.b(i, j))
                            .isCloseTo(
                                    sign * l.b(si, sj),
                                    within(1e-10 * l.a(0, 0) * l.thicknessM() + 1e-10 * l.a(1, 1) * l.thicknessM()));
                    assertThat(t.d(i, j)).isCloseTo(sign * l.d(si, sj), within(1e-10 * l.d(0, 0) + 1e-10 * l.d(1, 1)));
                }
            }
            EngineeringConstants c = l.constants();
            assertThat(t.constants().exPa()).isCloseTo(c.eyPa(), within(1e-8 * c.eyPa()));
            assertThat(t.constants().flexXPa()).isCloseTo(c.flexYPa(), within(1e-8 * c.flexYPa()));
        }
    }

    @Test
    void should_be_alike_in_all_directions_in_plane_when_directions_are_evenly_spread() {
        for (double[] stack : new double[][] {{0, 60, -60}, {0, 45, -45, 90}, {0, 36, 72, -72, -36}}) {
            Laminate l = Plies.stack(Plies.T300, 0.125, stack);
            StiffnessInvariants u = Plies.T300.invariants();
            double a = l.a(0, 0);
            assertThat(l.a(1, 1)).isCloseTo(a, within(1e-10 * a));
            assertThat(l.a(0, 2)).isCloseTo(0, within(1e-10 * a));
            assertThat(l.a(1, 2)).isCloseTo(0, within(1e-10 * a));
            assertThat(l.a(2, 2)).isCloseTo((a - l.a(0, 1)) / 2, within(1e-10 * a));
            double h = l.thicknessM();
            double membrane = (a - l.a(0, 1) * l.a(0, 1) / a) / h;
            assertThat(membrane).isCloseTo(u.evenModulusPa(), within(1e-10 * membrane));
            assertThat(l.a(0, 1) / a).isCloseTo(u.evenPoisson(), within(1e-10));
        }
    }

    @Test
    void should_keep_the_invariants_when_a_ply_is_turned() {
        for (double angle : new double[] {0, 17, 30, 45, 90, -63}) {
            TurnedStiffness q = Plies.AS4.turned(angle);
            TurnedStiffness flat = Plies.AS4.turned(0);
            assertThat(q.q11Pa() + q.q22Pa() + 2 * q.q12Pa())
                    .isCloseTo(flat.q11Pa() + flat.q22Pa() + 2 * flat.q12Pa(), within(1e-2));
            assertThat(q.q66Pa() - q.q12Pa()).isCloseTo(flat.q66Pa() - flat.q12Pa(), within(1e-2));
            assertThat(q.alphaXPerK() + q.alphaYPerK()).isCloseTo(25e-6, within(1e-18));
        }
    }

    @Test
    void should_not_couple_stretch_and_bending_when_a_stack_is_symmetric() {
        for (Laminate l : drawn()) {
            List<Ply> whole = new ArrayList<>(l.plies());
            List<Ply> back = new ArrayList<>(l.plies());
            Collections.reverse(back);
            whole.addAll(back);
            assertThat(Laminate.of(whole).isUncoupled()).isTrue();
        }
        assertThat(Plies.stack(Plies.T300, 0.125, 0, 90).isUncoupled()).isFalse();
        assertThat(Plies.stack(Plies.T300, 0.125, 30, -30).isUncoupled()).isFalse();
    }

    @Test
    void should_take_energy_whatever_the_load() {
        RandomStream chance = new RandomStream(11, 0);
        for (Laminate l : drawn()) {
            for (int i = 0; i < 20; i++) {
                SectionLoad load = new SectionLoad(
                        1e5 * (chance.nextUnit() - 0.5),
                        1e5 * (chance.nextUnit() - 0.5),
                        1e5 * (chance.nextUnit() - 0.5),
                        20 * (chance.nextUnit() - 0.5),
                        20 * (chance.nextUnit() - 0.5),
                        20 * (chance.nextUnit() - 0.5),
                        0);
                assertThat(l.energyJPerM2(load)).isPositive();
            }
        }
    }

    @Test
    void should_balance_forces_and_moments_by_its_ply_stresses() {
        SectionLoad load = new SectionLoad(2e4, -1e4, 5e3, 3, -2, 1, -80);
        for (Laminate l : drawn()) {
            SectionStrain under = l.strain(load);
            SectionStrain free = l.expansionPerK().times(load.temperatureChangeK());
            double n = 0;
            double m = 0;
            double shear = 0;
            for (int k = 0; k < l.plies().size(); k++) {
                double a = l.plies().get(k).angleDeg();
                double low =
                        l.stress(k, 0, under).plus(l.residual(k, 0, free, -80)).alongXPa(a);
                double high =
                        l.stress(k, 1, under).plus(l.residual(k, 1, free, -80)).alongXPa(a);
                double z = l.heightM(k, 0);
                double t = l.heightM(k, 1) - z;
                n += t * (low + high) / 2;
                // Stress runs straight between the faces.
                m += t * (z * (low + high) / 2 + t * (low / 6 + high / 3));
                shear += t
                        * (l.stress(k, 0, under)
                                        .plus(l.residual(k, 0, free, -80))
                                        .shearXyPa(a)
                                + l.stress(k, 1, under)
                                        .plus(l.residual(k, 1, free, -80))
                                        .shearXyPa(a))
                        / 2;
            }
            assertThat(n).isCloseTo(load.nxNPerM(), within(1e-2));
            assertThat(m).isCloseTo(load.mxN(), within(1e-5));
            assertThat(shear).isCloseTo(load.nxyNPerM(), within(1e-2));
        }
    }

    @Test
    void should_invert_as_the_matrix_library_does() {
        for (Laminate l : drawn()) {
            double[][] whole = new double[6][6];
            // Heights in thicknesses: in metres the library calls so mixed a matrix singular.
            double h = l.thicknessM();
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    whole[i][j] = l.a(i, j);
                    whole[i][j + 3] = l.b(i, j) / h;
                    whole[i + 3][j] = l.b(i, j) / h;
                    whole[i + 3][j + 3] = l.d(i, j) / h / h;
                }
            }
            DenseMatrix inverse = DenseMatrix.of(whole).inverse().orElseThrow();
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    double scale = Math.sqrt(inverse.get(i, i) * inverse.get(j, j));
                    double heights = (i > 2 ? h : 1) * (j > 2 ? h : 1);
                    assertThat(heights * l.compliance(i, j)).isCloseTo(inverse.get(i, j), within(1e-8 * scale));
                }
            }
        }
    }

    @Test
    void should_refuse_what_no_ply_can_be_and_name_the_rule() {
        assertThatThrownBy(() -> Plies.gpa(10.3, 181, 7.17, 0.28, 0, 0))
                .hasMessageContaining("E2 <= E1")
                .hasMessageContaining("10.3");
        assertThat(new Lamina(60e9, 62e9, 4e9, 0.05, 0, 0, true).e2Pa()).isEqualTo(62e9);
        assertThatThrownBy(() -> Plies.gpa(40, 10, 4, 2, 0, 0)).hasMessageContaining("sqrt(E1/E2) = 2");
        assertThat(Plies.gpa(40, 10, 4, 1.999, 0, 0).nu21()).isLessThan(0.5);
        assertThatThrownBy(() -> Plies.gpa(40, 10, 0, 0.3, 0, 0)).hasMessageContaining("G12");
        assertThatThrownBy(() -> Plies.gpa(40, 10, 4, 0.3, 22.5, 0)).hasMessageContaining("alpha1");
        assertThatThrownBy(() -> new Ply(Plies.T300, -1e-4, 0)).hasMessageContaining("thickness above 0");
        assertThatThrownBy(() -> Laminate.of(List.of())).hasMessageContaining("without plies");
        assertThatThrownBy(() -> Lamina.isotropic(3e9, 0.6, 7e-5)).hasMessageContaining("0.5");
        assertThat(LaminaRules.ofFibreFraction("Vf", 0.95)).hasSize(1);
        assertThat(LaminaRules.ofFibreFraction("Vf", LaminaRules.CLOSEST_PACKING))
                .isEmpty();
        assertThat(LaminaRules.ofFibreFraction("Vf", LaminaRules.CLOSEST_PACKING + 1e-9))
                .hasSize(1);
    }

    /** The cylinder of a large plate lies nearer to the finite elements of row F-22 (kappa_x -3.840 1/m) than the saddle's 4.116: 3 percent. */
    @Test
    void should_hand_over_to_a_cylinder_when_the_bow_passes_the_thickness() {
        Laminate thin = Plies.stack(Plies.gpa(120, 8.5, 4.5, 0.3, -0.3e-6, 30e-6), 0.25, 0, 90);
        Warp w = Warp.of(thin, -80, 0.2);
        assertThat(w.linear()).isFalse();
        assertThat(w.strain().kappaXPerM()).isCloseTo(-4.116, within(1e-3));
        assertThat(w.cylinderPerM()).isCloseTo(-3.83974, within(0.03 * 3.83974));
        Warp small = Warp.of(thin, -80, Math.sqrt(8 * 0.499e-3 / 4.116));
        assertThat(small.linear()).isTrue();
        assertThat(Warp.of(thin, -80, Math.sqrt(8 * 0.501e-3 / 4.116)).linear()).isFalse();
    }
}
