package fayline.method.mix.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.CureSheet;
import fayline.method.cure.CureState;
import fayline.method.cure.PotShape;
import fayline.method.cure.SheetPoint;
import fayline.method.cure.pot.PotLife;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rules of this project, numbers invented. */
class BatchPlanTest {
    @Test
    void should_use_up_each_batch_in_time_and_lose_nothing_when_planned_at_random() {
        Random random = new Random(17);
        int planned = 0;
        for (int i = 0; i < 300; i++) {
            BatchPlan plan = plan(
                    0.05 + 3 * random.nextDouble(),
                    14 + 14 * random.nextDouble(),
                    1 + random.nextInt(4),
                    random.nextBoolean()
                            ? Optional.of(TimeSpan.ofMinutes(200 * random.nextDouble()))
                            : Optional.empty(),
                    Optional.empty());
            BatchPlanResult result = BatchPlanCalculator.calculate(plan);
            if (result.batches().isEmpty()) {
                assertFalse(result.findings().isEmpty());
                continue;
            }
            planned++;
            double sum = 0;
            for (Batch b : result.batches()) {
                sum += b.mass().kilograms();
                assertTrue(b.mass().kilograms() <= 0.5 + 1e-9);
                assertTrue(b.appliedBy().seconds() <= b.usableUntil().seconds() + 1e-6, "in time");
                assertEquals(
                        b.mass().kilograms(),
                        b.resin().kilograms() + b.hardener().kilograms(),
                        1e-12);
                assertEquals(0.3, b.hardener().kilograms() / b.resin().kilograms(), 1e-12);
            }
            assertEquals(plan.total().kilograms(), sum, 1e-9);
            for (int k = 1; k < result.batches().size(); k++) {
                assertTrue(result.batches().get(k).applyFrom().seconds()
                        >= result.batches().get(k - 1).appliedBy().seconds() - 1e-6);
            }
        }
        assertTrue(planned > 150, "planned " + planned);
    }

    @Test
    void should_allow_smaller_batches_when_it_is_warmer() {
        double before = Double.POSITIVE_INFINITY;
        for (double c = 14; c < 30; c += 1) {
            double m = BatchPlanCalculator.calculate(plan(2, c, 1, Optional.empty(), Optional.empty()))
                    .largest()
                    .orElseThrow()
                    .kilograms();
            assertTrue(m <= before + 1e-12);
            before = m;
        }
    }

    @Test
    void should_offer_priced_ways_out_when_the_lay_up_outlasts_the_resin() {
        BatchPlanResult result = BatchPlanCalculator.calculate(
                plan(3, 24, 2, Optional.of(TimeSpan.ofMinutes(260)), Optional.of(TimeSpan.ofHours(8))));
        assertFalse(result.fitsResin());
        assertTrue(result.fitsDay());
        assertFalse(result.fits());
        assertEquals(3, result.waysOut().size());
        WayOut split = result.waysOut().get(0);
        assertEquals(WayOut.Kind.SPLIT, split.kind());
        assertTrue(split.possible(), split.sentence());
        assertTrue(split.work().hours() >= 2);
        assertTrue(split.layUp().compareTo(result.resinLife().orElseThrow()) <= 0);
        WayOut day = result.waysOut().get(2);
        assertFalse(day.possible());
        assertTrue(day.sentence().contains("does not help"));
    }

    @Test
    void should_offer_another_day_when_only_the_clock_on_the_wall_is_short() {
        BatchPlanResult result =
                BatchPlanCalculator.calculate(plan(1, 20, 2, Optional.empty(), Optional.of(TimeSpan.ofMinutes(40))));
        assertFalse(result.fitsDay());
        assertTrue(result.fitsResin());
        assertTrue(result.waysOut().get(2).possible());
    }

    @Test
    void should_be_quicker_when_one_more_person_helps() {
        BatchPlanResult alone =
                BatchPlanCalculator.calculate(plan(1, 20, 1, Optional.empty(), Optional.of(TimeSpan.ofMinutes(30))));
        WayOut more = alone.waysOut().get(1);
        assertEquals(WayOut.Kind.ONE_MORE_PERSON, more.kind());
        assertTrue(more.layUp().compareTo(alone.tight()) < 0);
    }

    @Test
    void should_stop_when_the_life_is_over_before_anything_is_used() {
        BatchPlanResult hot = BatchPlanCalculator.calculate(plan(1, 75, 1, Optional.empty(), Optional.empty()));
        assertTrue(hot.batches().isEmpty());
        assertFalse(hot.fits());
    }

    @Test
    void should_guard_against_binary_division_when_batches_fit_exactly() {
        assertEquals(
                7,
                EqualBatchesCalculator.calculate(new EqualBatches(Mass.ofKilograms(1.05), Mass.ofKilograms(0.15)))
                        .batches());
        assertEquals(
                0,
                EqualBatchesCalculator.calculate(new EqualBatches(new Mass(1), new Mass(0)))
                        .batches());
    }

    private static BatchPlan plan(
            double kilograms, double celsius, int people, Optional<TimeSpan> hands, Optional<TimeSpan> day) {
        List<SheetPoint> points = new ArrayList<>();
        points.add(point(CureState.POT_LIFE, 90, 25, Optional.of(Mass.ofGrams(150))));
        points.add(point(CureState.POT_LIFE, 45, 25, Optional.of(Mass.ofGrams(500))));
        points.add(point(CureState.WORKING_LIFE, 180, 23, Optional.empty()));
        points.add(point(CureState.RECOAT_OPENS, 360, 23, Optional.empty()));
        points.add(point(CureState.RECOAT_SHUTS, 1440, 23, Optional.empty()));
        CureSheet sheet = new CureSheet(points, Optional.empty(), Optional.empty(), Optional.empty());
        return new BatchPlan(
                "invented resin",
                PotLife.inCup(sheet, Mass.ofGrams(150), Temperature.ofCelsius(celsius)),
                100,
                30,
                Fraction.ofPercent(3),
                Mass.ofKilograms(kilograms),
                0.025 / 60,
                BatchPlan.Crew.of(people, 4),
                Fraction.ofPercent(60),
                TimeSpan.ofMinutes(5),
                Optional.of(Mass.ofGrams(500)),
                hands,
                TimeSpan.ofMinutes(40),
                day,
                Optional.of(TimeSpan.ofHours(8)),
                BatchPlan.Prices.assumed());
    }

    private static SheetPoint point(CureState state, double minutes, double celsius, Optional<Mass> mass) {
        return new SheetPoint(
                state, TimeSpan.ofMinutes(minutes), Temperature.ofCelsius(celsius), mass, PotShape.CUP, "invented");
    }
}
