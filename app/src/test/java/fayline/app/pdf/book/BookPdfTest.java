package fayline.app.pdf.book;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import fayline.app.pdf.Paper;
import fayline.app.pdf.PdfArchive;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.book.Book;
import fayline.app.usecase.book.MakeBook;
import fayline.app.usecase.book.PastRecord;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.ReceiveOrder;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.traveller.DrawLot;
import fayline.app.usecase.traveller.LayPly;
import fayline.app.usecase.traveller.MixCup;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.usecase.trouble.RaiseDeviation;
import fayline.app.usecase.trouble.SettleDeviation;
import fayline.app.usecase.view.Photos;
import fayline.app.usecase.view.RecordedProject;
import fayline.flow.record.Chain;
import fayline.flow.record.KeptHead;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.stock.Order;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The book of the demonstration, as an inspector has it in hand. */
class BookPdfTest {
    private static final Path PHOTO = Path.of("../store/src/test/resources/fayline/store/file/picture/with-place.jpg");

    /** The field of the camera's data that says which way up, big end first: upright. */
    private static final byte[] UPRIGHT = {0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 1};

    /** Exif's word for a camera that lay on its right side. */
    private static final byte ON_ITS_SIDE = 6;

    private static ShopRecord demo = SampleBooks.none();

    @BeforeAll
    static void readIn() throws Exception {
        demo = SampleBooks.demo();
    }

    private static Book book(ShopRecord shop, String of) {
        return MakeBook.of(shop, SampleBooks.PROJECT, of).orElseThrow();
    }

