package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.pdf.PdfArchive;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** A week drafted, edited, settled and printed from the demonstration's pages. */
class WeekSiteTest extends AtTheDemo {
    @Test
    void should_draft_settle_and_print_a_week() throws Exception {
        String page = browser.page("/week-told?week=2026-01-07");
        assertThat(page).contains("Hull bottom. On Wednesday we cut the kit", "Where its figures come from");
        assertThat(page).doesNotContain("Runa wrote");
        assertThat(browser.page("/week-told?week=2026-01-07&names=yes&notes=yes"))
                .contains("Runa wrote");

        String said = browser.send(
                        "/week-told?week=2026-01-07",
                        "/week-told",
                        "by",
                        "runa",
                        "week",
                        "2026-01-05",
                        "title",
                        "The spars",
                        "text",
                        "We laid up <two> spars.\n\nThe end.")
                .body();

        assertThat(said).contains("Recorded as entry", "The spars");
        long seq = demo.open().shop().state().head().seq();
        byte[] pdf = browser.bytes("/week-told/" + seq + ".pdf");
        assertThat(PdfArchive.faults(pdf)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("The spars", "We laid up <two> spars.", "The end.");
        }
        assertThat(browser.page("/record")).contains("settled what is told of the week from 2026-01-05");
        assertThat(browser.get("/week-told/1.pdf").statusCode()).isEqualTo(404);
    }
}
