package fayline.basis.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Against closed forms. */
class NumericTest {
    private final OdeIntegrator integrator = new OdeIntegrator(1e-12, 1e-10);

    @Test
    void should_give_the_exponential_when_decay_is_integrated() {
        assertEquals(Math.exp(-3), integrator.integrate((t, y) -> -y, 0, 1, 3), 1e-10);
        assertEquals(1, integrator.integrate((t, y) -> -y, 2, 1, 2), 0);
    }

    @Test
    void should_give_the_logistic_curve_when_growth_is_integrated() {
        double y0 = 0.01;
        double exact = 1 / (1 + (1 / y0 - 1) * Math.exp(-8));
        assertEquals(exact, integrator.integrate((t, y) -> y * (1 - y), 0, y0, 8), 1e-9);
    }

    @Test
    void should_stop_exactly_when_the_level_is_reached() {
        OdeIntegrator.Stop stop = integrator.integrateUntil((t, y) -> 1 - y, 0, 0, 10, 0.3);
        assertTrue(stop.reached());
        assertEquals(-Math.log(0.7), stop.time(), 1e-9);
        assertEquals(0.3, stop.value(), 1e-9);
        assertFalse(integrator.integrateUntil((t, y) -> 1 - y, 0, 0, 0.1, 0.3).reached());
    }

    @Test
    void should_find_the_root_when_the_bracket_holds_one() {
        assertEquals(
                Math.sqrt(2), RootFinder.bracketed(x -> x * x - 2, 0, 2, 1e-12).orElseThrow(), 1e-10);
        assertTrue(RootFinder.bracketed(x -> x * x + 1, -1, 1, 1e-9).isEmpty());
        assertTrue(RootFinder.bracketed(x -> Double.NaN, -1, 1, 1e-9).isEmpty());
    }

    @Test
    void should_find_the_fixed_point_when_the_right_side_falls() {
        // x = cos x has the root 0.7390851332151607 (Dottie number).
        assertEquals(
                0.7390851332151607,
                RootFinder.fallingFixedPoint(Math::cos, 0, 1.5).orElseThrow(),
                1e-12);
        assertEquals(0.5, RootFinder.fallingFixedPoint(Math::cos, 0, 0.5).orElseThrow(), 0);
        assertTrue(RootFinder.fallingFixedPoint(x -> -1, 0, 1).isEmpty());
    }
}
