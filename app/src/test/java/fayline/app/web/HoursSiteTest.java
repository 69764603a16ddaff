package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.pdf.PdfArchive;
import fayline.app.usecase.hours.LookAtHours;
import fayline.flow.result.hours.HoursResult;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The demonstration's hours, on the page and on paper. */
class HoursSiteTest extends AtTheDemo {
    private static String h(double minutes) {
        return String.format(Locale.ROOT, "%.1f h", minutes / 60);
    }

    @Test
    void should_show_hours_by_person_part_and_work_and_the_share_by_the_local_list() throws Exception {
        HoursResult all = LookAtHours.of(demo.view());
        String page = browser.page("/hours");

        assertThat(all.minutes()).isGreaterThan(60 * 100);
        assertThat(page).contains(h(all.minutes()), "Hull bottom", "By sort of work", "lay up");
        assertThat(page).contains(h(all.by(b -> b.person()).getOrDefault("bram", 0.0)));
        assertThat(page).contains("at least 51 % is asked for", "Hull shells and bulkheads", "not begun");
        assertThat(browser.page("/hours?from=2026-01-06&to=2026-01-06"))
                .contains("Main spar, left")
                .doesNotContain(h(all.minutes()));
        assertThat(browser.get("/hours?from=yesterday").statusCode()).isEqualTo(422);
    }

    @Test
    void should_print_a_log_by_date_that_adds_up() throws Exception {
        byte[] pdf = browser.bytes("/hours/log.pdf?from=2026-01-06&to=2026-01-09");
        assertThat(PdfArchive.faults(pdf)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text.indexOf("Tue 6 Jan 2026")).isPositive().isLessThan(text.indexOf("Thu 8 Jan 2026"));
            assertThat(text)
                    .contains("Lay up the outer plies, Hull bottom", "The chine plies want two people on the bow.");
            assertThat(text).contains("Tove (paid)").doesNotContain("Mon 12 Jan 2026");
        }
    }
}
