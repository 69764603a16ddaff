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

/**
 * A whole part is made by a crew member on a phone, through a reload, a lost connection and a killed server; and an inspector finds a
 * ply with no help.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TravellerWalkTest {
    private static final String PART = "chine-doubler-left";
    private static final String CARD = "/card/" + PART + "/1/";

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

    private static void start(Page page, String step) {
        page.navigate(shop.at(CARD + step));
        if (page.locator("#which-way").count() > 0) {
            page.locator("#which-way").fill("Taper to the bow, left hand, Ned agrees");
        }
        page.locator("button.main").click();
        assertThat(page.locator("button.main").innerText()).contains("Finish");
    }

    private static void finish(Page page, String step) {
        page.navigate(shop.at(CARD + step));
        Shopfloor.finish(page);
        assertThat(page.locator("main").innerText()).contains("Finished");
    }

    private static Locator ply(Page page, int number) {
        return page.locator("[data-ply='" + number + "']");
    }

    private static void tick(Page page) {
        page.locator("[data-plies-form] button").click();
    }

    /** The card as the shop tells it; a shop that is slow to come back lets the phone show what it kept, which is older. */
    private static void fresh(Page page, String step) {
        page.navigate(shop.at(CARD + step));
        for (int i = 0; i < 10 && (Boolean) page.evaluate("() => 'keptAt' in document.documentElement.dataset"); i++) {
            page.navigate(shop.at(CARD + step));
        }
    }

    /** Until the phone has the card in its store and its worker holds the page. */
    private static void held(Page page) {
        page.evaluate("async () => { await navigator.serviceWorker.ready;"
                + " while (!navigator.serviceWorker.controller) await new Promise((r) => setTimeout(r, 50));"
                + " while (!(await (await caches.open('fayline-pages-1')).keys()).some((k) => k.url === location.href.replace(/#.*/, '')))"
                + " await new Promise((r) => setTimeout(r, 100)); }");
    }

    @Test
    @Order(1)
    void should_lose_nothing_and_double_nothing_from_cutting_to_the_last_look() throws Exception {
        Page page = shop.phone();
        shop.as(page, "Ilse");
        for (String step : List.of("cut", "prepare")) {
            start(page, step);
            finish(page, step);
        }
        start(page, "lay-up-1");
        // a half typed reason survives a reload
        page.locator("[data-plies-form] summary").click();
        page.locator("#ply-why").fill("half a");
        page.reload();
        assertThat(page.locator("#ply-why").inputValue()).isEqualTo("half a");
        page.locator("#ply-why")
                .evaluate("e => { e.value = ''; e.dispatchEvent(new Event('input', {bubbles: true})); }");
        tick(page);
        page.waitForFunction("() => document.querySelector('[data-ply=\"1\"]').textContent.includes('laid')");
        // without network the next ply is kept on the phone, and comes in by itself
        page.navigate(shop.at(CARD + "lay-up-1"));
        held(page);
        shop.kill();
        tick(page);
        page.waitForFunction("() => document.querySelector('[data-kept-here]').textContent.includes('Ply 2')");
        shop.start();
        page.navigate(shop.at("/kept"));
        page.waitForFunction("() => document.querySelector('[data-kept-sent]').textContent.includes('Ply 2')");
        fresh(page, "lay-up-1");
        assertThat(ply(page, 2).innerText()).contains("laid");
        // a cup out of tolerance is said while it is typed; what was acknowledged outlives the server
        page.locator("[data-cup-resin]").fill("200.0 g");
        page.locator("[data-cup-hardener]").fill("50 g");
        assertThat(page.locator("[data-cup-says]").innerText()).contains("add 10.0 g of hardener");
        page.locator("[data-cup-hardener]").fill("60 g");
        assertThat(page.locator("[data-cup-says]").innerText()).contains("in tolerance");
        page.locator("[data-cup] button:not([type=button])").click();
        page.waitForFunction("() => document.querySelector('#cups').textContent.includes('200.0 g and 60 g')");
        shop.kill();
        shop.start();
        fresh(page, "lay-up-1");
        assertThat(page.locator("#cups").innerText()).contains("200.0 g and 60 g");
        while (page.locator("[data-plies-form]").count() > 0) {
            String next = page.locator("[data-ply-next]").inputValue();
            tick(page);
            page.waitForFunction(
                    "(n) => document.querySelector(`[data-ply='${n}']`).textContent.includes('laid')", next);
        }
        finish(page, "lay-up-1");
        start(page, "bag-1");
        finish(page, "bag-1");
        start(page, "inspect");
        page.locator("#signed").selectOption("tove");
        Shopfloor.finish(page);
        assertThat(page.locator("main").innerText()).contains("signed by Tove");
        page.navigate(shop.at("/traveller/" + PART));
        String all = page.locator("main").innerText();
        int plies = page.locator("li strong", new Page.LocatorOptions().setHasText("Ply "))
                .count();
        assertThat(plies).isGreaterThan(2);
        for (int n = 1; n <= plies; n++) {
            assertThat(all.split("Ply " + n + ",", -1)).as("ply %d", n).hasSize(2);
        }
        assertThat(all.split("200.0 g and 60 g", -1)).hasSize(2);
    }

    @Test
    @Order(2)
    void should_give_an_inspector_lot_air_people_and_signature_of_a_named_ply() {
        Page page = shop.desk();
        page.navigate(shop.at("/part/spar-left"));
        page.locator("a", new Page.LocatorOptions().setHasText("Traveller")).click();
        page.locator("#find").fill("ply 3");
        page.locator("#find").press("Enter");
        String found = page.locator("main").innerText();
        assertThat(page.locator("li strong").count()).isEqualTo(1);
        assertThat(found)
                .contains("Ply 3, Spar, Carbon tape 300")
                .contains("L-2616")
                .contains("humidity 62 %")
                .contains("Bram, Ilse, Tove, Ned")
                .contains("Tove, Thu 8 Jan");
    }

    @Test
    @Order(3)
    void should_hold_the_part_while_something_wrong_with_it_is_undecided() {
        Page page = shop.phone();
        shop.as(page, "Ilse");
        page.navigate(shop.at("/card/chine-doubler-right/1/cut"));
        page.locator("#wrong summary").click();
        page.locator("#wrong-text").fill("Cut to the left hand's template.");
        page.locator("#wrong form button:not([type=button])").click();
        assertThat(page.locator("main").innerText()).contains("Recorded as entry");
        assertThat(page.locator("#troubles").innerText()).contains("Cut to the left hand's template");
        page.navigate(shop.at("/card/chine-doubler-right/1/lay-up-1"));
        assertThat(page.locator("main").innerText()).contains("Held").contains("Cut to the left hand's template");
    }
}
