package fayline.method.springin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What every corner keeps. The worked cases are rows E, F-25 and F-26 of the tables. */
class SpringInTest {
    @Test
    void should_not_close_when_the_material_shrinks_alike_in_all_directions() {
        SpringIn s = SpringInCalculator.calculate(new Corner(90, 20e-6, 20e-6, -100, -0.004, -0.004));
        assertThat(s.totalDeg()).isZero();
        assertThat(s.toolIncludedDeg()).isEqualTo(90);
    }

    @Test
    void should_close_in_proportion_to_the_arc_and_by_the_ratio_of_lengths() {
        SpringIn s = SpringInCalculator.calculate(new Corner(60, 3e-6, 45e-6, -100, 0, 0));
        assertThat(SpringInCalculator.calculate(new Corner(120, 3e-6, 45e-6, -100, 0, 0))
                        .totalDeg())
                .isCloseTo(2 * s.totalDeg(), within(1e-12));
        assertThat(60 + s.thermalDeg()).isCloseTo(60 * (1 - 3e-4) / (1 - 45e-4), within(1e-12));
    }

    @Test
    void should_refuse_an_included_angle_of_nothing_and_a_strain_that_is_none() {
        assertThatThrownBy(() -> new Corner(180, 0, 0, 0, 0, 0)).hasMessageContaining("below 180");
        assertThatThrownBy(() -> new Corner(90, 3, 45, -100, 0, 0)).hasMessageContaining("strain below 0.1");
        assertThat(new Corner(179.9, 0, 0, 0, 0, 0).arcDeg()).isEqualTo(179.9);
    }
}
