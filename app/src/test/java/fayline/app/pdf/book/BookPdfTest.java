package fayline.app.pdf.book;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.pdf.Paper;
import fayline.app.pdf.PdfArchive;
import fayline.app.usecase.book.Book;
import fayline.app.usecase.book.MakeBook;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class BookPdfTest {
    @Test
    void spike() throws Exception {
        var shop = SampleBooks.demo();
        for (String id : new String[] {"canopy-frame-left", "hull-bottom", "spar-left", ""}) {
            long t = System.nanoTime();
            Book book = MakeBook.of(shop, SampleBooks.PROJECT, id).orElseThrow();
            long t2 = System.nanoTime();
            byte[] pdf = BookPdf.print(
                    book, h -> Optional.empty(), new BookPdf.Setting(Paper.A4, book.head().seq() + "-" + book.lastHash(), ""));
            System.err.println(id + " make " + (t2 - t) / 1000000 + " print " + (System.nanoTime() - t2) / 1000000 + " ms, " + pdf.length);
            java.nio.file.Files.write(java.nio.file.Path.of("/tmp/book-" + id + ".pdf"), pdf);
            long t3 = System.nanoTime();
            var faults = PdfArchive.faults(pdf);
            System.err.println("validate " + (System.nanoTime() - t3) / 1000000 + " " + faults.stream().limit(10).toList());
        }
    }
}
