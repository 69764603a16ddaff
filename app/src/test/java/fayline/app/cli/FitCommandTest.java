package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A fit's card and template from the command line, of a bare folder and of a record. */
class FitCommandTest {
    private static final String DEMO = "../demo/ousel";

    @TempDir
    Path temp;

    private final Shell shell = new Shell();

    private static String text(Path pdf) throws Exception {
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
        }
    }

    @Test
    void should_print_card_and_template_when_a_bare_folder_is_named() throws Exception {
        Path card = temp.resolve("card.pdf");
        Path template = temp.resolve("edge.dxf");
        assertThat(shell.run(
                        "", "fit", DEMO, "canopy-left", "--card", card.toString(), "--template", template.toString()))
                .as(shell.err)
                .isZero();
        assertThat(shell.out)
                .contains("Card in ")
                .contains("Template in ")
                .contains("about the middle")
                .containsPattern("Errors evened out: .+; (all inside|\\d+ outside)")
                .containsPattern("Farthest inside the limits: .+; (all inside|\\d+ outside)");
        assertThat(text(card)).contains("Set it").contains("Shims and clamps, at the index points");
        assertThat(Files.readString(template, StandardCharsets.US_ASCII).strip())
                .contains("AC1009")
                .endsWith("EOF");
        Path sheets = temp.resolve("edge.pdf");
        assertThat(shell.run("", "fit", DEMO, "pane-left", "--template", sheets.toString(), "--paper", "letter"))
                .isZero();
        assertThat(text(sheets)).contains("100 mm and 4 in");
    }

    @Test
    void should_print_from_the_record_when_no_folder_is_named() throws Exception {
        String data = temp.resolve("data").toString();
        assertThat(shell.run("", "import", DEMO, "--data", data)).as(shell.err).isZero();
        Path card = temp.resolve("card.pdf");
        assertThat(shell.run("", "fit", "canopy-left", "--data", data, "--card", card.toString()))
                .as(shell.err)
                .isZero();
        assertThat(text(card)).contains("Canopy half in its opening, left");
    }

    @Test
    void should_take_the_moment_that_is_asked_for_when_a_folder_is_named() throws Exception {
        Path card = temp.resolve("card.pdf");
        assertThat(shell.run("", "fit", DEMO, "canopy-left", "--card", card.toString(), "--now", "2026-05-13T09:41"))
                .as(shell.err)
                .isZero();
        assertThat(text(card)).contains("Wed 13 May 2026 09:41");
    }

    @Test
    void should_refuse_a_moment_when_the_record_is_asked() {
        assertThat(shell.run("", "fit", "canopy-left", "--now", "2026-05-13T09:41"))
                .isEqualTo(2);
        assertThat(shell.err).contains("--now: found no definition folder before the fit, expected one");
        assertThat(shell.run("", "fit", DEMO, "canopy-left", "--now", "soon")).isEqualTo(2);
        assertThat(shell.err).contains("found \"soon\", expected a moment such as");
    }

    @Test
    void should_say_what_was_found_and_write_nothing_when_asked_wrongly() {
        Path file = temp.resolve("card.pdf");
        assertThat(shell.run("", "fit", DEMO, "no-such", "--card", file.toString()))
                .isEqualTo(2);
        assertThat(shell.err)
                .contains("found fit \"no-such\", expected one of ")
                .contains("canopy-left");
        assertThat(shell.run("", "fit", DEMO, "canopy-left", "--template", "edge.txt"))
                .isEqualTo(2);
        assertThat(shell.err).contains("found \"edge.txt\", expected a file that ends in .pdf, .dxf or .svg");
        assertThat(shell.run("", "fit", DEMO, "canopy-left", "--card", file.toString(), "--paper", "a5"))
                .isEqualTo(2);
        assertThat(shell.run(
                        "", "fit", "canopy-left", "--data", temp.resolve("none").toString()))
                .isEqualTo(2);
        assertThat(shell.run("", "fit")).isEqualTo(2);
        assertThat(file).doesNotExist();
    }
}
