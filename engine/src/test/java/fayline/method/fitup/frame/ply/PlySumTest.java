package fayline.method.fitup.frame.ply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.method.fitup.frame.BeamSection;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class PlySumTest {
    private static final double E = 70_000;
    private static final double NU = 0.3;

    private static PlyLayer even(double thickness, double angleDeg) {
        return new PlyLayer(thickness, Math.toRadians(angleDeg), E, E, E / (2 * (1 + NU)), NU);
    }

    private static PlySum of(double t, double e1, double e2, double g, double nu, double... anglesDeg) {
        return new PlySum(DoubleStream.of(anglesDeg)
                .mapToObj(a -> new PlyLayer(t, Math.toRadians(a), e1, e2, g, nu))
                .toList());
    }

    /** [0/+-45/90]s of AS4/3501-6: Ex 51.0614 GPa, Gxy 19.7677 GPa, from Soden, Hinton, Kaddour 1998, table 1, recalled. */
    @Test
    void should_give_the_published_modulus_of_an_even_laminate() {
        PlySum s = of(0.125, 126_000, 11_000, 6_600, 0.28, 0, 45, -45, 90, 90, -45, 45, 0);
        assertThat(s.thicknessMm()).isEqualTo(1, within(1e-12));
        assertThat(s.stretchNPerMm()).isEqualTo(51_061.4, within(51.0));
        assertThat(s.shearNPerMm()).isEqualTo(19_767.7, within(20.0));
    }

    /** The same lay-up of T300/5208: A11 76368.2, A12 22607.4, A66 26880.4 N/mm (Tsai, Hahn 1980, recalled). */
    @Test
    void should_leave_the_laminate_free_to_contract_across() {
        PlySum s = of(0.125, 181_000, 10_300, 7_170, 0.28, 0, 45, -45, 90, 90, -45, 45, 0);
        assertThat(s.stretchNPerMm()).isEqualTo(76_368.2 - 22_607.4 * 22_607.4 / 76_368.2, within(70.0));
        assertThat(s.shearNPerMm()).isEqualTo(26_880.4, within(27.0));
    }

    @Test
    void should_be_a_plain_strip_when_every_ply_is_alike_in_every_direction() {
        Random random = new Random(41);
        for (int n = 0; n < 20; n++) {
            double a = 0.2 + random.nextDouble();
            double b = 0.2 + random.nextDouble();
            PlySum s = new PlySum(List.of(even(a, random.nextInt(180)), even(b, random.nextInt(180))));
            double t = a + b;
            assertThat(s.stretchNPerMm()).isEqualTo(E * t, within(1e-6 * E));
            assertThat(s.bendingNMm2PerMm()).isEqualTo(E * t * t * t / 12, within(1e-6 * E));
            BeamSection strip = s.strip(30);
            BeamSection plain = BeamSection.rectangle(E, E / (2 * (1 + NU)), 30, t);
            assertThat(strip.eMpa() * strip.iyMm4()).isEqualTo(plain.eMpa() * plain.iyMm4(), within(1.0));
            assertThat(strip.eMpa() * strip.izMm4()).isEqualTo(plain.eMpa() * plain.izMm4(), within(10.0));
            assertThat(strip.gMpa() * strip.jMm4()).isEqualTo(plain.gMpa() * plain.jMm4(), within(1.0));
        }
    }

    @Test
    void should_bend_a_sandwich_about_its_own_axis_though_its_faces_differ() {
        // Faces of 1 and 2 mm on 10 mm of core: the axis lies nearer to the thick one.
        PlySum s = new PlySum(List.of(even(1, 0), PlyLayer.core(10), even(2, 0)));
        double middle = (1 * 0.5 + 2 * 12.0) / 3;
        double own = (1 + 8) / 12.0;
        double steiner = 1 * Math.pow(middle - 0.5, 2) + 2 * Math.pow(12 - middle, 2);
        assertThat(s.bendingNMm2PerMm()).isEqualTo(E * (own + steiner), within(1e-6 * E));
        assertThat(s.stretchNPerMm()).isEqualTo(3 * E, within(1e-6 * E));
    }

    @Test
    void should_not_care_which_face_comes_first() {
        PlySum one = of(0.2, 126_000, 11_000, 6_600, 0.28, 0, 30, -30, 90);
        PlySum other = of(0.2, 126_000, 11_000, 6_600, 0.28, 90, -30, 30, 0);
        assertThat(one.bendingNMm2PerMm()).isEqualTo(other.bendingNMm2PerMm(), within(1e-6));
        assertThat(one.stretchNPerMm()).isEqualTo(other.stretchNPerMm(), within(1e-6));
    }

    @Test
    void should_refuse_what_carries_nothing_or_is_no_ply() {
        assertThatThrownBy(() -> new PlySum(List.of(PlyLayer.core(5)))).hasMessageContaining("no ply carries");
        assertThatThrownBy(() -> new PlyLayer(0.2, 0, 1000, 90_000, 4000, 0.3))
                .hasMessageContaining("a contraction of 0.3");
        assertThatThrownBy(() -> even(0, 0)).isInstanceOf(IllegalArgumentException.class);
    }
}
