package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.app.usecase.fit.LookAtFits;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.quantity.JointResult;
import fayline.method.fitup.motion.SpaceWords;
import fayline.method.fitup.trim.cut.CutLine;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A reading lives: typed once on a page, it is followed to everything that rests on it. */
class FitThreadSiteTest extends AtTheDemo {
    private static final String FIT = "/fit/canopy-left";

    private static FitResult result(String fit) {
        return LookAtFits.of(demo.view(), fit, false).orElseThrow().result();
    }

    private static TakenReading sillMiddle() {
        return demo.view().record().readings("ousel-1").stream()
                .filter(r -> r.of().equals("canopy-left")
                        && r.kind().equals("gap")
                        && r.state().equals("struts")
                        && r.station().equals("S2"))
                .findFirst()
                .orElseThrow();
    }

    private void correct(String value) throws Exception {
        String page = FIT + "/reading/" + sillMiddle().seq();
        browser.send(
                page,
                page + "/correct",
                Browser.and(
                        new String[] {
                            "value", value, "nogo", "", "station", "S2", "state", "struts", "why", "read again"
                        },
                        "by",
                        demo.person()));
    }

    private static CutLine.Stop cutAtSillMiddle() {
        return result("canopy-left").advice().orElseThrow().cut().orElseThrow().lines().stream()
                .flatMap(l -> l.stops().stream())
                .filter(s -> s.name().equals("S2"))
                .findFirst()
                .orElseThrow();
    }

    private static String mark(CutLine.Stop s) {
        return String.format(Locale.ROOT, "S2: %.1f mm, first %.1f", s.depthMm(), s.firstMm());
    }

