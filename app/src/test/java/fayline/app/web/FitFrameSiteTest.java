package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.TakenReading;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The trial of a sprung frame through its page: read into the record, answered from it, corrected in it. */
class FitFrameSiteTest {
    private static final String RIGHT = "/fit/pane-right/frame";

    @TempDir
    Path folder;

    private ServedDemo demo;
    private Browser browser;

    @BeforeEach
    void start() throws Exception {
        demo = ServedDemo.in(folder);
        browser = new Browser(demo.server());
    }

    @AfterEach
    void stop() {
        demo.close();
    }

    private List<TakenReading> widths(String fit) {
        return demo.view().record().readings("ousel-1").stream()
                .filter(r -> r.kind().equals("width") && r.of().equals(fit))
                .toList();
    }

    private HttpResponse<String> send(String page, String action, String... fields) throws Exception {
        return browser.send(page, action, Browser.and(fields, "by", "runa"));
    }

    /** Types a width into what the page asks for next. */
    private void read(String width, String value) throws Exception {
        String page = RIGHT + "?width=" + width;
        String html = browser.page(page);
        HttpResponse<String> r = send(
                page,
                RIGHT,
                "width",
                Browser.hidden(html, "width"),
                "state",
                Browser.hidden(html, "state"),
                "trial",
                Browser.hidden(html, "trial"),
                "unit",
                "mm",
                "value",
                value);
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
    }

    @Test
    void should_tell_how_the_left_came_out_and_what_the_right_begins_with() throws Exception {
        assertThat(browser.page("/fit/pane-left/frame"))
                .contains("Bonded, outside its tolerance")
                .contains("687.5 mm, 2.5 mm too narrow")
                .contains("0.80 for 1, by the trials")
                .contains("689.9 mm, read by Runa with beam calipers")
                .contains("692.5 mm")
                .contains("beam calipers");
        // To find: 690 + 2.4 that the bond will take; bare: 692.5 + (692.4 - 689.9) / 0.8.
        assertThat(browser.page(RIGHT))
                .contains("No adhesive yet: make a trial")
                .contains("692.4 mm")
                .contains("695.6 mm, as taught")
                .contains("Taught by Pane in the rebate of its frame, left.")
                .contains("one build");
        assertThat(browser.page("/fit/pane-right"))
                .contains("Width rear: the sheet sprang the frame by 2.6 mm inwards")
                .contains("695.6 mm");
    }

    @Test
    void should_keep_each_width_as_typed_and_say_go_on_after_two_trials() throws Exception {
        read("rear", "27 3/8 in");
        assertThat(widths("pane-right")).singleElement().satisfies(r -> {
            assertThat(r.value()).isEqualTo("27 3/8 in");
            assertThat(r.state()).isEqualTo("bare");
            assertThat(r.station()).isEqualTo("rear");
        });
        read("rear", "691.9");
        assertThat(browser.page(RIGHT + "?width=rear"))
                .contains("No adhesive yet: one more trial")
                .contains("a second time")
                .contains("0.80 for 1, as taught");
        assertThat(browser.page("/fit/pane-right/card")).contains("the trials have not come out yet");
        read("rear", "695.9");
        read("rear", "692.6");
        assertThat(browser.page(RIGHT)).contains("Bond at this bare width");
        assertThat(browser.page("/fit/pane-right/card"))
                .doesNotContain("the trials have not come out yet")
                .contains("Bond at this bare width");
        assertThat(widths("pane-right")).extracting(TakenReading::value).contains("691.9 mm");
    }

    @Test
    void should_keep_what_was_typed_and_say_what_is_wrong() throws Exception {
        HttpResponse<String> r =
                send(RIGHT, RIGHT, "width", "rear", "state", "bare", "trial", "1", "unit", "mm", "value", "wide");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("value=\"wide\"").contains("The reading was not recorded.");
        r = send(RIGHT, RIGHT, "width", "middle", "state", "bare", "trial", "1", "unit", "mm", "value", "-3");
        assertThat(r.body()).contains("a width of pane-right: front, rear").contains("a width above nought");
        r = send(RIGHT, RIGHT, "width", "rear", "state", "hung", "trial", "1", "unit", "mm", "value", "690");
        assertThat(r.body()).contains("bare, trial-clamped, as-bonded");
        assertThat(widths("pane-right")).isEmpty();
        assertThat(browser.get("/fit/no-such/frame").statusCode()).isEqualTo(404);
    }

