package fayline.flow.result.coupon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.project.design.Coupon;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.record.TakenReading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Statistics of witness pieces, reckoned by hand beside each check. */
class CouponCalculatorTest {
    private static Part part(Coupon... coupons) {
        return new Part(
                "spar",
                "Spar",
                "wing",
                Hand.NONE,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Map.of(),
                "",
                "",
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(coupons),
                OptionalDouble.empty());
    }

    private static List<TakenReading> read(String coupon, String... typed) {
        List<TakenReading> all = new ArrayList<>();
        for (String t : typed) {
            all.add(new TakenReading(
                    all.size(), "p", Instant.EPOCH, "ilse", "coupon", "spar", coupon, "", Map.of("value", t)));
        }
        return all;
    }

    @Test
    void should_tell_mean_deviation_and_variation_of_stresses_in_mixed_units() {
        // 20, 22 and 24 MPa, one of them typed as N/mm2 is MPa: mean 22, s = sqrt((4 + 0 + 4) / 2) = 2, CV = 2 / 22.
        Part part = part(new Coupon("lap", "Laps", CouponMeasure.LAP_SHEAR, 5, "paste-lap-shear"));
        CouponResult r = CouponCalculator.calculate(part, read("lap", "20 MPa", "22000 kPa", "24 MPa"))
                .get(0);
        assertThat(r.mean().orElseThrow()).isCloseTo(22e6, within(1.0));
        assertThat(r.deviation().orElseThrow()).isCloseTo(2e6, within(1.0));
        assertThat(r.variation().orElseThrow()).isCloseTo(2.0 / 22, within(1e-9));
        assertThat(r.missing()).isEqualTo(2);
    }

    /** One-sided factor for 5 pieces, 90 percent and 95 percent confidence: 3.407 [owen1963]. */
    @Test
    void should_say_what_nine_of_ten_bear_from_five_strengths_and_why_not_from_four() {
        // 20, 21, 22, 23, 24 MPa: mean 22, s = sqrt(10 / 4) = 1.5811; 22 - 3.407 * 1.5811 = 16.61.
        Part part = part(new Coupon("lap", "Laps", CouponMeasure.LAP_SHEAR, 5, ""));
        CouponResult five = CouponCalculator.calculate(
                        part, read("lap", "20 MPa", "21 MPa", "22 MPa", "23 MPa", "24 MPa"))
                .get(0);
        assertThat(five.bound().orElseThrow().allowedPa().orElseThrow()).isCloseTo(16.61e6, within(0.01e6));
        CouponResult four = CouponCalculator.calculate(part, read("lap", "20 MPa", "21 MPa", "22 MPa", "23 MPa"))
                .get(0);
        assertThat(four.bound().orElseThrow().allowedPa()).isEmpty();
        assertThat(four.bound().orElseThrow().findings().get(0).sentence()).contains("4 pieces are too few");
    }

    @Test
    void should_bound_no_hardness_and_no_single_result() {
        Part part = part(
                new Coupon("b", "Barcol", CouponMeasure.BARCOL, 2, ""),
                new Coupon("t", "Strips", CouponMeasure.TENSILE, 2, ""));
        List<TakenReading> all = new ArrayList<>(read("b", "47", "48"));
        all.addAll(read("t", "300 MPa"));
        assertThat(CouponCalculator.calculate(part, all))
                .allSatisfy(c -> assertThat(c.bound()).isEmpty());
    }

    @Test
    void should_tell_no_deviation_of_one_result_and_nothing_of_none() {
        Part part = part(
                new Coupon("b", "Barcol", CouponMeasure.BARCOL, 1, ""),
                new Coupon("f", "Fibre", CouponMeasure.BURN_OFF, 3, ""));
        List<CouponResult> all = CouponCalculator.calculate(part, read("b", "47"));
        assertThat(all.get(0).mean()).hasValue(47);
        assertThat(all.get(0).deviation()).isEmpty();
        assertThat(all.get(0).missing()).isZero();
        assertThat(all.get(1).mean()).isEmpty();
        assertThat(all.get(1).variation()).isEmpty();
        assertThat(all.get(1).missing()).isEqualTo(3);
    }

    @Test
    void should_take_no_value_that_its_test_cannot_give() {
        assertThat(CouponCalculator.value(CouponMeasure.BARCOL, "101")).isEmpty();
        assertThat(CouponCalculator.value(CouponMeasure.BARCOL, "47 MPa")).isEmpty();
        assertThat(CouponCalculator.value(CouponMeasure.BURN_OFF, "120 %")).isEmpty();
        assertThat(CouponCalculator.value(CouponMeasure.BURN_OFF, "58.2 %").orElseThrow())
                .isCloseTo(0.582, within(1e-12));
        assertThat(CouponCalculator.value(CouponMeasure.TENSILE, "0 MPa")).isEmpty();
        assertThat(CouponCalculator.value(CouponMeasure.TENSILE, "fast")).isEmpty();
        assertThat(CouponCalculator.value(CouponMeasure.TENSILE, "50 ksi")).isNotEmpty();
    }
}