    private String pdf() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(browser.bytes(FIT + "/template.pdf"))) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }

    private String file(String ending) throws Exception {
        return new String(browser.bytes(FIT + "/template." + ending), StandardCharsets.UTF_8);
    }

    private static String chance() {
        return String.format(
                Locale.ROOT,
                "%.0f %%",
                100
                        * result("canopy-left")
                                .advice()
                                .orElseThrow()
                                .schemes()
                                .orElseThrow()
                                .schemes()
                                .get(0)
                                .odds()
                                .orElseThrow()
                                .joint()
                                .probability());
    }

    /** What the right hand's page says of the left one's struts. */
    private static String taught() {
        FitResult left = result("canopy-left");
        StateReadings struts = left.states().get(left.states().size() - 1);
        return "Coming into \"Struts fitted\" it moved "
                + new SpaceWords(left.side(), struts.since().orElseThrow().pivot(), "the middle of the stations")
                        .sentence(struts.since().orElseThrow().move().orElseThrow())
                        .toString();
    }

    @Test
    void should_change_move_template_chances_card_and_the_other_hand_when_one_reading_is_corrected() throws Exception {
        String chanceBefore = chance();
        String taughtBefore = taught();
        assertThat(browser.page(FIT)).contains(chanceBefore).doesNotContain("Template 1:1");
        assertThat(page("/fit/canopy-right")).contains(taughtBefore);

        correct("3.0");
        assertThat(chance()).isNotEqualTo(chanceBefore);
        assertThat(browser.page(FIT)).contains(chance());

        correct("1.8");
        CutLine.Stop first = cutAtSillMiddle();
        assertThat(first.depthMm()).isGreaterThan(0.2);
        isOnEverything(first, taughtBefore);
        String taughtThen = taught();

        correct("1.4");
        CutLine.Stop second = cutAtSillMiddle();
        assertThat(second.depthMm() - first.depthMm())
                .as("0.4 tighter is cut 0.4 deeper where its neighbours stay")
                .isCloseTo(0.4, within(0.05));
        isOnEverything(second, taughtThen);
        assertThat(file("svg")).doesNotContain(mark(first));
        assertThat(file("dxf")).doesNotContain(mark(first));
        assertThat(pdf()).doesNotContain(mark(first));
    }

    private String page(String path) throws Exception {
        return browser.page(path).replace("&#34;", "\"").replace("&quot;", "\"");
    }

    private void isOnEverything(CutLine.Stop cut, String taughtBefore) throws Exception {
        String move = result("canopy-left").advice().orElseThrow().sentence().toString();
        assertThat(browser.page(FIT)).contains(move).contains("Template 1:1");
        assertThat(browser.page(FIT + "/card")).contains(move);
        assertThat(file("svg")).contains(mark(cut));
        assertThat(file("dxf")).contains(mark(cut));
        assertThat(pdf()).contains(mark(cut));
        assertThat(taught()).isNotEqualTo(taughtBefore);
        assertThat(page("/fit/canopy-right")).contains(taught()).doesNotContain(taughtBefore);
    }

    @Test
    void should_tell_the_bond_line_and_its_adhesive_on_page_and_card_when_test_castings_are_typed() throws Exception {
        String read = "/fit/pane-right/read?state=trimmed&kind=casting";
        assertThat(browser.page(read)).contains("Test casting");
        assertThat(browser.page("/fit/pane-right")).doesNotContain("Bond line, by test casting");
        for (List<String> typed : List.of(List.of("S1", "3.6"), List.of("S2", "4.2"), List.of("S3", "4.2"))) {
            browser.sendFrom(
                    browser.page(read),
                    "/fit/pane-right/read",
                    Browser.and(
                            new String[] {"station", typed.get(0), "value", typed.get(1)},
                            "by",
                            demo.person(),
                            "state",
                            "trimmed",
                            "kind",
                            "casting",
                            "unit",
                            "mm"));
        }
        // three stations along the sill, each for its run of it: read back from the engine, checked for its range here
        double mean = result("pane-right").cast().orElseThrow().meanMm();
        assertThat(mean).isBetween(3.9, 4.1);
        JointResult drawn = demo.view().result().joint("pane-to-frame-right").orElseThrow();
        QuantityFormat metric = new QuantityFormat(UnitSystem.METRIC);
        String mix = metric.mass(drawn.adhesive().times(mean / 3.0));
        for (String path : List.of("/fit/pane-right", "/fit/pane-right/card")) {
            assertThat(browser.page(path))
                    .contains("Bond line by test casting")
                    .contains("3.6 mm (S1) to 4.2 mm (S2), mean 4.0 mm, drawn 3.0 mm; 3 of 8 stations cast")
                    .contains("mix " + mix + ", not " + metric.mass(drawn.adhesive()));
        }
        try (PDDocument pdf = Loader.loadPDF(browser.bytes("/fit/pane-right/card.pdf"))) {
            assertThat(new PDFTextStripper().getText(pdf).replaceAll("\\s+", " "))
                    .contains("Bond line by test casting")
                    .contains(mix);
        }
    }

    /** Common practice, no source: 3 mm wanted; front 3.0 low and 2.3 high, rear 4.0 both; 7.0 shared low, 6.3 high. */
    @Test
    void should_tell_turn_and_spacers_of_a_side_panel_that_no_move_brings_to_its_gaps() throws Exception {
        browser.send(
                "/fits/new",
                "/fits/new",
                "by",
                demo.person(),
                "name",
                "Side panel",
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
                "900",
                "height",
                "400",
                "stationing",
                "typed",
                "stations",
                "F1; front, low; -450 -200; -1 0\nF2; front, high; -450 200; -1 0\n"
                        + "R1; rear, low; 450 -200; 1 0\nR2; rear, high; 450 200; 1 0");
        String read = "/fit/side-panel/read?state=bonded";
        for (List<String> typed :
                List.of(List.of("F1", "3.0"), List.of("F2", "2.3"), List.of("R1", "4.0"), List.of("R2", "4.0"))) {
            browser.sendFrom(
                    browser.page(read),
                    "/fit/side-panel/read",
                    Browser.and(
                            new String[] {"station", typed.get(0), "value", typed.get(1)},
                            "by",
                            demo.person(),
                            "state",
                            "bonded",
                            "kind",
                            "gap",
                            "unit",
                            "mm"));
        }
        assertThat(browser.page("/fit/side-panel"))
                .contains("the worst gap will be 3.5 mm")
                .contains("0.68 mm aft, turn 0.050 deg nose-up")
                // 0.85 aft high less 0.5 aft low
                .contains("The turn makes 0.35 mm over the height of 400 mm")
                .containsPattern("F1</th><td>3.50 mm")
                .containsPattern("F2</th><td>3.15 mm")
                .containsPattern("R1</th><td>3.50 mm")
                .containsPattern("R2</th><td>3.15 mm")
                .contains("Spacers of these thicknesses hold the part")
                .doesNotContain("The adhesive has set");
    }
}
