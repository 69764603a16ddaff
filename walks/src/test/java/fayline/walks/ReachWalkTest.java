package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every page on a phone in the light and at a desk in the dark: no breach of WCAG A or AA that the checker finds, nothing too wide. */
class ReachWalkTest {
    private static final List<String> PAGES = List.of(
            "/",
            "/weeks",
            "/weeks?by=moulds&weeks=2",
            "/better",
            "/what-if",
            "/cold",
            "/wishes",
            "/rates",
            "/airframe",
            "/part/hull-side-left",
            "/joint/sides-to-bottom",
            "/laminate/hull-bottom",
            "/recipes",
            "/card/canopy-frame-right/1/lay-up-1",
            "/card/float-shell-left/1/bag-2",
            "/fits",
            "/fits/new",
            "/fit/canopy-left",
            "/fit/canopy-left?assume=yes",
            "/fit/canopy-right/read",
            "/fit/pane-right",
            "/fit/pane-line-right",
            "/fit/canopy-left/why?of=chance",
            "/fit/canopy-left/card",
            "/fit/pane-right/frame",
            "/fit/pane-left/frame",
            "/fit/canopy-right/frame",
            "/fit/pane-right/frame/why?of=pins",
            "/chain/canopy-chain-right",
            "/chain/canopy-chain-left",
            "/heat/float-shell-left?peak=50+degC&ramp=10+K&hold=8+h&weight=yes&strut=yes",
            "/shop",
            "/definition",
            "/who");

    /** Words in tables that scroll sideways, and in lists of facts, that are broken in the middle. */
    private static final String TORN = """
            () => [...document.querySelectorAll('.scroll table, dl.facts')].flatMap(table => {
                const torn = [];
                const texts = document.createTreeWalker(table, NodeFilter.SHOW_TEXT);
                while (texts.nextNode()) {
                    for (const word of texts.currentNode.data.matchAll(/[\\p{L}\\p{N}]+/gu)) {
                        const range = document.createRange();
                        range.setStart(texts.currentNode, word.index);
                        range.setEnd(texts.currentNode, word.index + word[0].length);
                        if (new Set([...range.getClientRects()].map(r => Math.round(r.top))).size > 1) {
                            torn.push(word[0]);
                        }
                    }
                }
                return torn;
            })
            """;

    private static Shopfloor shop;

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

    @TestFactory
    Stream<DynamicTest> should_pass_the_checker() {
        return PAGES.stream()
                .flatMap(path -> Stream.of(
                        DynamicTest.dynamicTest(
                                path + " on a phone, light", () -> check(shop.phone(), path, ColorScheme.LIGHT)),
                        DynamicTest.dynamicTest(
                                path + " at a desk, dark", () -> check(shop.desk(), path, ColorScheme.DARK))));
    }

    @Test
    void should_pass_the_checker_where_a_reading_of_a_fit_is_corrected() {
        Page look = shop.desk();
        look.navigate(shop.at("/fit/canopy-left"));
        String mend = look.locator("a[href*='/reading/']").first().getAttribute("href");
        check(shop.phone(), mend, ColorScheme.LIGHT);
        check(shop.desk(), mend, ColorScheme.DARK);
    }

    private static void check(Page page, String path, ColorScheme scheme) {
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
        assertThat(page.navigate(shop.at(path)).status()).isEqualTo(200);
        check(page);
        page.context().close();
    }

    /** A page as it stands before the reader. */
    static void check(Page page) {
        // a page whose styles are still on the way is none that a reader has
        page.waitForLoadState();
        List<String> found = new AxeBuilder(page)
                        .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                        .analyze()
                        .getViolations()
                        .stream()
                        .map(v -> v.getId() + " at "
                                + v.getNodes().stream()
                                        .limit(3)
                                        .map(n -> String.valueOf(n.getTarget()))
                                        .toList())
                        .toList();
        assertThat(found).isEmpty();
        Number tooWide = (Number)
                page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(tooWide.intValue()).isLessThanOrEqualTo(0);
        assertThat((List<?>) page.evaluate(TORN))
                .as("words of tables and facts torn over two lines")
                .isEmpty();
    }

    @Test
    void should_reach_the_first_link_of_the_page_by_keyboard_alone() {
        Page page = shop.desk();
        page.navigate(shop.at("/"));
        page.keyboard().press("Tab");
        assertThat((String) page.evaluate("() => document.activeElement.textContent"))
                .isNotBlank();
        page.keyboard().press("Enter");
        page.keyboard().press("Tab");
        assertThat((Boolean) page.evaluate("() => document.querySelector('main').contains(document.activeElement)"))
                .isTrue();
    }
}
