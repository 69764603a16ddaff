package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The lead at the dry fit: reads every station of the right canopy half by the keys of a phone and sees the move. */
class FitWalkTest {
    private static final String READ = "/fit/canopy-right/read?state=hung";
    private static final List<String> TYPED =
            List.of("3.4", "3.2", "2.9", "2.8", "3.9", "2.5", "2.7", "3.1", "3.0", "2.6", "3.3", "2.9");

    private static final List<String> FLUSHES = List.of("0.1", "-0.1", "0.2", "0", "0.1");

    private static Shopfloor shop;

    /** What the browser said of the checker, which puts styles of its own into the page that our policy blocks. */
    private int ofChecker;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.open();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    private static void type(Page page, String text) {
        text.chars().forEach(c -> page.locator("[data-key='" + (char) c + "']").click());
    }

    /** Presses what leads to another page, and waits for that page: on a slow machine the old one is still there for a while. */
    private static void press(Page page, Locator what) {
        page.evaluate("() => { document.body.dataset.old = 'yes'; }");
        what.click();
        page.waitForFunction("() => !document.body.dataset.old && document.readyState === 'complete'");
    }

    /** Keeps what the page calls an odd reading. */
    private static void keep(Page page) {
        while (page.getByText("Keep it as it is").count() > 0) {
            press(page, page.getByText("Keep it as it is"));
        }
    }

    private void check(Page page) {
        int before = shop.errors().size();
        assertThat(new AxeBuilder(page)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                        .analyze()
                        .getViolations())
                .isEmpty();
        Number overflow = (Number)
                page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(overflow.intValue()).isZero();
        ofChecker += shop.errors().size() - before;
    }

    @Test
    void should_show_the_move_when_all_stations_are_read_by_the_keys_of_a_phone() {
        Page page = shop.as(shop.phone(), "Runa");
        page.navigate(shop.at(READ));
        check(page);
        int stations = page.locator(".stations li").count();
        assertThat(page.locator("[data-key]").all())
                .allSatisfy(k -> assertThat(k.boundingBox().height).isGreaterThanOrEqualTo(56));
        // the half is bulged: after its gaps its flushes are asked for
        for (int i = 0; i < 2 * stations; i++) {
            String typed = i < stations ? TYPED.get(i % TYPED.size()) : FLUSHES.get(i % FLUSHES.size());
            type(page, typed);
            if (i == 1) {
                page.reload();
                assertThat(page.locator("#value").inputValue()).isEqualTo(typed);
            }
            press(page, page.locator(".thumb button"));
            keep(page);
        }
        assertThat(page.url()).endsWith("/fit/canopy-right");
        assertThat(page.locator("section[aria-labelledby=h-fits]").innerText())
                .contains("Does it fit if moved?")
                .containsAnyOf("aft", "forward", "up", "down", "nose-")
                .contains("Flush, with the same move");
        check(page);
        assertThat(shop.errors()).hasSize(ofChecker);
    }
}
