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

/** A phone in a corner without network: entries are kept, survive a reload, arrive once, and conflicts are shown to both. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class KeptWalkTest {
    private static final String CUT = "/card/chine-doubler-left/1/cut?project=ousel-1";
    private static final String PREPARE = "/card/chine-doubler-left/1/prepare?project=ousel-1";
    private static final String KEPT = "kept on this phone";
    private static final String RECORDED = "in the record";

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

    /** Writes a note on a card that is open while the server is dead; it is kept here and said so. */
    private static void keep(Page page, String text) {
        Shopfloor.note(page, text);
        Shopfloor.waitFor(page, "[data-kept-here]", text);
        assertThat(here(page).innerText()).contains(KEPT).doesNotContain(RECORDED);
    }

    /** Time passes for what was typed. */
    private static void pass(Page page, int days) {
        page.evaluate(
                "async (d) => { for (const e of await self.faylineKept.all())"
                        + " await self.faylineKept.change(e.n, (o) => ({ typed: o.typed - d * 86400000 })); }",
                days);
    }

    private static Locator here(Page page) {
        return page.locator("[data-kept-here]");
    }

    private static int times(Page page, String path, String text) {
        page.navigate(shop.at(path));
        return page.locator("main").innerText().split(text, -1).length - 1;
    }

    @Test
    @Order(1)
    void should_keep_entries_over_a_reload_and_send_each_once_when_the_network_is_back() throws Exception {
        Page page = shop.phoneOf("Ilse");
        page.navigate(shop.at(PREPARE));
        shop.kill();
        keep(page, "Kept in the corner, one.");
        Shopfloor.waitFor(page, "[data-kept-line]", "No network");
        page.reload();
        Shopfloor.waitFor(page, "[data-kept-here]", "corner, one");
        keep(page, "Kept in the corner, two.");
        assertThat(page.locator("[data-kept-count]").innerText()).contains("2");
        page.navigate(shop.at("/kept"));
        Shopfloor.waitFor(page, "[data-kept-list]", "corner, two");
        shop.start();
        page.locator("[data-kept-send]").click();
        Shopfloor.waitFor(page, "[data-kept-sent]", "corner, two");
        assertThat(page.locator("[data-kept-sent]").innerText())
                .contains(RECORDED)
                .contains("corner, one")
                .doesNotContain(KEPT);
        assertThat(page.locator("[data-kept-list]").innerText()).isBlank();
        assertThat(page.locator("[data-kept-count]").isVisible()).isFalse();
        Page desk = shop.desk();
        assertThat(times(desk, PREPARE, "Kept in the corner, one")).isEqualTo(1);
        assertThat(times(desk, PREPARE, "Kept in the corner, two")).isEqualTo(1);
        String both = desk.locator("main").innerText();
        assertThat(both.indexOf("corner, one")).isLessThan(both.indexOf("corner, two"));
    }

    @Test
    @Order(2)
    void should_show_both_the_conflict_when_a_phone_comes_back_after_a_week() throws Exception {
        Page ned = shop.phoneOf("Ned");
        ned.navigate(shop.at(CUT));
        shop.kill();
        Shopfloor.start(ned);
        Shopfloor.waitFor(ned, "[data-kept-here]", "Start");
        assertThat(ned.locator("[data-kept-after=start]").isVisible()).isTrue();
        pass(ned, 7);
        shop.start();
        Page ilse = shop.phoneOf("Ilse");
        ilse.navigate(shop.at(CUT));
        Shopfloor.start(ilse);
        ned.navigate(shop.at("/kept"));
        Shopfloor.waitFor(ned, "[data-kept-sent]", "Start");
        assertThat(ned.locator("[data-kept-sent]").innerText()).contains("already started");
        for (Page page : List.of(ned, ilse)) {
            page.navigate(shop.at(CUT));
            assertThat(page.locator("main").innerText())
                    .contains("The start that Ilse recorded")
                    .contains("The start that Ned recorded")
                    .contains("without effect");
        }
    }

    @Test
    @Order(3)
    void should_go_on_from_station_to_station_without_network_and_record_each_once() throws Exception {
        Page page = shop.phoneOf("Tove");
        page.navigate(shop.at("/fit/canopy-left/read?state=sealed&kind=gap&unit=mm&at=F1"));
        page.evaluate("async () => { while ((await (await caches.open('fayline-pages-1')).keys())"
                + ".filter((k) => k.url.includes('/fit/canopy-left/read')).length < 8)"
                + " await new Promise((r) => setTimeout(r, 100)); }");
        shop.kill();
        for (String value : new String[] {"2.81", "2.92"}) {
            page.locator("#value").fill(value);
            page.locator("button.main").click();
            Shopfloor.waitFor(page, "[data-kept-here]", value);
        }
        page.waitForFunction("() => document.querySelector('h1').textContent.includes('S1')");
        shop.start();
        page.navigate(shop.at("/kept"));
        Shopfloor.waitFor(page, "[data-kept-sent]", "2.92");
        assertThat(page.locator("[data-kept-list]").innerText()).isBlank();
        assertThat(times(shop.desk(), "/fit/canopy-left/read?state=sealed&kind=gap&unit=mm&at=S1", "2.81 mm"))
                .isEqualTo(1);
    }

    @Test
    @Order(6)
    void should_go_on_to_the_flush_by_itself_without_network_when_a_bulged_part_has_its_gaps() throws Exception {
        Page page = shop.phoneOf("Runa");
        page.navigate(shop.at("/fit/canopy-right/read?state=trimmed&kind=gap&unit=mm&at=F1"));
        int stations = page.locator(".stations li").count();
        page.evaluate(
                "async (n) => { while ((await (await caches.open('fayline-pages-1')).keys())"
                        + ".filter((k) => k.url.includes('/fit/canopy-right/read')).length < 2 * n)"
                        + " await new Promise((r) => setTimeout(r, 100)); }",
                stations);
        shop.kill();
        for (int i = 0; i < stations + 2; i++) {
            String kind = i < stations ? "gap" : "flush";
            page.waitForFunction("(k) => document.querySelector('.keypad-form [name=kind]')?.value === k", kind);
            String value = i < stations ? "3." + i : "0." + (13 + i - stations);
            page.locator("#value").fill(value);
            page.locator("button.main").click();
            Shopfloor.waitFor(page, "[data-kept-here]", value);
        }
        page.waitForFunction("() => document.querySelectorAll('[data-kept-here] li').length >= " + (stations + 2));
        shop.start();
        page.navigate(shop.at("/kept"));
        Shopfloor.waitFor(page, "[data-kept-sent]", "flush 0.14");
        assertThat(page.locator("[data-kept-list]").innerText()).isBlank();
        assertThat(times(shop.desk(), "/fit/canopy-right/read?state=trimmed&kind=flush&unit=mm&at=S1", "0.13 mm"))
                .isEqualTo(1);
    }

    @Test
    @Order(4)
    void should_send_what_was_kept_when_the_server_was_killed_and_is_back() throws Exception {
        Page page = shop.phoneOf("Ilse");
        page.navigate(shop.at(PREPARE));
        shop.kill();
        keep(page, "Written while it was dark.");
        shop.start();
        page.navigate(shop.at("/kept"));
        Shopfloor.waitFor(page, "[data-kept-sent]", "while it was dark");
        assertThat(times(page, PREPARE, "Written while it was dark")).isEqualTo(1);
    }

    @Test
    @Order(5)
    void should_leave_what_was_refused_to_a_person() throws Exception {
        Page page = shop.phoneOf("Ilse");
        page.navigate(shop.at(CUT));
        shop.kill();
        keep(page, "Refused at first.");
        page.evaluate(
                "async () => { const e = (await self.faylineKept.all()).pop(); await self.faylineKept.change(e.n, () =>"
                        + " ({ at: '2027-01-01T00:00:00Z', typed: null })); }");
        shop.start();
        page.navigate(shop.at("/kept"));
        Shopfloor.waitFor(page, "[data-kept-list]", "not taken");
        assertThat(page.locator("[data-kept-list]").innerText()).contains("the phone's clock");
        page.locator("[data-kept-list] label", new Page.LocatorOptions().setHasText("when"))
                .locator("input")
                .fill("2026-03-02T06:00:00Z");
        page.locator("[data-kept-list] button", new Page.LocatorOptions().setHasText("Send it so"))
                .click();
        Shopfloor.waitFor(page, "[data-kept-sent]", "Refused at first");
        assertThat(times(page, CUT, "Refused at first")).isEqualTo(1);
    }

    @Test
    @Order(7)
    void should_show_without_network_no_less_than_the_page_had_taken_over_of_itself() throws Exception {
        Page page = shop.phoneOf("Ilse");
        shop.fresh(page, PREPARE);
        page.evaluate("() => { document.documentElement.dataset.stayed = 'yes'; }");
        Page desk = shop.desk();
        shop.as(desk, "Ned");
        desk.navigate(shop.at(PREPARE));
        Shopfloor.noteAndLeave(desk, "Told at the desk meanwhile.");
        Shopfloor.waitFor(page, "main", "Told at the desk meanwhile");
        assertThat(page.locator("html[data-stayed]").count()).isEqualTo(1);
        shop.kill();
        page.navigate(shop.at("/card/chine-doubler-left/1/prepare"));
        Shopfloor.waitFor(page, "[data-kept-line]", "No network");
        assertThat(page.locator("main").innerText()).contains("Told at the desk meanwhile");
        shop.start();
    }
}
