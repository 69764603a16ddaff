package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A new fit whose edge is a DXF drawing, begun on a phone: gaps by the keys, one of them put right on its own form, then test castings
 * by the keys until the bond line stands on page and card.
 */
class MendWalkTest {
    private static final List<String> GAPS = List.of("3.4", "3.3", "2.7", "2.6");
    private static final List<String> CASTINGS = List.of("1.8", "2.2", "2.0", "2.0");

    private static Shopfloor shop;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.empty();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    /** A closed polyline of 500 by 300 mm, in mm. */
    private static String dxf() {
        StringBuilder s = new StringBuilder("0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n");
        s.append("0\nSECTION\n2\nENTITIES\n0\nLWPOLYLINE\n8\n0\n90\n4\n70\n1\n");
        for (int[] p : new int[][] {{0, 0}, {500, 0}, {500, 300}, {0, 300}}) {
            s.append("10\n").append(p[0]).append("\n20\n").append(p[1]).append('\n');
        }
        return s.append("0\nENDSEC\n0\nEOF\n").toString();
    }

    private static void fits(Page page) {
        Number overflow = (Number)
                page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(overflow.intValue()).as(page.url()).isZero();
    }

    private static void read(Page page, List<String> values) {
        for (String v : values) {
            for (int i = 0; i < v.length(); i++) {
                page.locator("[data-key='" + v.charAt(i) + "']").click();
            }
            page.locator(".thumb button").click();
            page.waitForLoadState();
            while (page.getByText("Keep it as it is").count() > 0) {
                page.getByText("Keep it as it is").click();
                page.waitForLoadState();
            }
        }
    }

    private static void begin(Page page) {
        page.navigate(shop.at("/fits/new"));
        for (List<String> f : List.of(
                List.of("#by", "Zoe"),
                List.of("#name", "Hatch"),
                List.of("#gap", "3"),
                List.of("#tolerance", "0.5"),
                List.of("#flush-tolerance", "0.5"))) {
            page.locator(f.get(0)).fill(f.get(1));
        }
        Locator drawing = page.locator("input[name=edge][value=drawing]");
        page.locator("label[for='" + drawing.getAttribute("id") + "']").click();
        page.locator("#drawing-file")
                .setInputFiles(new FilePayload("edge.dxf", "image/vnd.dxf", dxf().getBytes(StandardCharsets.US_ASCII)));
        page.waitForFunction("() => document.getElementById('drawing').value !== ''");
        page.locator("#spread").fill("4");
        fits(page);
        page.locator(".thumb button").click();
        page.waitForLoadState();
    }

    @Test
    void should_take_a_drawn_edge_gaps_a_correction_and_castings_on_a_phone() {
        Page page = shop.phone();
        begin(page);
        assertThat(page.locator("h1").innerText()).isEqualTo("Station 1");
        fits(page);
        read(page, GAPS);
        page.navigate(shop.at("/fit/hatch"));
        assertThat(page.locator("#h-fits").innerText()).isEqualTo("Does it fit if moved?");
        assertThat(page.locator(".fit-drawing svg").first().isVisible()).isTrue();
        String before = page.locator("[data-move]").innerText();
        fits(page);
        correct(page);
        String after = page.locator("[data-move]").innerText();
        assertThat(after).isNotEqualTo(before);
        cast(page);
        assertThat(shop.errors()).isEmpty();
    }

    /** The first reading was 3.4 and is put right to 3.0. */
    private static void correct(Page page) {
        Locator typed = page.locator("a[href*='/reading/']").first();
        String link = String.valueOf(typed.getAttribute("href"));
        page.navigate(shop.at(link));
        assertThat(page.locator("h1").innerText()).isEqualTo("Correct a reading");
        assertThat(page.locator("#value").inputValue()).startsWith("3.4");
        fits(page);
        page.locator("#value").fill("3.0");
        page.locator("#why-correct").fill("read beside the mark");
        page.reload();
        assertThat(page.locator("#value").inputValue()).as("kept over a reload").isEqualTo("3.0");
        page.locator("form[action$='/correct'] button.main").click();
        page.waitForLoadState();
        page.navigate(shop.at("/fit/hatch"));
        assertThat(page.content()).contains("read beside the mark").contains("<s>3.4 mm</s>");
    }

    private static void cast(Page page) {
        page.navigate(shop.at("/fit/hatch/read?kind=casting"));
        read(page, CASTINGS);
        page.navigate(shop.at("/fit/hatch"));
        assertThat(page.content())
                .contains("Bond line, by test casting")
                .contains("1.8 mm (1) to 2.2 mm (2)")
                .contains("4 of 4 stations cast");
        fits(page);
        page.navigate(shop.at("/fit/hatch/card"));
        assertThat(page.content()).contains("Bond line by test casting").contains("1.8 mm (1) to 2.2 mm (2)");
        fits(page);
    }
}
