package fayline.method.fitup.frame.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Two springs side by side, by hand and by seeded trials. */
class TrialFitTest {
    private static TrialFitResult fit(double wanted, double reading, Trial... trials) {
        return TrialFitCalculator.calculate(new TrialFit(List.of(trials), wanted, 1, reading, OptionalDouble.empty()));
    }

    @Test
    void should_set_the_frame_under_by_what_it_sprang_when_one_trial_was_made() {
        // Sprang out 10 mm at 900; wanted 900: aim at 890, or 880 if the frame follows only half.
        TrialFitResult r = fit(900, 0.5, new Trial(900, 910));
        assertEquals(890, r.bareMm(), 1e-9);
        assertEquals(880, r.farthestBareMm(), 1e-9);
        assertEquals(10, r.sprungMm(), 1e-9);
        assertEquals(Math.sqrt(0.5 + 100.0 / 12), r.stdMm(), 1e-9);
        assertEquals(TrialFitResult.From.ASSUMED, r.followFrom());
        assertEquals(TrialFitResult.Verdict.TRY_AGAIN, r.verdict());
        assertTrue(r.findings()
                .get(0)
                .sentence()
                .contains("trial-clamp the sheet a second time and read again before any" + " adhesive"));
    }

    @Test
    void should_go_by_the_secant_when_two_trials_were_made() {
        // 900 → 910 and 890 → 902: the width follows 0.8; 2 mm more take 2.5 mm.
        TrialFitResult r = fit(900, 0.5, new Trial(900, 910), new Trial(890, 902));
        assertEquals(0.8, r.follow(), 1e-12);
        assertEquals(887.5, r.bareMm(), 1e-9);
        assertEquals(TrialFitResult.From.TRIALS, r.followFrom());
        assertEquals(TrialFitResult.Verdict.TRY_AGAIN, r.verdict());
        // b = b2 + (W − c2)(b2 − b1)/(c2 − c1), e = −2, Δb = −10, Δc = −8: partials by hand.
        double b2 = 1 + -2 / -8.0;
        double b1 = 2 / -8.0;
        double c2 = -1.25 - (-2 * -10) / 64.0;
        double c1 = -2 * -10 / 64.0;
        assertEquals(0.5 * Math.sqrt(b1 * b1 + b2 * b2 + c1 * c1 + c2 * c2), r.stdMm(), 1e-6);
    }

    @Test
    void should_bond_when_the_second_trial_is_within_tolerance_but_not_after_one() {
        TrialFitResult r = fit(900, 0.3, new Trial(900, 910), new Trial(887.5, 900.4));
        assertEquals(TrialFitResult.Verdict.READY, r.verdict());
        TrialFitResult once = fit(900, 0.3, new Trial(888, 900.2));
        assertEquals(TrialFitResult.Verdict.TRY_AGAIN, once.verdict());
        assertTrue(once.findings().get(0).sentence().startsWith("One trial, 0.2 mm off"));
        // The same width clamped again: nothing to learn about the share, but the frame is right.
        assertEquals(
                TrialFitResult.Verdict.READY,
                fit(900, 0.3, new Trial(888, 900.2), new Trial(888, 900.1)).verdict());
    }

    @Test
    void should_use_the_share_when_it_is_given() {
        TrialFitResult r = TrialFitCalculator.calculate(
                new TrialFit(List.of(new Trial(900, 910)), 900, 1, 0.5, OptionalDouble.of(0.8)));
        assertEquals(887.5, r.bareMm(), 1e-9);
        assertEquals(0.5 * Math.hypot(1, 1.25), r.stdMm(), 1e-9);
        assertEquals(TrialFitResult.From.GIVEN, r.followFrom());
    }

    @Test
    void should_ask_to_read_again_when_the_trials_contradict_each_other() {
        // Set 10 mm narrower and came out wider; and followed by more than it was changed.
        assertEquals(
                TrialFitResult.Verdict.READ_AGAIN,
                fit(900, 0.3, new Trial(900, 910), new Trial(890, 915)).verdict());
        assertEquals(
                TrialFitResult.Verdict.READ_AGAIN,
                fit(900, 0.3, new Trial(900, 910), new Trial(890, 890)).verdict());
        // Three trials of which one lies 3 mm off the line.
        assertEquals(
                TrialFitResult.Verdict.READ_AGAIN,
                fit(900, 0.3, new Trial(900, 910), new Trial(890, 905), new Trial(880, 894))
                        .verdict());
    }

    @Test
    void should_take_the_last_alone_when_the_trials_lie_too_close_together() {
        TrialFitResult r = fit(900, 0.5, new Trial(900, 910), new Trial(899.5, 909.4));
        assertEquals(TrialFitResult.From.ASSUMED, r.followFrom());
        assertEquals(899.5 - 9.4, r.bareMm(), 1e-9);
        assertTrue(r.findings().get(0).sentence().startsWith("The trials lie too close together"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void should_find_the_width_within_its_uncertainty_when_two_springs_are_read_with_errors(long seed) {
        Random random = new Random(seed);
        double share = 0.55 + 0.1 * seed;
        double sheet = 925;
        double wanted = 903;
        double exact = (wanted - (1 - share) * sheet) / share;
        int inside = 0;
        int runs = 4_000;
        for (int k = 0; k < runs; k++) {
            List<Trial> trials = new ArrayList<>();
            for (double bare : new double[] {900, 884, 876}) {
                double clamped = share * bare + (1 - share) * sheet;
                trials.add(new Trial(bare + 0.2 * random.nextGaussian(), clamped + 0.2 * random.nextGaussian()));
            }
            TrialFitResult r =
                    TrialFitCalculator.calculate(new TrialFit(trials, wanted, 0.5, 0.2, OptionalDouble.empty()));
            inside += Math.abs(r.bareMm() - exact) < 2 * r.stdMm() ? 1 : 0;
        }
        assertTrue(inside > 0.94 * runs && inside < 0.97 * runs, "inside two standard uncertainties: " + inside);
    }

    @Test
    void should_refuse_when_a_width_or_share_is_none() {
        assertThrows(IllegalArgumentException.class, () -> new Trial(0, 5));
        assertThrows(IllegalArgumentException.class, () -> fit(900, 0.5));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TrialFit(List.of(new Trial(1, 1)), 1, 1, 0, OptionalDouble.of(1.2)));
    }
}
