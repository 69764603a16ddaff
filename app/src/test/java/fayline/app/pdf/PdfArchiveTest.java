package fayline.app.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The printer for keeping, judged by another program's rules; that judge is seen to find fault, too. */
class PdfArchiveTest {
    private static final String WORDS = "<p>Left hand, \u00b1 0.5 mm</p>";
    private static final String TABLE =
            "<table><thead><tr><th>a</th></tr></thead><tbody><tr><td>1</td></tr></tbody></table>";

    private static String document(String body) {
        return "<html lang=\"en\"><head><title>Book</title><meta name=\"description\" content=\"A book\"/>"
                + "<style>" + CardStyle.css(Paper.A4) + "</style></head><body><div class=\"foot\">Foot</div>" + body
                + "</body></html>";
    }

    @Test
    void should_keep_to_the_standard_of_files_for_keeping() throws Exception {
        byte[] pdf = PdfPrinter.archive(document(WORDS + TABLE), name -> Optional.empty());

        assertThat(PdfArchive.faults(pdf)).isEmpty();
    }

    @Test
    void should_find_fault_with_an_ordinary_print() throws Exception {
        assertThat(PdfArchive.faults(PdfPrinter.print(document(WORDS))))
                .anyMatch(f -> f.contains("XMP") || f.contains("etadata"));
    }
}
