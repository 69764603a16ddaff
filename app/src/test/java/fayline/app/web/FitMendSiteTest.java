package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.project.fit.Fit;
import fayline.flow.record.TakenReading;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;

/** Readings of the demonstration's fits put right through their pages, and a fit given a part and taken off it. */
class FitMendSiteTest extends AtTheDemo {
    private static final String FIT = "/fit/canopy-left";

    private static TakenReading reading(String state, String station) {
        return demo.view().record().readings("ousel-1").stream()
                .filter(r -> r.of().equals("canopy-left")
                        && r.kind().equals("gap")
                        && r.state().equals(state)
                        && r.station().equals(station))
                .findFirst()
                .orElseThrow();
    }

    private HttpResponse<String> send(String page, String to, String... more) throws Exception {
        return browser.send(page, to, Browser.and(more, "by", demo.person()));
    }

    @Test
    void should_lead_from_the_fit_to_its_reading_and_strike_the_old_one_through_when_it_is_corrected()
            throws Exception {
        TakenReading r = reading("struts", "S2");
        String page = FIT + "/reading/" + r.seq();
        assertThat(browser.page(FIT)).contains("href=\"" + page + "\"");
        assertThat(browser.page(page)).contains("value=\"" + r.value() + "\"");
        HttpResponse<String> then = send(
                page,
                page + "/correct",
                "value",
                "3.35",
                "nogo",
                "",
                "station",
                "S2",
                "state",
                "struts",
                "why",
                "read beside the mark");
        assertThat(then.body())
                .contains("<s>" + r.value() + "</s>")
                .contains("read beside the mark")
                .contains("3.35 mm");
        assertThat(reading("struts", "S2").value()).isEqualTo("3.35 mm");
    }

    @Test
    void should_ask_for_a_reason_when_a_reading_is_withdrawn_and_count_it_again_when_asked() throws Exception {
        TakenReading r = reading("latched", "R1");
        String page = FIT + "/reading/" + r.seq();
        HttpResponse<String> bare = send(page, page + "/withdraw", "why", "");
        assertThat(bare.statusCode()).isEqualTo(422);
        assertThat(bare.body()).contains("Say why");
        assertThat(reading("latched", "R1")).isEqualTo(r);
        assertThat(send(page, page + "/withdraw", "why", "gauge slipped").body())
                .contains("<s>" + r.value() + "</s>")
                .contains("gauge slipped");
        assertThat(demo.view().record().readings()).noneMatch(x -> x.seq() == r.seq());
        assertThat(browser.page(page)).contains("Count it again");
        send(page, page + "/correct", "value", r.value(), "nogo", "", "station", "R1", "state", "latched", "why", "no");
        assertThat(reading("latched", "R1").value()).isEqualTo(r.value());
    }

    @Test
    void should_say_what_is_wrong_with_everything_kept_when_a_correction_is_no_length() throws Exception {
        TakenReading r = reading("hung", "F1");
        String page = FIT + "/reading/" + r.seq();
        HttpResponse<String> wrong = send(
                page, page + "/correct", "value", "3..1", "nogo", "", "station", "F2", "state", "hung", "why", "typo");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("value=\"3..1\"").contains("value=\"typo\"");
        assertThat(reading("hung", "F1")).isEqualTo(r);
        assertThat(browser.get("/fit/canopy-right/reading/" + r.seq()).statusCode())
                .isEqualTo(404);
        assertThat(browser.get(FIT + "/reading/x").statusCode()).isEqualTo(404);
    }

    @Test
    void should_give_a_fit_its_part_and_take_it_off_again_with_its_readings_kept() throws Exception {
        send(
                "/fits/new",
                "/fits/new",
                "name",
                "Side pane",
                "hand",
                "left",
                "gap",
                "3",
                "tolerance",
                "0.5",
                "flush",
                "0",
                "flush-tolerance",
                "0.5",
                "edge",
                "rectangle",
                "width",
                "500",
                "height",
                "300",
                "stationing",
                "spread",
                "spread",
                "8");
        String read = "/fit/side-pane/read";
        send(read, read, "station", "1", "value", "2.9", "kind", "gap", "unit", "mm", "state", "bonded");
        assertThat(send("/fit/side-pane", "/fit/side-pane/attach", "part", "canopy-pane-right")
                        .body())
                .contains("belongs to")
                .contains("fore and aft");
        assertThat(fit().part()).contains("canopy-pane-right");
        assertThat(send("/fit/side-pane", "/fit/side-pane/attach", "part", "no-such")
                        .statusCode())
                .isEqualTo(422);
        assertThat(send("/fit/side-pane", "/fit/side-pane/detach").body()).contains("belongs to no part now");
        assertThat(fit().part()).isEmpty();
        assertThat(browser.page("/fit/side-pane")).contains("2.9 mm");
    }

    private static Fit fit() {
        return demo.view().definition().fits().find("side-pane").orElseThrow();
    }

    @Test
    void should_lead_from_today_and_from_the_card_to_the_gaps_when_a_dry_fit_is_due() throws Exception {
        String today = browser.page("/");
        assertThat(today).contains("Fits due within two weeks").contains("href=\"/fit/pane-right/read\"");
        assertThat(browser.page("/card/pane-to-frame-right/1/dry-fit"))
                .contains("href=\"/fit/pane-right/read\"")
                .contains("Read the gaps");
        assertThat(browser.page("/card/pane-to-frame-right/1/first-pass"))
                .contains("href=\"/fit/pane-right\"")
                .contains("See the move");
        assertThat(browser.page("/card/pane-to-frame-right/1/mask")).doesNotContain("/fit/");
    }
}
