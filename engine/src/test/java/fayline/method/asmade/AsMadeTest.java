package fayline.method.asmade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Balances that hold whatever the numbers. The worked cases are rows A3-04 to A3-07 of the tables. */
class AsMadeTest {
    private static final double GLASS = 2560;
    private static final double EPOXY = 1120;

    @Test
    void should_come_back_to_the_same_content_whichever_way_it_is_measured() {
        for (double v = 0.1; v < 0.9; v += 0.1) {
            Content c = new Content(v, GLASS, EPOXY);
            assertThat(Content.ofFibreMass(c.fibreMass(), GLASS, EPOXY).fibreVolume())
                    .isCloseTo(v, within(1e-12));
            assertThat(Content.ofThickness(c.thicknessM(1.74), 1.74, GLASS, EPOXY)
                            .fibreVolume())
                    .isCloseTo(v, within(1e-12));
            assertThat(Content.ofWeighedPart(c.arealMassKgPerM2(1.74), 1.74, GLASS, EPOXY)
                            .fibreVolume())
                    .isCloseTo(v, within(1e-12));
            assertThat(c.thicknessM(1.74) * c.densityKgPerM3()).isCloseTo(c.arealMassKgPerM2(1.74), within(1e-12));
            BurnOffResult b = BurnOffCalculator.calculate(new BurnOff(c.densityKgPerM3(), c.fibreMass(), GLASS, EPOXY));
            assertThat(b.voids()).isCloseTo(0, within(1e-12));
            assertThat(b.fibreVolume()).isCloseTo(v, within(1e-12));
        }
    }

    @Test
    void should_keep_its_stiffness_in_plane_and_gain_in_bending_when_resin_is_too_much() {
        StiffnessChange c = StiffnessChangeCalculator.calculate(
                new Content(0.45, GLASS, EPOXY), new Content(0.38, GLASS, EPOXY), 72e9, 3.2e9);
        assertThat(c.modulus()).isLessThan(1);
        assertThat(c.membrane()).isBetween(1.0, 1.02);
        assertThat(c.bending()).isGreaterThan(1.3);
    }

    @Test
    void should_refuse_what_no_scale_can_show() {
        assertThatThrownBy(() -> Content.ofWeighedPart(1.7, 1.74, GLASS, EPOXY)).hasMessageContaining("its cloth");
        assertThatThrownBy(() -> new Content(0.95, GLASS, EPOXY)).hasMessageContaining("0.9069");
        assertThatThrownBy(() -> Content.ofThickness(0.0007, 1.74, GLASS, EPOXY))
                .hasMessageContaining("0.9069");
        assertThatThrownBy(() -> BurnOffCalculator.calculate(new BurnOff(2000, 0.66, GLASS, EPOXY)))
                .hasMessageContaining("-0.02");
        assertThatThrownBy(() -> BurnOff.fibreMassOf(1, 1.2)).hasMessageContaining("before burning");
    }
}
