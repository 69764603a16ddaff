package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.view.ShopView;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.project.fit.Fit;
import fayline.flow.result.fit.FitAdvice;
import fayline.flow.result.fit.FitResult;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The cards of the demonstration's fits, on screen and paper. */
class FitCardSiteTest extends AtTheDemo {
    private static final QuantityFormat METRIC = new QuantityFormat(UnitSystem.METRIC);

    private static ShopView view() {
        return demo.view();
    }

    private static FitResult result(String fit) {
        return LookAtFits.of(view(), fit, false).orElseThrow().result();
    }

    private static void read(String fit, String station, String state, String value) {
        take("gap", fit, station, state, Map.of("value", value, "temperature", "20 degC"));
    }

    private static void take(String kind, String fit, String station, String state, Map<String, String> values) {
        Outcome outcome = new TakeReading(demo.open().shop())
                .take(
                        Sent.live(
                                UUID.randomUUID().toString(),
                                view().work().people().get(0).id()),
                        view().project(),
                        new Measured(kind, fit, station, state, values, Optional.empty()));
        assertThat(outcome.stands()).as(outcome.sentence() + outcome.problems()).isTrue();
    }

    private static String text(PDDocument pdf) throws Exception {
        return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
    }

    @Test
    void should_tell_move_shims_adhesive_and_last_readings_when_a_pane_lies_dry_in_its_frame() throws Exception {
        String card = browser.page("/fit/pane-left/card");
        FitAdvice advice = result("pane-left").advice().orElseThrow();
        assertThat(card)
                .contains(advice.sentence().toString())
                .contains(METRIC.mass(view().result()
                        .joint("pane-to-frame-left")
                        .orElseThrow()
                        .adhesive()))
                .contains("The last chance: read before gel")
                .contains("hand tight")
                .contains("Do not pull it in")
                .contains("Tile crosses: P1, P2, P3");
        advice.points().forEach(p -> assertThat(card).contains(">" + p.id() + "<"));
        advice.shims()
                .orElseThrow()
                .best()
                .orElseThrow()
                .stacks()
                .forEach(s -> s.piecesMm()
                        .forEach(piece ->
                                assertThat(card).contains(String.format(java.util.Locale.ROOT, "%.2f mm", piece))));
        advice.atMarks().forEach(m -> assertThat(card).contains(m.toString()));
    }

    @Test
    void should_print_each_card_on_one_page_of_either_paper() throws Exception {
        for (Fit fit : view().definition().fits().items()) {
            for (String paper : new String[] {"a4", "letter"}) {
                try (PDDocument pdf =
                        Loader.loadPDF(browser.bytes("/fit/" + fit.id() + "/card.pdf?assume=yes&paper=" + paper))) {
                    assertThat(pdf.getNumberOfPages())
                            .as(fit.id() + " on " + paper)
                            .isEqualTo(1);
                    String told = text(pdf);
                    assertThat(told.contains("Flush to find")).isEqualTo(told.contains("The last chance"));
                    assertThat(told)
                            .contains("Fit: " + fit.name())
                            .contains("1 / 1")
                            .contains("Do not pull it in");
                }
            }
        }
    }

    @Test
    void should_refuse_the_adhesive_when_a_new_reading_is_suspect_or_none_was_taken() throws Exception {
        assertThat(browser.page("/fit/pane-right/card")).contains("No go").contains("No gap is read yet");
        for (String station : new String[] {"F1", "F2", "S1", "S3", "R1", "R2", "C1"}) {
            read("pane-right", station, "trimmed", "3.0 mm");
        }
        assertThat(browser.page("/fit/pane-right/card"))
                .contains("No go: 2 things first")
                .contains("Width front of the frame, front arch, sill to centreline: no trial is made yet.");
        for (String trial : new String[] {"1", "2"}) {
            // The left taught that the bond takes 0.4 mm at the front arch and 2.4 mm at the rear one.
            take("width", "pane-right", "front", "bare", Map.of("value", "699.8 mm", "round", trial));
            take("width", "pane-right", "front", "trial-clamped", Map.of("value", "699.2 mm", "round", trial));
            take("width", "pane-right", "rear", "bare", Map.of("value", "695.5 mm", "round", trial));
            take("width", "pane-right", "rear", "trial-clamped", Map.of("value", "692.2 mm", "round", trial));
        }
        assertThat(browser.page("/fit/pane-right/card"))
                .contains("Go: nothing known stops the adhesive")
                .contains("Not read in this state: S2.");
        read("pane-right", "S2", "trimmed", "7.0 mm");
        assertThat(browser.page("/fit/pane-right/card")).contains("No go").contains("Read again: ");
    }

    @Test
    void should_say_that_the_card_is_over_when_the_adhesive_has_set() throws Exception {
        Fit done = view().definition().fits().stream()
                .filter(f -> result(f.id()).isSet())
                .findFirst()
                .orElseThrow();
        assertThat(browser.page("/fit/" + done.id() + "/card")).contains("The adhesive has set");
    }

    @Test
    void should_not_tell_a_mass_of_adhesive_when_no_step_of_the_joint_mixes_any() throws Exception {
        assertThat(view().result()
                        .joint("canopy-hang-right")
                        .orElseThrow()
                        .adhesive()
                        .kilograms())
                .isZero();
        assertThat(browser.page("/fit/canopy-right/card"))
                .contains("no step of this joint mixes any")
                .doesNotContain("0.0 g");
    }
}
