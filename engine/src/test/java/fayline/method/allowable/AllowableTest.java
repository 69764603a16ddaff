package fayline.method.allowable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Severity;
import java.util.List;
import org.junit.jupiter.api.Test;

class AllowableTest {
    private static final List<Double> SIX = List.of(21.2e6, 22.0e6, 20.4e6, 21.7e6, 22.4e6, 20.9e6);

    private static AllowableResult of(List<Double> strengths, int atBondFace, int inAdherend) {
        return AllowableCalculator.calculate(new CouponTests(strengths, atBondFace, inAdherend, 0.9, 0.95));
    }

    @Test
    void should_give_the_factors_of_the_b_table() {
        // One-sided factors at 90 percent, 95 percent confidence: 3.407 at 5, 2.355 at 10, 1.778 at 30 (Owen's table,
        // from memory).
        assertEquals(3.407, ToleranceFactor.oneSided(5, 0.9, 0.95), 0.001);
        assertEquals(2.355, ToleranceFactor.oneSided(10, 0.9, 0.95), 0.001);
        assertEquals(1.777, ToleranceFactor.oneSided(30, 0.9, 0.95), 0.002);
    }

    @Test
    void should_have_a_closed_form_when_there_are_two_pieces_and_no_shift_is_left() {
        // With half of all values above, the noncentral t is Student's: 6.314 / sqrt 2 at 95 percent.
        assertEquals(6.3138 / Math.sqrt(2), ToleranceFactor.oneSided(2, 0.5 + 1e-12, 0.95), 1e-3);
    }

    @Test
    void should_ask_less_of_more_pieces_and_more_of_more_certainty() {
        double before = Double.MAX_VALUE;
        for (int n = 3; n <= 60; n++) {
            double k = ToleranceFactor.oneSided(n, 0.9, 0.95);
            assertTrue(k < before);
            assertTrue(k > 1.2815);
            before = k;
        }
        assertTrue(ToleranceFactor.oneSided(8, 0.9, 0.99) > ToleranceFactor.oneSided(8, 0.9, 0.95));
        assertTrue(ToleranceFactor.twoSided(8, 0.9, 0.95) > ToleranceFactor.oneSided(8, 0.9, 0.95));
    }

    @Test
    void should_give_mean_less_factor_times_deviation() {
        AllowableResult r = of(SIX, 0, 0);
        assertEquals(
                r.meanPa() - ToleranceFactor.oneSided(6, 0.9, 0.95) * r.deviationPa(),
                r.allowedPa().orElseThrow(),
                1);
        assertTrue(r.findings().get(0).sentence().contains("6 pieces only"));
    }

    @Test
    void should_give_no_value_under_five_pieces() {
        AllowableResult four = of(SIX.subList(0, 4), 0, 0);
        assertTrue(four.allowedPa().isEmpty());
        assertTrue(four.findings().get(0).sentence().contains("test at least 5"));
        assertTrue(of(SIX.subList(0, 5), 0, 0).allowedPa().isPresent());
    }

    @Test
    void should_give_no_value_where_a_piece_parted_at_the_surface() {
        AllowableResult r = of(SIX, 1, 0);
        assertTrue(r.allowedPa().isEmpty());
        assertTrue(r.findings().stream()
                .anyMatch(f -> f.severity() == Severity.STOP && f.sentence().contains("surface")));
        assertTrue(of(SIX, 0, 2).allowedPa().isPresent());
    }

    @Test
    void should_give_no_value_below_nothing() {
        assertTrue(of(List.of(5e6, 30e6, 9e6, 40e6, 12e6), 0, 0).allowedPa().isEmpty());
    }

    @Test
    void should_refuse_what_is_no_test() {
        assertThrows(IllegalArgumentException.class, () -> of(List.of(1e6, -1e6, 1e6, 1e6, 1e6), 0, 0));
        assertThrows(IllegalArgumentException.class, () -> of(SIX, 4, 3));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSided(1, 0.9, 0.95));
        assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.oneSided(5, 1, 0.95));
    }
}
