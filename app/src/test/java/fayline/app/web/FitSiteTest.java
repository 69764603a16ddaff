package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.project.fit.Fit;
import fayline.flow.record.TakenReading;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The fits of the demonstration through their pages: looked at, read by the keypad's form, pasted. */
class FitSiteTest extends AtTheDemo {
    private static final String READ = "/fit/canopy-right/read";

    private static List<TakenReading> readings(String state) {
        return demo.view().record().readings("ousel-1").stream()
                .filter(r -> r.of().equals("canopy-right") && r.state().equals(state))
                .toList();
    }

    private static List<String> marks() {
        return demo.view().definition().fits().find("canopy-right").orElseThrow().stations().stream()
                .map(s -> s.id())
                .toList();
    }

    private HttpResponse<String> send(String page, String state, String... more) throws Exception {
        String html = browser.page(READ + "?state=" + state);
        return sendFrom(html, page, state, more);
    }

    private HttpResponse<String> sendFrom(String html, String page, String state, String... more) throws Exception {
        return browser.sendFrom(
                html, page, Browser.and(more, "by", demo.person(), "state", state, "kind", "gap", "unit", "mm"));
    }

    @Test
    void should_list_every_fit_with_its_part_and_what_was_read() throws Exception {
        assertThat(browser.page("/fits"))
                .contains("Canopy half in its opening, left")
                .contains("Canopy half in its opening, right")
                .contains("/part/canopy-frame-left")
                .contains("/fit/canopy-right/read");
    }

    @Test
    void should_show_readings_as_typed_and_the_cautions_on_the_page_of_a_fit() throws Exception {
        assertThat(browser.page("/fit/canopy-left"))
                .contains("3.1 mm")
                .contains("Computed figures release nothing by themselves")
                .contains("The opposite hand");
    }

    @Test
    void should_recommend_a_scheme_in_words_and_only_help_that_can_be_seen() throws Exception {
        assertThat(browser.page("/fit/canopy-right")).containsOnlyOnce("(recommended)");
        assertThat(browser.page("/fit/canopy-left"))
                .containsOnlyOnce("(recommended)")
                .contains("how well that is known is in these chances")
                .doesNotContainPattern("goes from ([0-9.]+ mm) to \\1");
    }

    @Test
    void should_answer_not_found_when_there_is_no_such_fit() throws Exception {
        assertThat(browser.get("/fit/no-such").statusCode()).isEqualTo(404);
        assertThat(browser.get("/fit/no-such/read").statusCode()).isEqualTo(404);
    }

    @Test
    void should_keep_a_bare_number_with_its_unit_and_go_to_the_next_station_when_next_is_pressed() throws Exception {
        String first = marks().get(0);
        HttpResponse<String> then = send(READ, "trimmed", "station", first, "value", "2.85");
        assertThat(then.statusCode()).isEqualTo(200);
        assertThat(then.body()).contains("Station " + marks().get(1)).contains("2.85 mm");
        assertThat(readings("trimmed")).extracting(TakenReading::value).containsExactly("2.85 mm");
        assertThat(readings("trimmed")).extracting(TakenReading::station).containsExactly(first);
    }

    @Test
    void should_keep_one_reading_when_a_form_is_sent_twice_and_two_when_its_value_differs() throws Exception {
        String html = browser.page(READ + "?state=hung");
        String[] typed = {"station", marks().get(1), "value", "3/32 in"};
        sendFrom(html, READ, "hung", typed);
        sendFrom(html, READ, "hung", typed);
        assertThat(readings("hung")).extracting(TakenReading::value).containsExactly("3/32 in");
        sendFrom(html, READ, "hung", "station", marks().get(1), "value", "2.5");
        assertThat(readings("hung")).extracting(TakenReading::value).containsExactly("3/32 in", "2.5 mm");
    }

