package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.ColorScheme;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Somebody falls ill: the lead enters it, has a better plan searched for, compares, stops, tells the crew; a phone sees it. */
class BetterWalkTest {
    private static final String CREW = "section[aria-labelledby=h-crew]";
    private static final String SEARCHING =
            "() => document.getElementById('better-state').innerText.includes('searching')";

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

    private static Page as(Page page, String person) {
        page.navigate(shop.at("/who"));
        page.locator("button[name=person][value=" + person + "]").click();
        return page;
    }

    private static void away(Page desk, String person) {
        desk.navigate(shop.at("/shop"));
        Locator form = desk.locator("#people details")
                .filter(new Locator.FilterOptions().setHas(desk.locator("#from-" + person)));
        form.locator("summary").click();
        form.locator("#from-" + person).fill("2026-03-03");
        form.locator("#to-" + person).fill("2026-03-06");
        form.locator("#why-" + person).fill("ill");
        form.locator("form[action='/shop/absence'] button").click();
        desk.waitForLoadState();
    }

    private static double hours(Locator text) {
        return Double.parseDouble(text.innerText().replaceAll("[^0-9.]", ""));
    }

    private static Locator worth(Page page) {
        return page.locator("#better-state [data-worth]");
    }

    /** Begins a search that would go on for minutes. */
    private static void begin(Page desk) {
        desk.navigate(shop.at("/better"));
        desk.locator("#effort").selectOption("100");
        desk.locator("#better-start button").click();
        desk.waitForFunction(SEARCHING);
    }

    /** The same, and waits for its first better plan; the page is never loaded anew. */
    private static void search(Page desk) {
        begin(desk);
        desk.evaluate("() => { window.walked = 'here all the time'; }");
        desk.waitForFunction("() => document.querySelectorAll('#better-state details li').length > 1");
        assertThat(desk.evaluate("() => window.walked")).isEqualTo("here all the time");
    }

    private static void stop(Page desk) {
        desk.locator("#better-stop button").click();
        desk.waitForFunction("() => document.getElementById('better-state').innerText.includes('stopped by hand')");
    }

    /** The hours in one column of what counts, together. */
    private static double column(Page desk, int n) {
        return desk.locator("#better-terms td:nth-child(" + n + ")").allInnerTexts().stream()
                .mapToDouble(Double::parseDouble)
                .sum();
    }

    @Test
    void should_search_compare_stop_and_tell_when_somebody_is_ill_so_that_the_phone_sees_another_day() {
        List<String> errors = shop.errors();
        Page phone = as(shop.phone(), "tove");
        Page desk = as(shop.desk(), "runa");
        phone.navigate(shop.at("/"));
        assertThat(phone.locator(CREW).innerText()).contains("with Ilse");
        away(desk, "ilse");
        search(desk);
        assertThat(desk.locator("#better-state").innerText()).contains("No plan can end before");
        assertThat(hours(worth(desk).locator(".strong")))
                .isLessThan(hours(worth(desk).locator(".quiet")));
        assertThat(desk.locator("#better-tell").isVisible()).isFalse();
        stop(desk);
        // Eight figures to a tenth of an hour each.
        assertThat(column(desk, 2)).isCloseTo(hours(worth(desk).locator(".strong")), within(0.45));
        assertThat(column(desk, 3)).isCloseTo(hours(worth(desk).locator(".quiet")), within(0.45));
        desk.locator("#better-tell button").click();
        desk.locator("main", new Page.LocatorOptions().setHasText("The crew is told this plan"))
                .waitFor();
        assertThat(desk.locator("main").innerText())
                .contains("The crew is told this plan", "nothing of it has moved since");
        phone.navigate(shop.at("/"));
        assertThat(phone.locator(CREW).innerText()).contains("Tove").doesNotContain("Ilse");
        assertThat(phone.locator("section[aria-labelledby=h-moved]").innerText())
                .contains("The crew was told this plan", "Nothing has moved since.");
        assertThat(shop.errors()).isEqualTo(errors);
    }

    @Test
    void should_pass_the_checker_and_keep_the_stop_within_reach_while_a_search_goes_on() {
        Page desk = as(shop.desk(), "runa");
        // The better plan of the other walk may be followed already: then hardly a better one is found.
        begin(desk);
        desk.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        ReachWalkTest.check(desk);
        Page phone = shop.phone();
        phone.navigate(shop.at("/better"));
        ReachWalkTest.check(phone);
        BoundingBox stop = phone.locator("#better-stop button").boundingBox();
        assertThat(stop.y + stop.height).isLessThanOrEqualTo(phone.viewportSize().height);
        stop(desk);
    }
}
