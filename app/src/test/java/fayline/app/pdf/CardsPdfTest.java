package fayline.app.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class CardsPdfTest {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private static CardsPdf.Setting setting(Paper paper) {
        return new CardsPdf.Setting("http://127.0.0.1:7423/", "Tue 3 Mar 2026 07:10", "Tue 3 Mar 2026", paper);
    }

    private static PDDocument print(int plies, Paper paper) throws Exception {
        CardSheet sheet = SampleCard.words().sheet(SampleCard.of(plies));
        return Loader.loadPDF(CardsPdf.print(List.of(sheet), setting(paper)));
    }

    @Test
    void should_hold_every_amount_of_the_card_when_printed() throws Exception {
        try (PDDocument pdf = print(4, Paper.A4)) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text)
                    .contains("Lay up the outer plies")
                    .contains("Float shell, left")
                    .contains("LEFT")
                    .contains("227 g")
                    .contains("68.1 g")
                    .contains("Laminating resin <slow> & hardener")
                    .contains("Sensitising")
                    .contains("Where is the bow?")
                    .contains("Revision C, definition 9f2c44d1a7b3")
                    .contains("printed Tue 3 Mar 2026 07:10")
                    .contains("Glass twill 200")
                    .contains("1 / ");
        }
    }

    @Test
    void should_have_the_size_of_the_paper_and_not_be_scaled() throws Exception {
        try (PDDocument a4 = print(4, Paper.A4);
                PDDocument letter = print(4, Paper.LETTER)) {
            assertThat(a4.getPage(0).getMediaBox().getWidth() / POINTS_PER_MM).isCloseTo(210, within(0.2));
            assertThat(a4.getPage(0).getMediaBox().getHeight() / POINTS_PER_MM).isCloseTo(297, within(0.2));
            assertThat(letter.getPage(0).getMediaBox().getWidth() / POINTS_PER_MM)
                    .isCloseTo(215.9, within(0.2));
            assertThat(a4.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo(PDViewerPreferences.PRINT_SCALING.None.name());
        }
    }

    @Test
    void should_cut_nothing_off_when_a_stack_is_long() throws Exception {
        try (PDDocument pdf = print(34, Paper.LETTER)) {
            assertThat(pdf.getNumberOfPages()).isGreaterThan(1);
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(page, 60);
                assertThat(darkInMargin(image)).as("page %d", page + 1).isZero();
            }
        }
    }

    @Test
    void should_open_the_card_when_its_code_is_read() throws Exception {
        try (PDDocument pdf = print(4, Paper.A4)) {
            BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, 300);
            int side = (int) (45 / 25.4 * 300);
            BufferedImage corner = image.getSubimage(image.getWidth() - side, 0, side, side);
            int[] pixels = corner.getRGB(0, 0, side, side, null, 0, side);
            String read = new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels))))
                    .getText();
            // the mark goes along, so that the card's page judges the print in hand
            assertThat(read)
                    .isEqualTo("http://127.0.0.1:7423/card/float-shell-left/1/lay-up-1?project=ousel-1"
                            + "&printed=float-shell-left+%7C+OU-310+rev+C+%7C+9f2c44d1a7b3");
        }
    }

    @Test
    void should_say_so_when_there_are_no_cards() throws Exception {
        try (PDDocument pdf = Loader.loadPDF(CardsPdf.print(List.of(), setting(Paper.A4)))) {
            assertThat(new PDFTextStripper().getText(pdf)).contains("No cards for Tue 3 Mar 2026");
        }
    }

    /** Dark pixels in the outermost five millimetres, where no printer prints. */
    private static int darkInMargin(BufferedImage image) {
        int margin = (int) (5 / 25.4 * 60);
        int dark = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                boolean edge =
                        x < margin || y < margin || x >= image.getWidth() - margin || y >= image.getHeight() - margin;
                if (edge && (image.getRGB(x, y) & 0xff) < 200) {
                    dark++;
                }
            }
        }
        return dark;
    }
}
