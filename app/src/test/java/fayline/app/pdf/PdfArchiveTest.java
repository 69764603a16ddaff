package fayline.app.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class PdfArchiveTest {
    private static final String WORDS = "<p>Left hand, ± 0.5 mm</p>";

    private static String document(String body) {
        return "<html lang=\"en\"><head><title>Book</title><meta name=\"description\" content=\"A book\"/>"
                + "<meta name=\"subject\" content=\"A book\"/><style>" + CardStyle.css(Paper.A4)
                + "</style></head><body><div class=\"foot\">Foot</div>" + body + "</body></html>";
    }

    @Test
    void should_keep_to_the_standard_of_files_for_keeping() throws Exception {
        byte[] pdf = PdfPrinter.archive(
                document(
                        WORDS + "<table><thead><tr><th>a</th></tr></thead><tbody><tr><td>1</td></tr></tbody></table>"
                                + "<div class=\"whole\" title=\"A code\"><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10mm\" height=\"10mm\" viewBox=\"0 0 10 10\"><path d=\"M0 0L5 5\" fill=\"none\" stroke=\"#000000\"/><text x=\"1\" y=\"3\" font-family=\"Atkinson Hyperlegible\" font-size=\"3\">A</text></svg></div>"),
                name -> Optional.empty());
        java.nio.file.Files.write(java.nio.file.Path.of("/tmp/book-spike.pdf"), pdf);
        assertThat(PdfArchive.faults(pdf)).isEmpty();
    }

    @Test
    void should_find_fault_with_an_ordinary_print() throws Exception {
        assertThat(PdfArchive.faults(PdfPrinter.print(document(WORDS)))).isNotEmpty();
    }
}
