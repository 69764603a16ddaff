package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A bulged hatch begun on the spot and read: 600 by 400 mm, its surface falling away by 30 degrees at every edge. By hand: it lies 0.4 mm
 * forward and 0.5 mm in, so that aft the gap reads 3 + 0.4 cos 30 - 0.5 sin 30 and the flush -(0.4 sin 30 + 0.5 cos 30), and so on.
 */
class CurvedFitSiteTest extends AtTheDemo {
    private static final String STATIONS = """
            A1; aft, low; 300 -100; 1 0; ; 30
            A2; aft, high; 300 100; 1 0; ; 30
            U1; upper, aft; 150 200; 0 1; ; 30
            U2; upper, front; -150 200; 0 1; ; 30
            F1; front, high; -300 100; -1 0; ; 30
            F2; front, low; -300 -100; -1 0; ; 30
            L1; lower, front; -150 -200; 0 -1; 0; 30 deg
            L2; lower, aft; 150 -200; 0 -1; 0 mm; 30""";
    private static final String GAPS = """
            A1 3.1
            A2 3.1
            U1 2.75
            U2 2.75
            F1 2.4
            F2 2.4
            L1 2.75
            L2 2.75""";
    private static final String FLUSHES = """
            A1 -0.63
            A2 -0.63
            U1 -0.43
            U2 -0.43
            F1 -0.23
            F2 -0.23
            L1 -0.43
            L2 -0.43""";

    private HttpResponse<String> begin(String name, String stations) throws Exception {
        return browser.send(
                "/fits/new",
                "/fits/new",
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
                "0",
                "flush-tolerance",
                "0.3",
                "stationing",
                "typed",
                "stations",
                stations);
    }

    private HttpResponse<String> paste(String fit, String kind, String text) throws Exception {
        String html = browser.page("/fit/" + fit + "/read?kind=" + kind);
        return browser.sendFrom(
                html,
                "/fit/" + fit + "/many",
                "by",
                demo.person(),
                "state",
                "trimmed",
                "kind",
                kind,
                "unit",
                "mm",
                "text",
                text);
    }

    @Test
    void should_answer_in_space_with_why_and_card_when_a_bulged_part_is_read() throws Exception {
        assertThat(begin("Bulged hatch", STATIONS).body()).contains(">Station A1</h1>");
        assertThat(paste("bulged-hatch", "gap", GAPS).statusCode()).isEqualTo(200);
        assertThat(browser.page("/fit/bulged-hatch"))
                .contains("This part is curved, and no flush is read")
                .contains("all six motions of the part count");
        assertThat(paste("bulged-hatch", "flush", FLUSHES).statusCode()).isEqualTo(200);
        String page = browser.page("/fit/bulged-hatch");
        assertThat(page)
                .contains("0.4 mm aft, 0.5 mm outboard, about the middle of the stations")
                .contains("Flush, with the same move")
                .contains("the worst flush 0.0 mm at")
                .doesNotContain("no flush is read");
        assertThat(browser.page("/fit/bulged-hatch/why?of=move"))
                .contains("0.866, 0.000, -0.500; 0.500, 0.000, 0.866")
                .contains("A1: flush as read")
                .contains("all gaps and flushes are judged together");
        assertThat(browser.page("/fit/bulged-hatch/card")).contains("0.5 mm outboard");
    }

    @Test
    void should_name_file_line_and_station_when_a_lean_cannot_be() throws Exception {
        HttpResponse<String> r = begin("Leaning hatch", STATIONS.replace("1 0; ; 30\nA2", "1 0; ; 130\nA2"));
        assertThat(r.statusCode()).isEqualTo(422);
        assertThat(r.body())
                .contains("fits/leaning-hatch.yaml:")
                .contains("at station A1, expected a lean from -90 deg to 90 deg");
        assertThat(List.of(r.body().split("\n"))).anyMatch(l -> l.contains("130"));
    }
}
