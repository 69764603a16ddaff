package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The chains of the demonstration through their page. */
class ChainSiteTest extends AtTheDemo {
    /** The readings and what they were made from are told in the history; the correction undoes that motion and the struts'. */
    @Test
    void should_carry_the_readings_to_the_bench_and_say_where_the_correction_goes() throws Exception {
        assertThat(browser.page("/chain/canopy-chain-right"))
                .contains("Correct in Pane into frame and Canopy frame, left: worst gap will be 44.2 mm at S1.")
                .contains("0.84 mm forward, 0.43 mm up, turn 0.064 deg nose-up")
                .contains("On the bench: 0.84 mm against its x, 0.43 mm against its y")
                .contains("C1 44.2 mm (1.0 mm closed by this)")
                .contains("Known to 0.08 mm each way and 0.007 deg")
                .containsOnlyOnce("spends most<")
                .contains("that every gap ends inside, with the correction")
                .contains("Bonded as it lies, without it: under 1 %")
                .doesNotContain("No gap is read there yet")
                .doesNotContain("What is left after the cure");
    }

    @Test
    void should_say_why_with_inputs_units_source_and_cautions() throws Exception {
        assertThat(browser.page("/chain/canopy-chain-right"))
                .contains("Gap at F1: 44.8 mm, needs 43.2 mm to 44.4 mm, measured")
                .contains(
                        "Finding scribe on the bow, along each axis, in each place: standard deviation 0.10 mm, entered")
                .contains("[schonemann1966]")
                .contains("[boyd-vandenberghe2004]")
                .contains("[jcgm100]")
                .contains("Struts fitted, the struts push aft: 0.2 mm on the left half: standard deviation 0.10 mm")
                .contains("Nothing is mirrored");
    }

    @Test
    void should_tell_every_length_in_inches_when_the_screen_is_in_inches() throws Exception {
        browser.cookie("units", "inch");
        String page = browser.page("/chain/canopy-chain-right");
        String told =
                page.substring(page.indexOf("Where to put the correction")).replaceAll("0\\.2 mm on the left half", "");
        assertThat(told).contains(" thou").doesNotContainPattern("[0-9] mm");
        assertThat(browser.page("/chain/canopy-chain-left")).contains(" thou").doesNotContainPattern("[0-9] mm");
    }

    @Test
    void should_lead_to_each_links_fit_and_from_the_fits_to_the_chain() throws Exception {
        assertThat(browser.page("/chain/canopy-chain-right"))
                .contains("/fit/pane-line-right")
                .contains("/fit/pane-right")
                .contains("/fit/canopy-right");
        assertThat(browser.page("/fits")).contains("/chain/canopy-chain-right").contains("/chain/canopy-chain-left");
        assertThat(browser.page("/fit/pane-right")).contains("/chain/canopy-chain-right");
        assertThat(browser.page("/fit/canopy-left")).contains("/chain/canopy-chain-left");
    }

    @Test
    void should_print_a_sheet_for_the_bench_on_one_page_with_moves_marks_and_stations() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(browser.bytes("/chain/canopy-chain-right/sheet.pdf"))) {
            String words = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(words)
                    .contains("0.84 mm forward")
                    .contains("On the bench: 0.84 mm against its x")
                    .contains("scribe on the rear arch")
                    .contains("Edge goes here")
                    .contains("Dust from trimming: mask, eyes, extraction");
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(browser.get("/chain/canopy-chain-right/sheet.pdf?paper=a9").statusCode())
                .isEqualTo(422);
        assertThat(browser.get("/chain/no-such/sheet.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void should_compare_remedies_over_the_readings_when_every_link_is_bonded() throws Exception {
        assertThat(browser.page("/chain/canopy-chain-left"))
                .contains("What is left after the cure")
                .contains("Trim the frame's edge and Build up the rear edge")
                .contains("off at F2; 0.")
                .contains("8.0 h")
                .contains("Loosen the hinge arms and set them anew")
                .contains("90.0 h")
                .doesNotContain("Where to put the correction");
    }

    @Test
    void should_lead_from_the_fit_to_its_chain_and_refuse_one_that_is_none() throws Exception {
        assertThat(browser.page("/fit/canopy-left")).contains("/chain/canopy-chain-left");
        assertThat(browser.get("/chain/no-such").statusCode()).isEqualTo(404);
    }
}