    @Test
    void should_correct_a_width_or_take_it_back_by_a_new_entry() throws Exception {
        read("rear", "695.9");
        read("rear", "592.6");
        String wrong = String.valueOf(widths("pane-right").get(1).seq());
        HttpResponse<String> r = send(RIGHT, RIGHT + "/correct", "entry", wrong, "new", "much", "why", "a slip");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("The correction was not recorded.").contains("found \"much\", expected a length");
        r = send(RIGHT, RIGHT + "/correct", "entry", wrong, "new", "-3", "why", "a slip");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("found \"-3 mm\", expected a width above nought");
        assertThat(widths("pane-right")).extracting(TakenReading::value).containsExactly("695.9 mm", "592.6 mm");
        assertThat(send(RIGHT, RIGHT + "/correct", "entry", wrong, "new", "692.6", "why", "a slip")
                        .statusCode())
                .isEqualTo(200);
        assertThat(widths("pane-right")).extracting(TakenReading::value).containsExactly("695.9 mm", "692.6 mm");
        assertThat(send(RIGHT, RIGHT + "/correct", "entry", wrong, "new", "", "why", "the wrong arch")
                        .statusCode())
                .isEqualTo(200);
        assertThat(widths("pane-right")).hasSize(1);
        assertThat(send(RIGHT, RIGHT + "/correct", "entry", "1", "new", "", "why", "not mine")
                        .body())
                .contains("Entry 1 is no width of this frame.");
    }

    @Test
    void should_name_a_width_in_the_fits_file_where_none_is_named() throws Exception {
        String page = "/fit/canopy-right/frame";
        assertThat(browser.page(page)).contains("Name the width first");
        HttpResponse<String> r = send(
                page,
                page + "/name",
                "id",
                "W1",
                "where",
                "sill to top: the middle",
                "wanted",
                "30 in",
                "tolerance",
                "1/16 in",
                "deviation",
                "0.5 mm");
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        assertThat(browser.page(page)).contains("Width W1, trial 1: bare").contains("30 in ± 1/16 in");
        r = send(
                page, page + "/name", "id", "W2", "where", "x", "wanted", "wide", "tolerance", "", "deviation", "1 mm");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("value=\"wide\"");
    }

    @Test
    void should_show_clamp_forces_spring_back_and_pins_and_say_why() throws Exception {
        String page = browser.page("/fit/pane-right");
        assertThat(page)
                .contains("The frame, clamped and let go")
                .contains("It rests on: the left's figures, until its own pane is here.")
                .contains("Latch pin, rear")
                .contains("Assumed strength")
                .contains("That is no verdict")
                .contains("times as large as they are")
                .doesNotContain("Within the entered strength");
        for (String of : List.of("clamps", "release", "pins", "bond", "stiffness")) {
            String why = browser.page("/fit/pane-right/frame/why?of=" + of);
            assertThat(why).as(of).contains("fits.yaml, line ").contains("assumed");
        }
        assertThat(browser.page("/fit/pane-right/frame/why?of=clamps"))
                .contains("[liu-hu1997]")
                .contains("8.0 mm");
        assertThat(browser.get("/fit/pane-right/frame/why?of=nothing").statusCode())
                .isEqualTo(404);
        assertThat(browser.get("/fit/canopy-right/frame/why?of=clamps").statusCode())
                .isEqualTo(404);
        assertThat(browser.page("/fit/pane-right/card"))
                .contains("The frame: clamps, and what they leave")
                .contains("Do not force a frame shut")
                .contains("peel lets go first");
    }

    @Test
    void should_tell_the_frame_in_pounds_and_inches_to_who_reads_those() throws Exception {
        browser.cookie("units", "inch");
        assertThat(browser.page("/fit/pane-right"))
                .contains(" lbf")
                .contains("lbf per in")
                .doesNotContain(" N down")
                .doesNotContain("150 N ");
        assertThat(browser.page("/fit/pane-right/frame")).contains("more than 33.7 lbf");
        assertThat(browser.page("/fit/pane-right/frame/why?of=stiffness"))
                .contains("lbf in²")
                .doesNotContain("N mm²");
    }
}
