package fayline.method.micro;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.method.laminate.Lamina;
import fayline.method.laminate.LaminaRules;
import fayline.method.laminate.Laminate;
import fayline.method.laminate.Ply;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What estimates of a ply keep whatever its fibre and resin. The printed cases are rows A3 and G-06 of the tables. */
class PlyEstimateTest {
    private static FibreAndResin glass(double fraction) {
        return new FibreAndResin(74e9, 74e9, 30.8e9, 0.2, 4.9e-6, 3.35e9, 0.35, 58e-6, fraction);
    }

    @Test
    void should_lie_between_the_inverse_rule_and_the_rule_of_mixtures() {
        for (double v = 0.05; v < LaminaRules.CLOSEST_PACKING; v += 0.05) {
            PlyEstimate e = PlyEstimateCalculator.calculate(glass(v));
            assertThat(e.e2Pa()).isBetween(e.e2InversePa(), e.e1Pa());
            assertThat(e.g12Pa()).isBetween(e.g12InversePa(), 30.8e9 * v + 3.35e9 / 2.7 * (1 - v));
            assertThat(e.lamina().e1Pa()).isEqualTo(e.e1Pa());
        }
    }

    @Test
    void should_become_resin_when_there_is_hardly_any_fibre() {
        PlyEstimate e = PlyEstimateCalculator.calculate(glass(1e-9));
        assertThat(e.e1Pa()).isCloseTo(3.35e9, within(1e3));
        assertThat(e.e2Pa()).isCloseTo(3.35e9, within(1e3));
        assertThat(e.alpha1PerK()).isCloseTo(58e-6, within(1e-11));
        assertThat(e.alpha2PerK()).isCloseTo(58e-6, within(1e-11));
    }

    @Test
    void should_take_a_cloth_as_two_plies_crossed() {
        PlyEstimate e = PlyEstimateCalculator.calculate(glass(0.45));
        Lamina cloth = e.cloth();
        // Four plies, symmetric: the half thickness each way that a cloth has, without bending by itself.
        Laminate crossed = Laminate.of(List.of(
                new Ply(e.lamina(), 1e-4, 0),
                new Ply(e.lamina(), 1e-4, 90),
                new Ply(e.lamina(), 1e-4, 90),
                new Ply(e.lamina(), 1e-4, 0)));
        assertThat(cloth.e1Pa()).isCloseTo(crossed.constants().exPa(), within(1.0));
        assertThat(cloth.nu12()).isCloseTo(crossed.constants().nuXy(), within(1e-12));
        assertThat(cloth.alpha1PerK()).isCloseTo(crossed.expansionPerK().epsX(), within(1e-16));
    }

    @Test
    void should_refuse_a_fibre_fraction_that_cannot_be_packed() {
        assertThatThrownBy(() -> glass(0.95)).hasMessageContaining("0.9069");
        assertThatThrownBy(() -> glass(0)).hasMessageContaining("above 0");
        assertThatThrownBy(() -> new FibreAndResin(74e9, 74e9, 30e9, 0.2, 0, 3e9, 0.6, 0, 0.5))
                .hasMessageContaining("num");
    }
}