    private static byte[] print(ShopRecord shop, String of) {
        Book book = book(shop, of);
        return BookPdf.print(
                book,
                new Photos(shop)::printed,
                new BookPdf.Setting(Paper.A4, book.head().seq() + "-" + book.lastHash(), ""));
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper()
                    .getText(document)
                    .replace('\u00a0', ' ')
                    .replaceAll("\\s+", " ");
        }
    }

    @Test
    void should_be_a_file_for_keeping_whether_of_a_part_a_fit_or_the_aircraft() throws Exception {
        for (String of : List.of("hull-bottom", "pane-to-frame-left", "")) {
            assertThat(PdfArchive.faults(print(demo, of))).as(of).isEmpty();
        }
    }

    @Test
    void should_tell_of_a_named_ply_when_by_whom_in_what_air_it_was_laid() throws Exception {
        String text = text(print(demo, "hull-bottom"));

        assertThat(text)
                .contains("12 Bottom Glass twill 280 +45 deg Mon 12 Jan 2026 09:27 Bram L-2612")
                .contains("Lay up the inner plies")
                .contains("18.6 degC, 57 %, coldest surface 17.7 degC (Mon 12 Jan 2026 07:40)")
                .contains("Bow towards the big door, step at the marked line.")
                .contains("third pleat added before gel")
                .contains("40.20 kg (instrument bench scale)")
                .contains("26.5 inHg");
    }

    @Test
    void should_call_a_signature_a_name_where_nobody_signs_in() throws Exception {
        assertThat(text(print(demo, "spar-left"))).contains("Tove Thu 8 Jan 2026 08:15 named, not proven (entry");
    }

    @Test
    void should_hold_readings_as_typed_and_say_which_gap_is_outside() throws Exception {
        String text = text(print(demo, "canopy-frame-left"));

        assertThat(text).contains(".134 in").contains("OUTSIDE").contains("within");
    }

    @Test
    void should_carry_the_head_on_every_page_and_in_the_code_of_the_first() throws Exception {
        Book book = book(demo, "hull-bottom");
        try (PDDocument pdf = Loader.loadPDF(print(demo, "hull-bottom"))) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                assertThat(stripper.getText(pdf))
                        .as("page %d", page)
                        .contains(book.head().paper());
            }
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, 150);
            int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
            String read = new QRCodeReader()
                    .decode(new BinaryBitmap(
                            new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels))))
                    .getText();
            assertThat(Chain.check(demo.entries(1), Optional.of(KeptHead.parse(read))))
                    .isEmpty();
        }
    }

    @Test
    void should_be_the_same_book_when_entries_came_since() throws Exception {
        ShopRecord shop = SampleBooks.demo();
        long seq = shop.state().head().seq();
        String before = document(book(shop, "hull-bottom"));
        Outcome later = new NoteStep(shop)
                .note(
                        Sent.once("bram"),
                        "ousel-1/hull-bottom/1/trim",
                        "Written later, <b>not</b> markup & no harm.",
                        List.of(),
                        Optional.empty());
        assertThat(later.stands()).as(later.sentence()).isTrue();

        assertThat(document(book(PastRecord.upTo(shop, seq), "hull-bottom"))).isEqualTo(before);
        assertThat(document(book(shop, "hull-bottom"))).isNotEqualTo(before);
        assertThat(text(print(shop, "hull-bottom"))).contains("Written later, <b>not</b> markup & no harm.");
    }

    private static String document(Book book) {
        return BookPdf.document(
                book, new ChapterPhotos(hash -> Optional.empty()), new BookPdf.Setting(Paper.A4, "x", ""));
    }

    @Test
    void should_show_pictures_upright_and_say_which_cannot_be_read() throws Exception {
        ShopRecord shop = SampleBooks.demo();
        Outcome kept = new NoteStep(shop)
                .note(
                        Sent.once("bram"),
                        "ousel-1/hull-bottom/1/trim",
                        "The chine.",
                        List.of(SentPicture.of(turned(), true, false)),
                        Optional.empty());
        assertThat(kept.stands()).as(kept.sentence()).isTrue();
        Photo photo = shop.state()
                .step("ousel-1/hull-bottom/1/trim")
                .notes()
                .get(0)
                .photos()
                .get(0);

        byte[] pdf = print(shop, "hull-bottom");
        assertThat(PdfArchive.faults(pdf)).isEmpty();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDImageXObject image = picture(document);
            // The camera lay on its side: what it stored wide stands upright.
            assertThat(photo.widthPx()).isGreaterThan(photo.heightPx());
            assertThat(image.getHeight()).isGreaterThan(image.getWidth());
        }
        String without = BookPdf.document(
                book(shop, "hull-bottom"),
                new ChapterPhotos(hash -> Optional.empty()),
                new BookPdf.Setting(Paper.A4, "x", ""));
        assertThat(without)
                .contains("The picture cannot be read.", photo.sha256().substring(0, 12));
    }

    private static byte[] turned() throws Exception {
        byte[] photo = Files.readAllBytes(PHOTO);
        for (int i = 0; i < photo.length - UPRIGHT.length; i++) {
            if (Arrays.equals(photo, i, i + UPRIGHT.length, UPRIGHT, 0, UPRIGHT.length)) {
                photo[i + UPRIGHT.length - 1] = ON_ITS_SIDE;
                return photo;
            }
        }
        throw new AssertionError("the photo does not say which way up it is");
    }

    private static PDImageXObject picture(PDDocument document) throws Exception {
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getXObjectNames()) {
                if (page.getResources().getXObject(name) instanceof PDImageXObject image) {
                    return image;
                }
            }
        }
        throw new AssertionError("no picture in the book");
    }

    @Test
    void should_tell_of_lots_mixes_plies_and_deviations_that_the_bench_told() throws Exception {
        ShopRecord shop = SampleBooks.demo();
        String step = "ousel-1/chine-doubler-left/1/lay-up-1";
        RecordedProject seen = RecordedProject.of(shop, SampleBooks.PROJECT).orElseThrow();
        StepAsks asks = StepAsks.of(seen.definition(), seen.result().step(step).orElseThrow());
        stands(new DrawLot(shop)
                .draw(
                        Sent.once("bram"),
                        step,
                        asks,
                        new DrawLot.Drawn("L-2612", "", "6.2 m2", false, ""),
                        BenchTime.NOW));
        stands(new LayPly(shop)
                .lay(Sent.once("ned"), step, asks, new LayPly.Ticked("1", "", "L-2612", false, ""), BenchTime.NOW));
        stands(new LayPly(shop)
                .lay(
                        Sent.once("ned"),
                        step,
                        asks,
                        new LayPly.Ticked("2", "", "", true, "Cut too short, a patch lies over it."),
                        BenchTime.NOW));
        stands(new MixCup(shop)
                .mix(
                        Sent.once("bram"),
                        step,
                        asks,
                        new MixCup.Cup("1", "er-slow", "L-2601", "L-2602", "400 g", "90 g", ""),
                        BenchTime.NOW));
        Outcome raised = new RaiseDeviation(shop)
                .raise(
                        Sent.once("ned"),
                        new RaiseDeviation.Raised(step, "Dry spot as large as a hand at the step.", true),
                        List.of(),
                        BenchTime.NOW);
        stands(raised);

        String text = text(print(shop, "chine-doubler-left"));

        assertThat(text)
                .contains("L-2612 Glass twill 280 6.2 m2")
                .contains("LEFT OUT Tue 3 Mar 2026 06:05 Ned")
                .contains("Why: Cut too short, a patch lies over it.")
                .contains("400 g, lot L-2601", "90 g, lot L-2602", "OUTSIDE")
                .contains("Dry spot as large as a hand at the step.")
                .contains("NOT YET: it is open");
        assertThat(text.indexOf("laid ply 1 of")).isPositive();
        stands(new SettleDeviation(shop)
                .settle(
                        Sent.once("runa"),
                        raised.seq(),
                        new SettleDeviation.Decision("use-as-is", "Two plies lie over it.", false, "tove", List.of()),
                        Optional.empty()));
        assertThat(text(print(shop, "chine-doubler-left")))
                .contains("use as is, Tue 3 Mar 2026 06:05, Runa")
                .contains("Two plies lie over it.")
                .contains("Tove")
                .doesNotContain("NOT YET: it is open");
    }

    @Test
    void should_tell_of_witness_pieces_leak_downs_with_their_rule_and_what_was_made_outside() throws Exception {
        // the mean of 46, 48, 45 and 47; 0.8 inHg in 5 minutes
        assertThat(text(print(demo, "spar-left")))
                .contains("Witness pieces", "4 of 5 tested", "46.5", "piece 2: 48, Runa")
                .contains("TIGHT", "26.5 inHg to 25.7 inHg in 5 min, 0.16 inHg a minute")
                .contains("at least 22 inHg (AC 43.13-1B par 3-4)");
        ShopRecord shop = SampleBooks.demo();
        assertThat(text(print(shop, "reduction-pulleys")))
                .contains(
                        "Made outside", "1 pair of Reduction pulleys from a machine shop", "drawing OU-710 revision B")
                .contains(
                        "NOT HERE YET, promised for 2026-03-27",
                        "bore of the driving pulley, drawn 35 mm within 0.02 mm");
        stands(new ReceiveOrder(shop)
                .receive(
                        Sent.once("runa"),
                        new ReceiveOrder.Came(
                                "d-pulleys",
                                "B",
                                List.of(
                                        new Order.Measured("bore of the driving pulley", "35.01 mm"),
                                        new Order.Measured("bore of the driven pulley", "40.03 mm"),
                                        new Order.Measured("width of the teeth", "62.05 mm")),
                                false,
                                "The driven bore is out.",
                                "2026-04-10"),
                        Optional.empty()));
        assertThat(text(print(shop, "reduction-pulleys")))
                .contains("SENT BACK", "The driven bore is out.")
                .contains("Within. bore of the driving pulley is 35.01 mm")
                .contains("OUTSIDE. bore of the driven pulley is 40.03 mm")
                .doesNotContain("NOT HERE YET");
        assertThat(PdfArchive.faults(print(shop, "reduction-pulleys"))).isEmpty();
    }

    private static void stands(Outcome outcome) {
        assertThat(outcome.stands()).as(outcome.sentence() + outcome.problems()).isTrue();
    }

    @Test
    void should_say_which_change_of_the_design_the_aircraft_and_each_part_has() throws Exception {
        assertThat(text(print(demo, "")))
                .contains("Changes of the design", "C-06, closed: Reduction pulleys")
                .contains("new revision is in, drawing OU-710 rev B")
                .contains("It was drawn to OU-710 rev A before.")
                .contains("C-07, accepted, being followed: Hull chine thicker")
                .contains("accepted, Wed 18 Feb 2026 08:10, Runa");
        assertThat(text(print(demo, "hull-bottom")))
                .contains("Here: stays as it is, drawing OU-110 rev B")
                .contains("Made to OU-110 rev B; the doublers are parts of their own.")
                .doesNotContain("C-06");
        assertThat(text(print(demo, "spar-left"))).doesNotContain("Changes of the design");
    }

    @Test
    void should_cover_every_part_and_joint_once_whole_or_by_assembly() {
        Book whole = book(demo, "");
        List<String> covered = whole.chapters().stream().map(c -> c.made().id()).toList();
        assertThat(covered).doesNotHaveDuplicates();
        assertThat(covered)
                .hasSize(whole.definition().parts().items().size()
                        + whole.definition().joints().items().size());
        assertThat(MakeBook.of(demo, SampleBooks.PROJECT, "no-such-thing")).isEmpty();
        assertThat(MakeBook.of(demo, "no-such-project", "")).isEmpty();
    }
}
