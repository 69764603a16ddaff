package fayline.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.pdf.PdfArchive;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The book from a shell: of a data folder, and of an archive of it. */
class BookCommandTest {
    private static final String DEMO = Path.of("..", "demo", "ousel").toString();

    @TempDir
    Path temp;

    private final Shell shell = new Shell();

    private String in(String name) {
        return temp.resolve(name).toString();
    }

    private String text(String file) throws Exception {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(temp.resolve(file)))) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void should_print_the_same_book_from_a_data_folder_and_from_an_archive() throws Exception {
        assertThat(shell.run("", "import", DEMO, "--data", in("data")))
                .as(shell.err)
                .isZero();
        assertThat(shell.run("", "backup", in("a.zip"), "--data", in("data")))
                .as(shell.err)
                .isZero();

        assertThat(shell.run("", "book", in("data"), "hull-bottom", "--out", in("one.pdf")))
                .as(shell.err)
                .isZero();
        assertThat(shell.out).contains("Book of Hull bottom: 1 chapter in");
        assertThat(shell.run("", "book", in("a.zip"), "hull-bottom", "--out", in("two.pdf")))
                .as(shell.err)
                .isZero();

        assertThat(text("one.pdf")).isEqualTo(text("two.pdf")).contains("As built: Hull bottom");
        assertThat(PdfArchive.faults(Files.readAllBytes(temp.resolve("two.pdf"))))
                .isEmpty();
    }

    @Test
    void should_say_that_there_is_no_record_in_a_folder_and_write_nothing() throws Exception {
        Files.createDirectories(temp.resolve("bare"));
        assertThat(shell.run("", "book", in("bare"), "--out", in("x.pdf"))).isEqualTo(2);
        assertThat(shell.err).contains("found no record in " + in("bare"), "expected a data folder");
        assertThat(shell.run("", "verify-record", in("bare"))).isEqualTo(2);
        assertThat(shell.err).contains("found no record in " + in("bare"));
        assertThat(shell.run("", "backup", in("x.zip"), "--data", in("bare"))).isEqualTo(2);
        assertThat(temp.resolve("x.pdf")).doesNotExist();
        assertThat(temp.resolve("x.zip")).doesNotExist();
        assertThat(temp.resolve("bare")).isEmptyDirectory();
    }

    @Test
    void should_say_what_is_wrong_and_write_nothing() throws Exception {
        assertThat(shell.run("", "import", DEMO, "--data", in("data"))).isZero();

        assertThat(shell.run("", "book", in("data"), "hull-botom", "--out", in("x.pdf")))
                .isEqualTo(2);
        assertThat(shell.err).contains("found \"hull-botom\", expected the id of a part, a joint or an assembly");
        assertThat(shell.run("", "book", in("nowhere"), "--out", in("x.pdf"))).isEqualTo(2);
        assertThat(shell.run("", "book", in("data"), "--out", in("no/such/x.pdf")))
                .isEqualTo(2);
        assertThat(shell.run("", "book", in("data"), "--out", in("x.pdf"), "--paper", "a3"))
                .isEqualTo(2);
        Files.writeString(temp.resolve("no.zip"), "not an archive");
        assertThat(shell.run("", "book", in("no.zip"), "--out", in("x.pdf"))).isEqualTo(2);
        assertThat(temp.resolve("x.pdf")).doesNotExist();
    }
}
