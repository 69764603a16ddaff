package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Page;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Changes, stores, orders, costs, book, hours, inspections and the week: each does what it is for on a phone and at a desk, within the width, with
 * no breach that the checker finds and no complaint of the browser.
 */
class RecordPagesWalkTest {
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

    private static final Map<String, Consumer<Page>> ACTS = new TreeMap<>(Map.of(
            "/changes", RecordPagesWalkTest::change,
            "/stores/receive", RecordPagesWalkTest::receive,
            "/stores/count", RecordPagesWalkTest::count,
            "/stores", RecordPagesWalkTest::stores,
            "/orders", RecordPagesWalkTest::order,
            "/costs", RecordPagesWalkTest::costs,
            "/book", RecordPagesWalkTest::book,
            "/hours", RecordPagesWalkTest::hours,
            "/inspections", RecordPagesWalkTest::inspect,
            "/week-told", RecordPagesWalkTest::week));

    @TestFactory
    Stream<DynamicTest> should_do_what_it_is_for_on_a_phone_and_at_a_desk() {
        return ACTS.keySet().stream()
                .flatMap(path -> Stream.of(
                        DynamicTest.dynamicTest(path + " on a phone", () -> walk(shop.phone(), path)),
                        DynamicTest.dynamicTest(path + " at a desk", () -> walk(shop.desk(), path))));
    }

    private static void walk(Page page, String path) {
        page.setDefaultTimeout(90_000);
        shop.as(page, "Runa");
        shop.forgive();
        page.navigate(shop.at(path));
        check(page);
        Objects.requireNonNull(ACTS.get(path)).accept(page);
        check(page);
        page.context().close();
    }

    private static void check(Page page) {
        assertThat(shop.errors()).isEmpty();
        ReachWalkTest.check(page);
        // the checker puts styles in, of which the browser complains
        shop.forgive();
    }

    private static String mark(Page page) {
        return page.viewportSize().width < 500 ? "phone" : "desk";
    }

    private static void send(Page page, String button) {
        Shopfloor.leaving(page, () -> page.locator(button).click());
        assertThat(page.locator(".said[role=status]").innerText()).contains("entry");
    }

    private static void isPdf(Page page, String link) {
        APIResponse answer = page.request().get(shop.at(link));
        assertThat(answer.status()).isEqualTo(200);
        assertThat(new String(answer.body(), 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
    }

    /** A change is raised, accepted, settled in part, and not closed while something is missing. */
    private static void change(Page page) {
        String part = mark(page).equals("phone") ? "aileron-left" : "aileron-right";
        page.locator("main details.fold summary").first().click();
        page.locator("#what").fill("Trailing edge 2 mm thicker (" + mark(page) + ").");
        page.locator("#why").fill("It chips when the cloth is trimmed.");
        page.locator("form[data-draft=change-new] fieldset summary").first().click();
        page.locator("input[name=touches][value='part/" + part + "']").check();
        send(page, "form[data-draft=change-new] button.main");
        check(page);
        assertThat(page.locator("main").innerText()).contains("to be decided", "Trailing edge 2 mm thicker");
        page.locator("#decides").selectOption("runa");
        page.locator("input[name=decision][value=accepted]").check();
        page.locator("#note").fill("Nothing of it is laid up yet.");
        send(page, "form[data-draft=change-decide] button");
        assertThat(page.locator("main").innerText())
                .contains("accepted, being followed", "Missing before it can be closed");
        page.locator("#closes").selectOption("runa");
        Shopfloor.leaving(page, () -> page.locator("#close button.main").click());
        assertThat(page.locator(".said[role=alert]").innerText()).contains("cannot be closed yet", "not settled");
        // the browser tells of every answer that refuses
        shop.forgive();
        page.navigate(shop.at("/print-check"));
        page.locator("#mark").fill(part + " | OU-000 rev A | 000000000000");
        page.locator("main form button.main").click();
        assertThat(page.locator("main [role=status]").innerText()).contains("Do not use it");
    }

    private static void receive(Page page) {
        String lot = "R-" + mark(page);
        page.locator("#receive-lot").fill(lot);
        page.locator("#receive-stuff").selectOption("g-280");
        page.locator("#receive-quantity").fill("12 m2");
        page.locator("#receive-price").fill("9.40 per m2");
        send(page, "main form button.main");
        assertThat(page.locator("main").innerText()).contains("Lot " + lot, "12");
    }

    private static void count(Page page) {
        page.locator("[aria-label='Left of lot L-2611']").fill(mark(page).equals("phone") ? "80 m2" : "79.5 m2");
        send(page, "main form button.main");
        assertThat(page.locator("h1").innerText()).isEqualTo("Stock-takes");
    }

    /** From the stores to a lot, and to what it went into. */
    private static void stores(Page page) {
        page.locator("main a[href*='/stores/lot?lot=L-2615']").first().click();
        assertThat(page.locator("main").innerText()).contains("What moved it", "Spar");
    }

    private static void order(Page page) {
        String name = "o-hinges-" + mark(page);
        page.locator("main details.fold summary").last().click();
        page.locator("#order-name").fill(name);
        page.locator("#order-what").fill("Hinge pins");
        page.locator("#order-quantity").fill("2 pairs");
        page.locator("#order-due").fill("2026-03-20");
        page.locator("#order-name-0").fill("Diameter");
        page.locator("#order-drawn-0").fill("6 mm");
        page.locator("#order-within-0").fill("0.05 mm");
        send(page, "form[action='/orders'] button.main");
        check(page);
        page.locator("#came-0").fill("6.01 mm");
        send(page, "button[value=accept]");
        assertThat(page.locator("main").innerText()).contains("6.01 mm").doesNotContain("It came");
    }

    private static void costs(Page page) {
        assertThat(page.locator("main").innerText()).contains("in EUR", "At completion", "By assembly");
    }

    private static void book(Page page) {
        isPdf(page, "/book/now.pdf?of=spar-left");
        page.locator("#of").selectOption("spar-left");
        send(page, "form[action='/book'] button");
        isPdf(page, page.locator("#printed a.row").first().getAttribute("href"));
    }

    private static void hours(Page page) {
        String all = page.locator(".title-line").innerText();
        page.locator("#from").fill("2026-02-02");
        page.locator("#to").fill("2026-02-08");
        Shopfloor.leaving(page, () -> page.locator("main form button").click());
        assertThat(page.locator(".title-line").innerText()).isNotEqualTo(all);
        isPdf(page, page.locator("a.button[href*='log.pdf']").getAttribute("href"));
    }

    private static void inspect(Page page) {
        page.locator("#who").fill("A visitor, " + mark(page));
        page.locator("#text").fill("Saw the bare hull.");
        page.locator("#visit-choose").setInputFiles(MannersWalkTest.photo());
        page.locator("form[action='/inspections/visit'][data-ready='1']").waitFor();
        send(page, "form[action='/inspections/visit'] > button");
        assertThat(page.locator("#visits").innerText()).contains("A visitor, " + mark(page));
        assertThat(page.locator("#who").inputValue()).isEmpty();
    }

    private static void week(Page page) {
        page.locator("#title").fill("Week nine, from the " + mark(page));
        send(page, "form[method=post] button");
        isPdf(page, page.locator("#told a.row").first().getAttribute("href"));
    }
}
