package fayline.method.fitup.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Rounds of straightening on made-up curves whose answers are known. */
class SettledTest {
    /** A curve whose straight line about a place leads to {@code next} of it and is off there by {@code error}. */
    private record Curve(double about, Step step) implements Straight<Curve, Double> {
        @Override
        public Curve about(Double known) {
            return new Curve(known, step);
        }

        @Override
        public double errorMm(Double move) {
            return Math.abs(step.next(move) - move);
        }

        @Override
        public boolean still(Double before, Double after) {
            return Math.abs(after - before) < 1e-4;
        }
    }

    private interface Step {
        double next(double at);
    }

    private static Settled<Curve, Double, Double> solve(Step step) {
        return Settled.solve(new Curve(0, step), c -> Optional.of(c.step().next(c.about())), (c, x) -> x)
                .orElseThrow();
    }

    @Test
    void should_come_to_rest_when_each_round_is_nearer() {
        // x = 1 + x / 20 has its rest at 20 / 19.
        Settled<Curve, Double, Double> s = solve(x -> 1 + x / 20);
        assertEquals(20.0 / 19, s.move(), 1e-4);
        assertTrue(s.still());
    }

    @Test
    void should_take_the_truest_of_the_moves_when_they_swing() {
        // 1.2, met once, is off by 0.1 only; then it swings between 3 and 1, each off by 2.
        Settled<Curve, Double, Double> s = solve(x -> x == 0 ? 1.2 : x == 1.2 ? 1.1 : x == 3 ? 1 : 3);
        assertEquals(1.2, s.move(), 1e-12);
        assertEquals(Settled.MOST_ROUNDS, s.rounds());
        assertFalse(s.still());
    }

    @Test
    void should_be_still_when_the_last_round_is_the_one_that_settles() {
        // x = 1 + k x goes 1, 1 + k, ...: its n-th round moves by k^n, which is below 1e-4 first in the fifth where k =
        // 0.15.
        Settled<Curve, Double, Double> s = solve(x -> 1 + 0.15 * x);
        assertEquals(Settled.MOST_ROUNDS, s.rounds());
        assertTrue(s.still());
        assertEquals(1 / 0.85, s.move(), 1e-4);
    }
}
