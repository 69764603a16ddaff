package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.traveller.MixCup;
import fayline.app.usecase.traveller.StepAsks;
import fayline.flow.record.trouble.Deviation;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The stores through their pages: lots received, counted, followed; half the hardener raised at once. */
class StoresSiteTest extends AtTheDemo {
    private HttpResponse<String> receive(String lot, String stuff, String quantity, String... more) throws Exception {
        return browser.send(
                "stores/receive",
                "stores/receive",
                Browser.and(
                        more,
                        "by",
                        demo.person(),
                        "lot",
                        lot,
                        "stuff",
                        stuff,
                        "quantity",
                        quantity,
                        "received",
                        "2026-03-03"));
    }

    private static String wetStep() {
        return demo.view().result().steps().stream()
                .filter(s -> s.needs().stream().anyMatch(n -> n.of().equals("er-slow")))
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static void mixesWithoutReading(String step, int many) {
        for (int i = 1; i <= many; i++) {
            Outcome o = new MixCup(demo.open().shop())
                    .mix(
                            new Sent(Sent.freshId(), demo.person(), false),
                            step,
                            StepAsks.NOTHING,
                            new MixCup.Cup(String.valueOf(i), "er-slow", "R-22", "H-22", "", "", "no scale"),
                            BenchTime.of(Optional.of(demo.open().shop().minute())));
            assertThat(o.stands()).isTrue();
        }
    }

    @Test
    void should_take_stock_of_both_parts_and_name_all_22_mixes_and_their_parts_when_half_the_hardener_went_in()
            throws Exception {
        receive("R-22", "er-slow resin", "12.00 kg");
        receive("H-22", "er-slow hardener", "3.60 kg");
        String step = wetStep();
        mixesWithoutReading(step, 22);

        browser.send(
                "stores/count",
                "stores/count",
                "by",
                demo.person(),
                "lot",
                "R-22",
                "left",
                "7.00 kg",
                "lot",
                "H-22",
                "left",
                "2.85 kg",
                "lot",
                "L-2611",
                "left",
                "");

        String page = browser.page("stores/counts");
        assertThat(page)
                .contains("half the hardener")
                .contains("100:15.0")
                .contains("ratio not kept")
                .contains("In doubt: mixes (22)")
                .contains("batch 22")
                .contains("oiml-r87");
        String[] bits = step.split("/", -1);
        List<Deviation> open = demo.open().shop().state().trouble().open();
        assertThat(open)
                .anyMatch(d ->
                        d.about().equals(bits[0] + "/" + bits[1]) && d.text().contains("half the hardener"));
        assertThat(browser.page("stores/lot?lot=H-22"))
                .contains("2.85 kg")
                .contains("counted")
                .contains("no reading");
        assertThat(browser.page("stores/in?made=" + bits[1]))
                .contains("lot R-22")
                .contains("lot H-22");
    }

    @Test
    void should_say_what_is_wrong_and_keep_what_was_typed_when_a_lot_cannot_be_received() throws Exception {
        HttpResponse<String> r = receive("X 1", "g-200", "plenty", "price", "9 per kg");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body())
                .contains("The lot was not taken into the stores.")
                .contains("plenty")
                .contains("value=\"9 per kg\"");
        assertThat(demo.open().shop().state().stock().receipt("X 1")).isEmpty();
    }

    @Test
    void should_list_every_lot_with_what_is_left_lead_to_its_page_and_print_its_label() throws Exception {
        assertThat(browser.page("stores")).contains("stores/lot?lot=L-2611").contains("Take stock");
        String lot = browser.page("stores/lot?lot=L-2611");
        assertThat(lot).contains("What moved it").contains("received").contains("reckoned");
        byte[] label = browser.bytes("stores/lot/label.pdf?lot=L-2611");
        assertThat(new String(label, 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF-");
        assertThat(browser.get("stores/lot?lot=none").statusCode()).isEqualTo(404);
        assertThat(browser.get("stores/lot/certificate?lot=L-2611").statusCode())
                .isEqualTo(404);
    }

    @Test
    void should_keep_a_certificate_with_its_lot_and_send_it_in_a_sandbox() throws Exception {
        String html = browser.page("stores/receive");
        byte[] pdf = "%PDF-1.4 a certificate".getBytes(java.nio.charset.StandardCharsets.US_ASCII);
        HttpResponse<String> r = browser.postParts(
                "stores/receive",
                List.of(),
                "csrf",
                Browser.hidden(html, "csrf"),
                "once",
                Browser.hidden(html, "once"),
                "by",
                demo.person(),
                "lot",
                "C-1",
                "stuff",
                "g-200",
                "quantity",
                "10 m2",
                "received",
                "2026-03-03",
                "certificate\"; filename=\"c.pdf",
                new String(pdf, java.nio.charset.StandardCharsets.US_ASCII));
        assertThat(r.statusCode()).as(r.body()).isBetween(200, 399);
        HttpResponse<byte[]> sent = browser.whole("stores/lot/certificate?lot=C-1");
        assertThat(sent.body()).isEqualTo(pdf);
        assertThat(sent.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(sent.headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("sandbox");
    }
}
