package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.coupon.LookAtCoupons;
import fayline.flow.result.coupon.CouponResult;
import org.junit.jupiter.api.Test;

/** The witness pieces of the demonstration's spar. */
class CouponSiteTest extends AtTheDemo {
    private static final String PAGE = "/part/spar-left/coupons";

    private static CouponResult result(String coupon) {
        return LookAtCoupons.of(
                        demo.view(),
                        demo.view().definition().parts().find("spar-left").orElseThrow())
                .stream()
                .filter(c -> c.coupon().id().equals(coupon))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_tell_how_results_scatter_and_count_one_more_that_is_entered_and_withdrawn() throws Exception {
        // 46, 48, 45, 47: mean 46.5, s = sqrt((0.25 + 2.25 + 2.25 + 0.25) / 3) = 1.29, CV 2.8 %.
        assertThat(browser.page(PAGE))
                .contains("4 of 5 tested", "46.5", "1.3", "2.8 %", "ASTM D2583", "glass-web-shear");
        assertThat(browser.page("/part/spar-left")).contains("Cap hardness: 4 of 5", PAGE);
        browser.send(PAGE, PAGE, "by", "runa", "coupon", "cap-hardness", "value", "44", "piece", "5");
        assertThat(browser.page(PAGE)).contains("5 of 5 tested", "piece 5");
        assertThat(result("cap-hardness").mean()).hasValue(46);
        long entry = result("cap-hardness").readings().get(4).seq();
        browser.send(PAGE, PAGE + "/" + entry + "/withdraw", "by", "runa", "why", "The wrong side was struck.");
        assertThat(result("cap-hardness").mean()).hasValue(46.5);
    }

    @Test
    void should_refuse_what_is_no_result_of_its_test_and_say_what_was_expected() throws Exception {
        assertThat(browser.send(PAGE, PAGE, "by", "runa", "coupon", "cap-hardness", "value", "147")
                        .body())
                .contains("a Barcol number from 0 to 100", "147");
        assertThat(browser.send(PAGE, PAGE, "by", "runa", "coupon", "nothing", "value", "47")
                        .body())
                .contains("witness pieces of spar-left: cap-hardness, web-burn");
        assertThat(browser.page("/part/spar-right/coupons")).contains("None are planned for this part");
    }
}
