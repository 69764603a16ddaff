package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.fit.LookAtFits;
import fayline.flow.reading.FitReading;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** From a figure of a fit back to the reading or the line it comes from, as an engineer would ask. */
class FitWhySiteTest extends AtTheDemo {
    private static final Pattern FIGURE_IN_MM = Pattern.compile("[0-9] mm\\b");

    private static FitResult result(String fit) {
        return LookAtFits.of(demo.view(), fit, false).orElseThrow().result();
    }

    private static List<String> links(String html, String start) {
        Matcher m =
                Pattern.compile("href=\"(" + Pattern.quote(start) + "[^\"]*)\"").matcher(html);
        return m.results().map(r -> r.group(1).replace("&amp;", "&")).distinct().toList();
    }

    @Test
    void should_lead_back_to_reader_and_line_in_two_clicks_when_the_move_is_asked() throws Exception {
        FitResult r = result("pane-left");
        FitAdvice a = r.advice().orElseThrow();
        List<String> whys = links(browser.page("/fit/pane-left"), "/fit/pane-left/why");
        assertThat(whys).contains("/fit/pane-left/why?of=move", "/fit/pane-left/why?of=gaps");
        String why = browser.page("/fit/pane-left/why?of=move");
        assertThat(why).contains(a.sentence().toString()).contains("[goldstein1980]");
        a.atMarks().forEach(m -> assertThat(why).contains(m.toString()));
        r.now().orElseThrow().stations().stream()
                .flatMap(v -> v.typed().stream())
                .filter(t -> t.kind().tellsGap())
                .map(FitReading::seq)
                .forEach(seq -> assertThat(why).contains("; entry " + seq));
        // the second click: the station's readings, and the line of the definition
        List<String> readings = links(why, "/fit/pane-left/read");
        assertThat(readings).hasSameSizeAs(a.rows());
        assertThat(browser.get(readings.get(0)).statusCode()).isEqualTo(200);
        List<String> lines = links(why, "/definition/file?path=");
        assertThat(lines).isNotEmpty();
        for (String line : lines) {
            Matcher at = Pattern.compile("path=([^#]*)#line-(\\d+)").matcher(line);
            assertThat(at.find()).as(line).isTrue();
            List<String> text =
                    java.nio.file.Files.readAllLines(Path.of("../demo/ousel").resolve(at.group(1)));
            assertThat(text.get(Integer.parseInt(at.group(2)) - 1))
                    .matches(".*(gap|id|name|at|room|points|schemes|marks|disturbs).*");
        }
    }

    @Test
    void should_say_why_of_every_other_figure_the_page_shows() throws Exception {
        for (String fit : List.of("pane-left", "canopy-left")) {
            List<String> whys = links(browser.page("/fit/" + fit), "/fit/" + fit + "/why");
            assertThat(whys).hasSizeGreaterThan(2);
            for (String why : whys) {
                assertThat(browser.page(why))
                        .as(why)
                        .contains("Method:")
                        .doesNotContain("Nothing was computed here")
                        .containsAnyOf("entry ", "line ", "computed");
            }
        }
        assertThat(browser.get("/fit/pane-left/why?of=nothing").statusCode()).isEqualTo(404);
        assertThat(browser.get("/fit/no-such/why?of=move").statusCode()).isEqualTo(404);
    }

    @Test
    void should_say_why_of_every_shim() throws Exception {
        String why = browser.page("/fit/pane-left/why?of=shims");
        result("pane-left")
                .advice()
                .orElseThrow()
                .points()
                .forEach(p -> assertThat(why).contains("Shim at " + p.id()));
        assertThat(browser.page("/fit/canopy-left/why?of=shims"))
                .contains("2.00 mm + 1.00 mm + 0.20 mm + tape 0.10 mm = 3.30 mm");
        assertThat(browser.page("/fit/canopy-left")).contains("3.30 = 2.00 + 1.00 + 0.20 + tape 0.10");
    }

    @Test
    void should_tell_everything_computed_in_thou_when_the_screen_is_set_to_inches() throws Exception {
        browser.cookie("units", "inch");
        String page = browser.page("/fit/pane-left");
        int from = page.indexOf("Does it fit if moved?");
        String answer = page.substring(from, page.indexOf("</section>", from));
        assertThat(answer).contains(" thou");
        assertThat(FIGURE_IN_MM.matcher(answer).find()).as(answer).isFalse();
        String card = browser.page("/fit/pane-left/card");
        int setting = card.indexOf("<h2>Set it");
        String set = card.substring(setting, card.indexOf("</section>", setting));
        assertThat(set).contains(" thou");
        assertThat(FIGURE_IN_MM.matcher(set).find()).as(set).isFalse();
        String why = browser.page("/fit/pane-left/why?of=gaps");
        assertThat(why).contains(" thou").contains(" in, y ");
    }
}
