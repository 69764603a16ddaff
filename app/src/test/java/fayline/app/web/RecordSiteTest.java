package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.shop.Sent;
import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.SignedHead;
import fayline.flow.record.TreeHead;
import fayline.flow.record.payload.Value;
import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The record's own pages on the demonstration, as a reader sees them. */
class RecordSiteTest extends AtTheDemo {
    private static List<Entry> entries() {
        return demo.open().shop().entries(1);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static TreeHead head() {
        Chain chain = new Chain();
        entries().forEach(chain::next);
        return chain.treeHead();
    }

    @Test
    void should_show_entries_the_newest_first_and_lead_to_older_ones() throws Exception {
        List<Entry> all = entries();
        String page = browser.page("/record");

        assertThat(page).contains(all.size() + " entries; nothing is changed or removed", head().paper());
        assertThat(page.indexOf("/record/entry/" + all.size() + "\""))
                .isPositive()
                .isLessThan(page.indexOf("/record/entry/" + (all.size() - 1) + "\""));
        int below = all.size() - 59;
        assertThat(page).contains("/record?below=" + below).doesNotContain("/record/entry/" + (below - 1) + "\"");
        assertThat(browser.page("/record?below=" + below)).contains("/record/entry/" + (below - 1) + "\"");
        assertThat(browser.page("/record?text=" + encoded("no such words at all")))
                .contains("No entry fits.");
    }

    @Test
    void should_show_only_what_is_asked_for() throws Exception {
        String readings = browser.page("/record?sort=readings");

        assertThat(readings)
                .contains("read gap of ", "read coupon of ")
                .doesNotContain(">finished ", "told the crew a plan");
        long first = entries().stream()
                .filter(e -> e.kind().equals(EntryKind.READING_TAKEN.key()))
                .reduce((a, b) -> b)
                .orElseThrow()
                .seq();
        assertThat(readings).contains("/record/entry/" + first + "\"");
    }

    @Test
    void should_show_one_entry_with_what_proves_it() throws Exception {
        Entry e = entries().get(4);

        String page = browser.page("/record/entry/5");

        assertThat(page).contains(e.hash(), e.previous(), e.payloadHash(), "/record/entry/4", "/record/entry/6");
        assertThat(page).contains("In the tree over " + entries().size() + " entries");
        assertThat(browser.get("/record/entry/0").statusCode()).isEqualTo(404);
        assertThat(browser.get("/record/entry/999999").statusCode()).isEqualTo(404);
    }

    @Test
    void should_check_every_entry_and_a_head_from_paper() throws Exception {
        String paper = head().paper();
        int size = entries().size();

        assertThat(browser.page("/record?check=yes")).contains(size + " entries, all sound.");
        assertThat(browser.page("/record?check=yes&head=" + encoded(paper)))
                .contains(size + " entries, all sound. The head from paper fits.");
        String wrong = browser.page("/record?check=yes&head=" + encoded(size + "-" + "A".repeat(26)));
        assertThat(wrong)
                .contains(
                        "Not sound: entry " + size + ": it does not fit the head kept outside",
                        size + " entries; nothing is changed");
        HttpResponse<String> misread = browser.get("/record?check=yes&head=12");
        assertThat(misread.statusCode()).isEqualTo(422);
        assertThat(misread.body()).contains("expected");
    }

    @Test
    void should_print_a_sheet_with_the_head_it_was_taken_of() throws Exception {
        TreeHead before = head();
        HttpResponse<String> made = browser.send("/record", "/record/sheet", "by", "runa");

        assertThat(made.body()).contains("Record sheet", "Print it, sign it", before.paper());
        Entry told = entries().get(entries().size() - 1);
        assertThat(told.kind()).isEqualTo(EntryKind.SHEET_PRINTED.key());
        long number = told.fields().whole("number").orElseThrow();
        Value.Fields f = told.fields();
        SignedHead signed = new SignedHead(
                new TreeHead(f.whole("size").orElseThrow(), f.text("root")),
                f.text("at"),
                f.text("key"),
                f.text("signature"));
        assertThat(signed.holds()).isTrue();
        assertThat(signed.head()).isEqualTo(before);
        String text = text(browser.bytes("/record/sheet/" + number + ".pdf"));
        assertThat(text).contains("Record sheet " + number, before.paper(), signed.keyFingerprint());
        assertThat(text(browser.bytes("/record/sheet/" + number + ".pdf?paper=letter")))
                .contains(before.paper());
        assertThat(browser.get("/record/sheet/99.pdf").statusCode()).isEqualTo(404);
        browser.send("/record", "/record/sheet", "by", "runa");
        assertThat(text(browser.bytes("/record/sheet/" + (number + 1) + ".pdf")))
                .contains("Sheet before", before.paper());
    }

    @Test
    void should_erase_what_is_personal_and_say_so_wherever_it_stood() throws Exception {
        Entry read = entries().stream()
                .filter(e -> e.kind().equals(EntryKind.STEP_NOTED.key()))
                .findFirst()
                .orElseThrow();
        String other = "/record/entry/" + read.seq();
        assertThat(browser.send(other, other + "/erase", "by", "runa", "why", "x", "sure", "yes")
                        .body())
                .as("it came from a file of the folder")
                .contains("The same words still stand in entry ");
        long seq = new NoteStep(demo.open().shop())
                .note(
                        Sent.once("runa"),
                        read.fields().text("step"),
                        "Quite unheard-of words",
                        List.of(),
                        Optional.empty())
                .seq();
        Entry note = entries().get((int) seq - 1);
        String here = "/record/entry/" + note.seq();
        String words = note.fields().text("text");
        String[] step = note.fields().text("step").split("/");
        String card = "/card/" + step[1] + "/" + step[2] + "/" + step[3];
        assertThat(browser.page(here))
                .contains("What remains:", "Backups, exports and books made before still hold it");
        HttpResponse<String> unsure = browser.send(here, here + "/erase", "by", "runa", "why", "Bo asked");
        assertThat(unsure.statusCode()).isEqualTo(422);
        assertThat(browser.send(here, here + "/erase", "by", "runa", "why", " ", "sure", "yes")
                        .statusCode())
                .isEqualTo(422);
        assertThat(entries()).as("nothing was erased so far").contains(note);

        HttpResponse<String> done = browser.send(here, here + "/erase", "by", "runa", "why", "Bo asked", "sure", "yes");

        assertThat(done.body()).contains("Erased what was personal in entry " + note.seq(), "because Bo asked, by ");
        assertThat(browser.page(here)).contains("a note: erased on ").doesNotContain("What remains:");
        assertThat(browser.page("/record?sort=erased")).contains("erased what was personal in entry " + note.seq());
        assertThat(browser.page("/record?sort=notes")).contains("because Bo asked");
        assertThat(browser.page("/record?check=yes")).contains(entries().size() + " entries, all sound.");
        assertThat(browser.page("/record?text=" + encoded(words))).contains("No entry fits.");
        assertThat(entries().toString()).doesNotContain(words);
        String start = "/record/entry/"
                + entries().stream()
                        .filter(e -> e.kind().equals(EntryKind.STEP_STARTED.key()))
                        .findFirst()
                        .orElseThrow()
                        .seq();
        assertThat(browser.page(start)).doesNotContain("What remains:");
        assertThat(browser.send("/record", start + "/erase", "by", "runa", "why", "x", "sure", "yes")
                        .body())
                .contains("never erased");
        assertThat(browser.page(card)).contains("because Bo asked").doesNotContain(words);
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            return new PDFTextStripper().getText(document);
        }
    }
}
