package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** A crew member at the bench: opens the demonstration on a phone, starts a card, finishes it, sees clock and Today follow. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class BenchWalkTest {
    /** The chine doubler: planned for the first morning, wet, handed, with a window behind it. */
    private static final String MADE = "/card/chine-doubler-left/1/";

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

    private static void start(Page page, String card) {
        page.navigate(shop.at(card));
        if (page.locator("#which-way").count() > 0) {
            page.locator("#which-way").fill("Taper to the bow, left hand, Ilse agrees");
        }
        page.locator("button.main").click();
    }

    private static String clocks(Page page) {
        page.navigate(shop.at("/"));
        return page.locator("section[aria-labelledby=h-clocks]").innerText();
    }

    @Test
    @Order(1)
    void should_show_who_does_what_when_the_demo_is_opened_on_a_phone() {
        Page page = shop.phone();
        page.navigate(shop.at("/"));
        assertThat(page.title()).contains("Today");
        assertThat(page.locator("main").innerText())
                .contains("Runa", "Bram", "Ilse", "Tove", "Ned", "Dew-point margin");
        shop.as(page, "Ilse");
        page.navigate(shop.at("/"));
        assertThat(page.locator("main").innerText()).contains("Cut the plies");
        Number overflow = (Number)
                page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(overflow.intValue()).isZero();
    }

    @Test
    @Order(2)
    void should_run_clock_and_move_today_when_cards_are_started_and_finished() {
        Page page = shop.phone();
        shop.as(page, "Ilse");
        String before = clocks(page);
        for (String step : List.of("cut", "prepare", "lay-up-1")) {
            start(page, MADE + step);
            Locator main = page.locator("button.main");
            assertThat(main.innerText()).contains("Finish");
            Shopfloor.finish(page);
            assertThat(page.locator("main").innerText())
                    .doesNotContain("button.main")
                    .contains("done");
        }
        start(page, MADE + "bag-1");
        Shopfloor.finish(page);
        String after = clocks(page);
        assertThat(before).doesNotContain("Chine doubler, left");
        assertThat(after).contains("Chine doubler, left");
        assertThat(page.locator("section[aria-labelledby=h-moved]").innerText())
                .contains("than")
                .containsAnyOf("earlier", "later");
    }

    @Test
    @Order(3)
    void should_make_one_entry_when_a_form_is_sent_twice() {
        Page page = shop.phone();
        shop.as(page, "Ilse");
        page.navigate(shop.at(MADE + "cut"));
        String form = "form[action*='/note']";
        page.locator("summary", new Page.LocatorOptions().setHasText("note")).click();
        page.locator(form + " textarea, " + form + " input[type=text]").first().fill("Scissors are blunt.");
        page.evaluate(
                "(f) => { const d = new FormData(document.querySelector(f)); const b = new URLSearchParams(d);"
                        + " const o = {method: 'POST', body: b}; const u = document.querySelector(f).action;"
                        + " return fetch(u, o).then(() => fetch(u, o)).then(r => r.status); }",
                form);
        page.reload();
        String text = page.locator("main").innerText();
        assertThat(text.split("Scissors are blunt", -1)).hasSize(2);
    }

    @Test
    @Order(4)
    void should_keep_what_was_acknowledged_when_the_server_is_killed() throws Exception {
        Page page = shop.phone();
        shop.as(page, "Ned");
        page.navigate(shop.at(MADE + "inspect"));
        page.locator("summary", new Page.LocatorOptions().setHasText("note")).click();
        page.locator("form[action*='/note'] textarea, form[action*='/note'] input[type=text]")
                .first()
                .fill("Before the lights went out.");
        page.locator("form[action*='/note'] button").click();
        assertThat(page.locator("main").innerText()).contains("Before the lights went out");
        page.waitForLoadState();
        assertThat(shop.errors())
                .as("what the browser complained of while the shop answered")
                .isEmpty();
        shop.kill();
        shop.start();
        page.navigate(shop.at(MADE + "inspect"));
        assertThat(page.locator("main").innerText()).contains("Before the lights went out");
    }

    @Test
    @Order(5)
    void should_have_no_complaint_of_the_browser_in_the_whole_walk() {
        // the walk before it pulls the plug, having looked until then: that a page is cut off or refused then is no
        // fault of it
        assertThat(shop.errors())
                .allMatch(e -> e.contains("net::ERR_CONNECTION_RE")
                        || e.contains("net::ERR_INCOMPLETE_CHUNKED_ENCODING")
                        // so the browser calls what the worker asked for in vain
                        || e.contains("net::ERR_FAILED"));
    }
}
