package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.TreeHead;
import java.net.http.HttpResponse;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** Books printed from the demonstration's pages. */
class BookSiteTest extends AtTheDemo {
    private static List<Entry> entries() {
        return demo.open().shop().entries(1);
    }

    private static TreeHead head() {
        Chain chain = new Chain();
        entries().forEach(chain::next);
        return chain.treeHead();
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void should_look_at_a_book_without_an_entry() throws Exception {
        int before = entries().size();
        assertThat(browser.page("/book")).contains("/book/now.pdf?of=hull-bottom", "Hull bottom", "begun");

        String book = text(browser.bytes("/book/now.pdf?of=hull-bottom"));

        assertThat(book).contains("As built: Hull bottom", head().paper(), "is not in the record");
        assertThat(entries()).hasSize(before);
        assertThat(browser.get("/book/now.pdf?of=nothing-of-that-name").statusCode())
                .isEqualTo(404);
        assertThat(browser.get("/book/now.pdf?of=hull-bottom&paper=a3").statusCode())
                .isEqualTo(422);
    }

    @Test
    void should_record_that_a_book_was_printed_and_give_the_same_one_later() throws Exception {
        TreeHead under = head();
        HttpResponse<String> made = browser.send("/book", "/book", "by", "runa", "of", "spar-left");
        assertThat(made.body()).contains("The book of", "is printed, as entry", under.paper());
        Entry told = entries().get(entries().size() - 1);
        assertThat(told.kind()).isEqualTo(EntryKind.SHEET_PRINTED.key());
        assertThat(told.fields().text("what")).isEqualTo("book");
        assertThat(told.fields().text("of")).isEqualTo("spar-left");
        String address = "/book/sheet/" + told.fields().whole("number").orElseThrow() + ".pdf";
        String before = text(browser.bytes(address));

        browser.send(
                "/card/spar-left/1/demould", "/card/spar-left/1/demould/note", "by", "runa", "text", "A later note.");

        assertThat(before).contains(under.paper(), "is in the record, as sheet");
        assertThat(text(browser.bytes(address))).isEqualTo(before);
        assertThat(text(browser.bytes("/book/now.pdf?of=spar-left"))).contains("A later note.");
        assertThat(browser.page("/record")).contains("printed the book of", address);
        assertThat(browser.get("/book/sheet/999.pdf").statusCode()).isEqualTo(404);
    }
}
