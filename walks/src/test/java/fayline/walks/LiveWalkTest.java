package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Two people at two screens of one shop: what one does stands on the other's page, and nothing that is typed there is lost. */
class LiveWalkTest {
    private static final String MADE = "/card/chine-doubler-left/1/";
    private static final String LINE = "[data-live-line]";

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

    private static Page at(Page page, String name, String path) {
        // a guard against hanging, not a measure
        page.setDefaultTimeout(90_000);
        shop.as(page, name);
        page.navigate(shop.at(path));
        return page;
    }

    private static void follows(Page page, String how) {
        page.waitForFunction("how => document.documentElement.dataset.follows === how", how);
    }

    private static void waitFor(Page page, String where, String words) {
        page.waitForFunction(
                "([where, words]) => document.querySelector(where)?.innerText.includes(words)",
                new Object[] {where, words});
    }

    /** The refusals are this walk's own. */
    private static void complainsOfRefusedStreamsAlone() {
        assertThat(shop.errors()).allMatch(e -> e.contains("503"));
    }

    /** What the page would hold if it were asked for now, but for what differs on every page, against what it holds. */
    private static String differs(Page page) {
        return (String) page.evaluate("""
                async () => {
                  const plain = (m) => {
                    const c = m.cloneNode(true);
                    c.querySelectorAll("input[type=hidden], .said, svg, [data-ring-box], [data-unit-keys]").forEach((e) => e.remove());
                    c.querySelectorAll("time").forEach((e) => e.replaceChildren());
                    return c.textContent.replace(/\\s+/g, " ");
                  };
                  const fresh = await (await fetch(location.href, { headers: { "Fayline-By-Itself": "yes" } })).text();
                  const there = plain(new DOMParser().parseFromString(fresh, "text/html").getElementById("main"));
                  const here = plain(document.getElementById("main"));
                  return here === there ? "" : `here: ${here}\\nthere: ${there}`;
                }""");
    }

    @Test
    void should_show_on_other_screens_what_somebody_does_and_leave_alone_what_is_being_typed() {
        Page today = at(shop.desk(), "Bram", "/");
        Page desk = at(shop.desk(), "Tove", MADE + "cut");
        Page phone = at(shop.phone(), "Ilse", MADE + "cut");
        follows(today, "stream");
        follows(desk, "stream");
        today.evaluate("() => { window.stays = document.querySelector('#h-crew'); }");
        desk.locator("summary", new Page.LocatorOptions().setHasText("Add a note"))
                .click();
        desk.locator("#note-text").fill("Half a sentence");
        desk.evaluate("() => scrollTo(0, document.body.scrollHeight)");

        if (phone.locator("#which-way").count() > 0) {
            phone.locator("#which-way").fill("Taper to the bow, left hand, Ilse agrees");
        }
        phone.locator("button.main").click();
        assertThat(phone.locator("button.main").innerText()).contains("Finish");

        waitFor(desk, ".title-line", "at work");
        waitFor(desk, "button.main", "Finish");
        assertThat(desk.locator("#note-text").inputValue()).isEqualTo("Half a sentence");
        assertThat(desk.evaluate("() => document.activeElement.id")).isEqualTo("note-text");
        assertThat(desk.locator("details:has(#note-text)").getAttribute("open")).isNotNull();
        assertThat(((Number) desk.evaluate("() => scrollY")).intValue()).isPositive();
        waitFor(today, "#moving", "at work");
        assertThat(differs(today)).isEmpty();
        // the page was not loaded anew
        assertThat(today.evaluate("() => window.stays === document.querySelector('#h-crew')"))
                .isEqualTo(true);

        desk.locator("form[action*='/note'] button").click();
        assertThat(desk.locator("main").innerText()).contains("Half a sentence");
        waitFor(phone, "main", "Half a sentence");
        assertThat(differs(phone)).isEmpty();
        complainsOfRefusedStreamsAlone();
    }

    @Test
    void should_leave_a_form_alone_that_somebody_is_in_and_say_that_there_is_news_about_it() {
        Page desk = at(shop.desk(), "Tove", "/shop");
        Page lead = at(shop.desk(), "Runa", "/shop");
        follows(desk, "stream");
        for (Page page : new Page[] {desk, lead}) {
            page.locator("#lots summary").first().click();
        }
        String quantity = "#lots input[name=quantity]";
        String before = desk.locator(quantity).first().inputValue();
        desk.locator(quantity).first().fill("77 kg");
        lead.locator(quantity).first().fill("88 kg");
        lead.locator("#lots form button").first().click();
        waitFor(lead, ".said", "");
        waitFor(desk, LINE, "about the form you are in");
        assertThat(desk.locator(quantity).first().inputValue()).isEqualTo("77 kg");
        assertThat(desk.locator("#lots summary").first().innerText()).contains("88 kg");
        assertThat(before).isNotEqualTo("88 kg");
    }

    @Test
    void should_ask_now_and_then_where_the_stream_is_refused() {
        Page phone = shop.phone();
        phone.route("**/live", r -> r.fulfill(new Route.FulfillOptions().setStatus(503)));
        at(phone, "Ilse", MADE + "prepare");
        follows(phone, "asking");
        Page desk = at(shop.desk(), "Tove", MADE + "prepare");
        Shopfloor.note(desk, "Seen without a stream.");
        waitFor(phone, "main", "Seen without a stream.");
        complainsOfRefusedStreamsAlone();
    }

    @Test
    void should_say_so_where_a_device_has_seen_a_later_state_of_the_record() {
        Page phone = at(shop.phone(), "Ilse", "/");
        follows(phone, "stream");
        phone.evaluate("""
                () => {
                  const [record, head, ...rest] = localStorage.getItem("fayline-seen").split(" ");
                  localStorage.setItem("fayline-seen", [record, Number(head) + 40, ...rest].join(" "));
                }""");
        phone.reload();
        waitFor(phone, LINE, "this device has seen entry");
        phone.evaluate(
                "() => localStorage.setItem('fayline-seen', localStorage.getItem('fayline-seen').replace(/^\\S+/, 'another'))");
        phone.reload();
        follows(phone, "stream");
        assertThat(phone.locator(LINE).isVisible()).isFalse();
    }
}