    @Test
    void should_refuse_with_the_text_kept_in_the_form_when_it_is_no_length() throws Exception {
        HttpResponse<String> r = send(READ, "latched", "station", marks().get(0), "value", "2..8");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body()).contains("value=\"2..8\"").contains("2..8");
        assertThat(readings("latched")).isEmpty();
        assertThat(send(READ, "latched", "station", marks().get(0), "value", "").statusCode())
                .isEqualTo(422);
    }

    @Test
    void should_name_each_refused_line_and_keep_the_others_when_many_are_pasted() throws Exception {
        List<String> m = marks();
        String text = m.get(0) + " 2.9\nX9 3.0\n" + m.get(1) + "; 118 thou\n\n" + m.get(2) + ",3.2 mm\nF";
        HttpResponse<String> r = send("/fit/canopy-right/many", "struts", "text", text);
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body())
                .contains("3 readings are kept: " + m.get(0) + ", " + m.get(1) + ", " + m.get(2))
                .contains("Line 2, \"X9 3.0\"")
                .contains("Line 6, \"F\"")
                .contains(">X9 3.0\nF</textarea>");
        assertThat(readings("struts")).extracting(TakenReading::value).containsExactly("2.9 mm", "118 thou", "3.2 mm");
    }

    @Test
    void should_not_ask_again_for_a_station_when_it_is_skipped() throws Exception {
        List<String> m = marks();
        String html = browser.page(READ + "?state=sealed&at=" + m.get(0));
        String skip = html.replaceAll("(?s).*<a class=\"button\" href=\"([^\"]*)\">Skip</a>.*", "$1")
                .replace("&amp;", "&");
        assertThat(skip).contains("passed=" + m.get(0)).endsWith("at=" + m.get(1));
        HttpResponse<String> then = sendFrom(
                browser.page(skip), READ, "sealed", "station", m.get(m.size() - 1), "value", "3.0", "passed", m.get(0));
        assertThat(then.body()).contains(">Station " + m.get(1) + "</h1>");
    }

    @Test
    void should_ask_on_the_spot_about_a_first_reading_with_a_lost_point() throws Exception {
        // on a fit of which no other test asks
        String read = "/fit/pane-right/read";
        HttpResponse<String> r =
                sendFrom(browser.page(read + "?state=hot"), read, "hot", "station", "S1", "value", "350");
        assertThat(r.body())
                .contains("Read S1 again.")
                .contains("350 mm: this is far from the ")
                .contains("Keep it as it is");
    }

    @Test
    void should_ask_again_on_the_spot_when_a_reading_is_odd_and_go_on_when_it_is_kept() throws Exception {
        List<String> m = marks();
        for (String mark : m.subList(0, m.size() - 1)) {
            send(READ, "painted", "station", mark, "value", "3.0");
        }
        String last = m.get(m.size() - 1);
        HttpResponse<String> odd = send(READ, "painted", "station", last, "value", "9.0");
        assertThat(odd.body())
                .contains(">Station " + last + "</h1>")
                .contains("Read " + last + " again.")
                .contains("Keep it as it is");
        String keep = odd.body()
                .replaceAll("(?s).*<a class=\"button\" href=\"([^\"]*)\">Keep it as it is</a>.*", "$1")
                .replace("&amp;", "&");
        // the canopy half is bulged: its flush is asked for before the answer
        assertThat(browser.page(keep))
                .contains(">Station " + m.get(0) + "</h1>")
                .contains("Flush, ");
        assertThat(browser.page("/fit/canopy-right")).contains("Does it fit if moved?");
        assertThat(readings("painted")).extracting(TakenReading::value).contains("9.0 mm");
    }

    /** A closed line of 500 by 300 mm. */
    private static final String SQUARE_DXF = String.join(
            "\n",
            "0 SECTION 2 HEADER 9 $INSUNITS 70 4 0 ENDSEC 0 SECTION 2 ENTITIES 0 LWPOLYLINE 8 0 90 4 70 1 10 0 20 0 10 500"
                    .concat(" 20 0 10 500 20 300 10 0 20 300 0 ENDSEC 0 EOF")
                    .split(" "));

    private static PartOutline outline(String fit) {
        Fit found = demo.view().definition().fits().get(fit);
        return OutlineCalculator.calculate(found.outline().orElseThrow())
                .outline()
                .orElseThrow();
    }

    private HttpResponse<String> begin(String name, String... more) throws Exception {
        String[] base = {
            "by",
            demo.person(),
            "name",
            name,
            "hand",
            "left",
            "gap",
            "3",
            "tolerance",
            "0.5",
            "flush",
            "-0.2 mm",
            "flush-tolerance",
            "0.3",
            "gauge",
            "taper gauge",
            "temperature",
            "21",
            "stationing",
            "spread",
            "spread",
            "6"
        };
        return browser.send("/fits/new", "/fits/new", Browser.and(more, base));
    }

    @Test
    void should_begin_a_fit_from_the_form_when_its_edge_is_given_in_any_way() throws Exception {
        assertThat(begin("Way one", "edge", "rectangle", "width", "600", "height", "16 in", "radius", "20")
                        .body())
                .contains(">Station 1</h1>")
                .contains("value=\"taper gauge\"")
                .contains("value=\"21\"");
        assertThat(begin(
                                "Way two",
                                "edge",
                                "corners",
                                "edge-unit",
                                "in",
                                "corners",
                                "0 0\n20; 0\n20 12\n0, 12".replace(",", " "))
                        .body())
                .contains(">Station 1</h1>");
        assertThat(begin(
                                "Way three",
                                "edge",
                                "points",
                                "edge-unit",
                                "mm",
                                "points",
                                "0 0\n300 0\n300 200\n0 200",
                                "corner-points",
                                "1, 2, 3, 4")
                        .body())
                .contains(">Station 1</h1>");
        assertThat(begin("Way six", "edge", "drawing", "drawing", SQUARE_DXF).body())
                .contains(">Station 1</h1>");
        assertThat(outline("way-six").perimeterMm()).isCloseTo(2 * (500 + 300), within(1e-6));
        Fit two = demo.view().definition().fits().find("way-two").orElseThrow();
        assertThat(two.stations()).hasSize(6);
        assertThat(two.outline().orElseThrow().drawn().outline().orElseThrow().perimeterMm())
                .isCloseTo(64 * 25.4, within(1e-6));
        assertThat(two.wanted().flush().asTyped()).isEqualTo("-0.2 mm");
        assertThat(two.wanted().flushTolerance().asTyped()).isEqualTo("0.3 mm");
    }

    @Test
    void should_refuse_with_everything_kept_in_the_form_when_its_edge_cannot_be_read() throws Exception {
        HttpResponse<String> r = begin("Way four", "edge", "rectangle", "width", "wide", "height", "400");
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body())
                .contains("Length of the edge: found")
                .contains("value=\"wide\"")
                .contains("value=\"Way four\"")
                .contains("value=\"-0.2 mm\"");
        assertThat(begin("Way five", "edge", "drawing", "drawing", "").statusCode())
                .isEqualTo(422);
        assertThat(demo.view().definition().fits().find("way-four")).isEmpty();
    }
}
