package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.web.frame.Sight;
import fayline.app.web.lots.LotCode;
import fayline.app.web.lots.LotWords;
import fayline.flow.plan.WorkStep;
import fayline.flow.result.step.StepResult;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The label of a lot is printed, photographed and read again. */
class LabelSiteTest extends AtTheDemo {
    private static final String LOT = "L-2611";

    /** What a phone sees that is held askew, not quite still, in dim light. */
    private static byte[] photographed(byte[] pdf, double turnedDeg, double scale, float dim) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage sheet = new PDFRenderer(document).renderImageWithDPI(0, 150);
            int side = 2000;
            BufferedImage seen = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
            Graphics2D g = seen.createGraphics();
            g.setColor(new Color(0.45f, 0.4f, 0.35f));
            g.fillRect(0, 0, side, side);
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
            AffineTransform how = AffineTransform.getTranslateInstance(side / 2.0, side / 2.0);
            how.rotate(Math.toRadians(turnedDeg));
            how.shear(0.08, 0.03);
            how.scale(scale, scale);
            how.translate(-sheet.getWidth() / 2.0, -250);
            g.drawImage(sheet, how, null);
            g.dispose();
            float[] soft = new float[9];
            Arrays.fill(soft, dim / 9);
            BufferedImage blurred = new ConvolveOp(new Kernel(3, 3, soft)).filter(seen, null);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(blurred, "jpg", out);
            return out.toByteArray();
        }
    }

    private HttpResponse<String> read(byte[] photo) throws Exception {
        return browser.postParts(
                "stores/label", List.of(photo), "csrf", Browser.hidden(browser.page("stores/receive"), "csrf"));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 1", "17, 1.3, 0.8", "-74, 0.9, 0.6", "181, 1.2, 0.9"})
    void should_read_the_lot_from_a_photo_of_its_printed_label(double turnedDeg, double scale, float dim)
            throws Exception {
        byte[] label = browser.bytes("stores/lot/label.pdf?lot=" + LOT);
        HttpResponse<String> r = read(photographed(label, turnedDeg, scale, dim));
        assertThat(r.body()).isEqualTo(LOT);
        assertThat(r.statusCode()).isEqualTo(200);
    }

    @Test
    void should_say_what_is_wrong_with_a_photo_without_a_code_and_with_no_photo() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB), "png", out);
        HttpResponse<String> bare = read(out.toByteArray());
        assertThat(bare.statusCode()).isEqualTo(422);
        assertThat(bare.body()).contains("No square code was found").contains("type the number");
        HttpResponse<String> text = read("L-2611".getBytes(StandardCharsets.UTF_8));
        assertThat(text.statusCode()).isEqualTo(422);
        assertThat(text.body()).contains("expected a photo");
        assertThat(browser.send("stores/receive", "stores/label").body()).contains("No photo came");
    }

    @ParameterizedTest
    @ValueSource(strings = {"L-2611", "26/04 B", "Lösung+2 & more", "a=b?c#d", "100%"})
    void should_find_the_number_again_in_the_address_that_a_label_opens(String lot) {
        assertThat(LotCode.number("http://shop.local:8000" + LotWords.address(lot)))
                .isEqualTo(lot);
        assertThat(LotCode.number("  " + lot + " ")).isEqualTo(lot);
    }

    @Test
    void should_leave_an_address_of_somebody_else_as_it_is() {
        assertThat(LotCode.number("https://example.org/x?y=1")).isEqualTo("https://example.org/x?y=1");
        assertThat(LotCode.number("http://[")).isEqualTo("http://[");
    }

    @Test
    void should_lead_from_a_lot_to_the_card_at_the_bench_with_that_lot_picked_and_take_the_code_as_a_scanner_types_it()
            throws Exception {
        String step = started();
        String card = path(step, "");
        String offered = page(card);
        int at = offered.indexOf("<option value=\"", offered.indexOf("id=\"draw-lot\"") + 1);
        at = offered.indexOf("<option value=\"", at + 1) + "<option value=\"".length();
        String lot = offered.substring(at, offered.indexOf('"', at));
        String own = page("stores/lot?lot=" + lot);
        assertThat(own).contains("At the bench now").contains("&amp;lot=" + lot);
        assertThat(page(card + "&lot=" + lot)).contains("<option value=\"" + lot + "\" selected data-first=\"yes\"");
        assertThat(page(card + "&lot=none-such")).contains("Lot none-such is nothing that this step takes.");
        HttpResponse<String> drawn = browser.send(
                card,
                path(step, "/lot"),
                "by",
                demo.person(),
                "lot",
                "",
                "lot-typed",
                demo.server().address() + "stores/lot?lot=" + lot);
        assertThat(drawn.statusCode()).as(drawn.body()).isBetween(200, 399);
        assertThat(demo.open().shop().state().made().step(step).current().draws())
                .anyMatch(d -> d.lot().equals(lot));
    }

    private static String path(String step, String act) {
        String link = Sight.cardLink(step).substring(1);
        int query = link.indexOf('?');
        return link.substring(0, query) + act + link.substring(query);
    }

    /** A step that draws from the stores, begun. */
    private String started() throws Exception {
        for (StepResult s : demo.view().result().steps()) {
            if (s.work().state() == WorkStep.State.TODO
                    && s.needs().stream()
                            .anyMatch(n -> demo.view()
                                    .definition()
                                    .materials()
                                    .find(n.of())
                                    .isPresent())) {
                String card = path(s.id(), "");
                browser.send(card, path(s.id(), "/start"), "by", demo.person(), "people", demo.person());
                if (page(card).contains("id=\"draw-lot\"")) {
                    return s.id();
                }
            }
        }
        throw new AssertionError("no step could be begun");
    }

    private String page(String path) {
        try {
            return browser.page(path);
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(path, e);
        }
    }
}
