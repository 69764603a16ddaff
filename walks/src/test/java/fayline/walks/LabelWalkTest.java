package fayline.walks;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lot is drawn by a photo of its label. */
class LabelWalkTest {
    private static Path photo(byte[] label, Path folder) throws IOException {
        Path file = folder.resolve("label.png");
        try (PDDocument document = Loader.loadPDF(label)) {
            BufferedImage seen = new PDFRenderer(document).renderImageWithDPI(0, 150);
            ImageIO.write(seen, "png", file.toFile());
        }
        return file;
    }

    @Test
    void should_draw_the_lot_whose_label_was_photographed(@TempDir Path folder) throws Exception {
        try (Shopfloor shop = Shopfloor.open()) {
            Page page = shop.phone();
            shop.as(page, "Ilse");
            page.navigate(shop.at("/card/chine-doubler-left/1/cut"));
            page.locator("#which-way").fill("Taper to the bow, left hand, Ned agrees");
            page.locator("button.main").click();
            assertThat(page.locator("button.main")).containsText("Finish");
            page.locator("#lots summary").first().click();
            String lot =
                    page.locator("#draw-lot option:not([data-none])").first().getAttribute("value");
            Path file = photo(
                    page.request()
                            .get(shop.at("/stores/lot/label.pdf?lot=" + lot))
                            .body(),
                    folder);
            Locator box = page.locator("#lots .lots");
            assertThat(box.getByText("Photograph its label")).isVisible();
            box.locator("[data-label-photo]").setInputFiles(file);
            assertThat(box.locator("[data-label-says]")).hasText("Read: lot " + lot + ".");
            assertThat(page.locator("#draw-lot-typed")).hasValue(lot);
            page.locator("#lots form button").last().click();
            assertThat(page.locator("#lots h2")).hasText("Lots drawn: 1");
            assertThat(page.locator("#lots .rows")).containsText(lot);
        }
    }
}
