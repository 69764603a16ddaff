package fayline.walks;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;

/** At the bench with a phone: a photo with a note, and a pot that rings. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class MannersWalkTest {
    private static final String MADE = "/card/chine-doubler-left/1/";
    private static final String BYTES = "async (a) => { const b = new Uint8Array(await (await fetch(a)).arrayBuffer());"
            + " return Array.from(b.subarray(0, 4096), (c) => String.fromCharCode(c)).join(''); }";

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

    @AfterEach
    void hear() {
        assertThat(shop.errors()).isEmpty();
    }

    private static Page ilse() {
        return shop.as(shop.phone(), "Ilse");
    }

    /** The photo with a place that the store's tests made, 2400 pixels long. */
    static Path photo() {
        return Shopfloor.root().resolve("store/src/test/resources/fayline/store/file/picture/with-place.jpg");
    }

    private static void overflowsNowhere(Page page) {
        Number over = (Number)
                page.evaluate("() => document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(over.intValue()).isZero();
    }

    @Test
    @Order(1)
    void should_make_a_photo_smaller_and_bare_on_the_phone_and_show_it_on_another_screen() {
        Page page = ilse();
        page.navigate(shop.at(MADE + "cut#note"));
        page.locator("#note-text").fill("Fold in the cloth at the aft end.");
        page.locator("#note-choose").setInputFiles(photo());
        assertThat(page.locator("#note form[data-photos][data-ready='1']")).isVisible();
        overflowsNowhere(page);
        String sent = String.valueOf(
                page.evaluate(
                        "async () => { const f = document.getElementById('note-choose').files;"
                                + " const b = new Uint8Array(await f[0].arrayBuffer()); const i = await createImageBitmap(f[0]);"
                                + " const t = Array.from(b.subarray(0, 4096), (c) => String.fromCharCode(c)).join('');"
                                + " return `${f.length} ${i.width} x ${i.height} ${t.includes('Exif')} ${t.startsWith('\\xff\\xd8')}`; }"));
        assertThat(sent).isEqualTo("1 2000 x 1500 false true");
        page.locator("#note label", new Page.LocatorOptions().setHasText("and they agree"))
                .click();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep the note"))
                .click();
        assertThat(page.locator(".said[role=status]")).containsText("Recorded as entry");

        Page other = shop.desk();
        other.navigate(shop.at(MADE + "cut"));
        Locator image = other.locator(".rows .photos img").first();
        image.scrollIntoViewIfNeeded();
        assertThat(image).hasJSProperty("complete", true);
        assertThat(image).hasJSProperty("naturalWidth", 480);
        assertThat(other.locator(".rows .photos").first()).containsText("the people in it agree");
        String whole = other.locator(".rows .photos a").first().getAttribute("href");
        assertThat(String.valueOf(other.evaluate(BYTES, whole)))
                .startsWith("\u00ff\u00d8")
                .doesNotContain("Exif");
    }

    @Test
    @Order(2)
    void should_keep_one_entry_and_one_file_when_a_note_with_a_photo_is_sent_twice() {
        Page page = ilse();
        page.navigate(shop.at(MADE + "prepare#note"));
        page.locator("#note-text").fill("Grain against the arrow.");
        page.locator("#note-choose").setInputFiles(photo());
        assertThat(page.locator("#note form[data-photos][data-ready='1']")).isVisible();
        page.evaluate(
                "() => { const f = document.querySelector('#note form[data-photos]'); const o = () => ({method: 'POST',"
                        + " body: new FormData(f)}); return fetch(f.action, o()).then(() => fetch(f.action, o())); }");
        page.reload();
        assertThat(page.locator("main").innerText().split("Grain against the arrow", -1))
                .hasSize(2);
        // the same photo as the one on the other card: one file, one address
        String here = page.locator(".rows .photos a").first().getAttribute("href");
        page.navigate(shop.at(MADE + "cut"));
        assertThat(page.locator(".rows .photos a").first().getAttribute("href")).isEqualTo(here);
    }

    @Test
    @Order(3)
    void should_keep_the_original_without_its_place_when_it_is_ticked() {
        Page page = ilse();
        page.navigate(shop.at(MADE + "bag-1#note"));
        page.locator("#note summary", new Page.LocatorOptions().setHasText("Original photos"))
                .click();
        page.locator("#note input[name=original]").check();
        page.locator("#note-choose").setInputFiles(photo());
        assertThat(page.locator("#note [data-chosen-says]")).containsText("as taken");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep the note"))
                .click();
        assertThat(page.locator(".rows .photos").first()).containsText("2400 \u00d7 1800");
        String bytes = String.valueOf(
                page.evaluate(BYTES, page.locator(".rows .photos a").first().getAttribute("href")));
        assertThat(bytes).contains("Invented Camera 3").doesNotContain("2026:03:02\0");
    }

    @Test
    @Order(4)
    void should_say_what_to_do_when_a_file_is_no_photo() {
        Page page = ilse();
        page.navigate(shop.at(MADE + "bag-1#note"));
        page.locator("#note-choose").setInputFiles(Shopfloor.root().resolve("README.md"));
        assertThat(page.locator("#note [data-chosen-says]")).containsText("cannot show");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Keep the note"))
                .click();
        assertThat(page.locator(".said.trouble"))
                .containsText("photo 1: found a file of an unknown sort, expected a JPEG or PNG picture");
        // the browser tells of the answer 422 itself
        assertThat(shop.errors()).allMatch(e -> e.contains("422"));
        shop.forgive();
    }

    private static void begin(Page page, String step) {
        page.navigate(shop.at(MADE + step));
        if (page.locator("#which-way").count() > 0) {
            page.locator("#which-way").fill("Taper to the bow, left hand, Ilse agrees");
        }
        page.locator("button.main").click();
    }

    @Test
    @Order(5)
    void should_ring_once_when_a_pot_is_over_and_be_silenced() {
        Page page = ilse();
        for (String step : new String[] {"cut", "prepare"}) {
            begin(page, step);
            Shopfloor.finish(page);
        }
        begin(page, "lay-up-1");
        page.clock().install();
        page.navigate(shop.at(MADE + "lay-up-1"));
        Locator pot = page.locator("[data-pot]").first();
        int minutes = Integer.parseInt(pot.getAttribute("data-minutes"));
        assertThat(minutes).isBetween(3, 600);
        pot.locator("input[value='Mixed now']").click();
        assertThat(pot.locator("time")).containsText("left");
        assertThat(page.locator("[data-ring-alarm]").first())
                .hasText(Pattern.compile("A locked phone may stay silent: set its own alarm too, for \\d\\d:\\d\\d.*"));
        overflowsNowhere(page);
        page.clock().fastForward((minutes - 1) * 60_000L);
        assertThat(page.locator("html")).not().hasAttribute("data-ringing", Pattern.compile(".*"));
        page.reload();
        assertThat(pot.locator("time")).containsText("left");
        page.clock().fastForward(120_000L);
        assertThat(page.locator("html")).hasAttribute("data-ringing", Pattern.compile("pot .*"));
        Locator banner = page.locator("[data-ringing-box]");
        assertThat(banner).containsText("its working life is over");
        overflowsNowhere(page);
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Silence"))
                .click();
        assertThat(banner).hasCount(0);
        assertThat(page.title()).doesNotContain("Ringing");
        page.reload();
        page.clock().fastForward(10_000L);
        assertThat(pot.locator("time")).containsText("ago");
        assertThat(page.locator("html")).not().hasAttribute("data-ringing", Pattern.compile(".*"));
    }

    @Test
    @Order(6)
    void should_stay_silent_on_a_device_that_is_to_be_silent() {
        Page page = ilse();
        page.clock().install();
        page.navigate(shop.at(MADE + "lay-up-1"));
        page.locator("[data-ring-silent]").first().check();
        Locator pot = page.locator("[data-pot]").first();
        pot.locator("input[value='Mixed now']").click();
        page.clock().fastForward((Integer.parseInt(pot.getAttribute("data-minutes")) + 1) * 60_000L);
        assertThat(pot.locator("time")).containsText("ago");
        assertThat(page.locator("[data-ringing-box]")).hasCount(0);
    }

    @Test
    @Order(7)
    void should_type_readings_with_large_keys_and_their_units_and_be_asked_about_a_lost_point() {
        Page page = ilse();
        page.navigate(shop.at(MADE + "bag-1"));
        page.locator("summary", new Page.LocatorOptions().setHasText("Enter a reading"))
                .click();
        Locator form = page.locator("form[action*='/reading']");
        form.locator("select[name=kind]").selectOption("vacuum");
        for (String key : new String[] {"8", "2"}) {
            form.locator("[data-key='" + key + "']").click();
        }
        form.locator("[data-unit='bar']").click();
        assertThat(form.locator("[name=value]")).hasValue("82 bar");
        assertThat(form.locator("[data-key='5']").boundingBox().height).isGreaterThanOrEqualTo(56);
        assertThat(form.locator("[data-unit='inHg']").boundingBox().height).isGreaterThanOrEqualTo(56);
        overflowsNowhere(page);
        form.locator("button", new Locator.LocatorOptions().setHasText("Keep the reading"))
                .click();
        assertThat(page.locator(".said[role=status]")).containsText("Caution: \"82 bar\"");

        page.navigate(shop.at("/shop"));
        Locator air = page.locator("form[action='/shop/air']");
        air.locator("[name=surface]").focus();
        for (String key : new String[] {"1", "7", ".", "2"}) {
            air.locator("[data-key='" + key + "']").click();
        }
        air.locator("[data-unit='degC']").click();
        assertThat(air.locator("[name=surface]")).hasValue("17.2 degC");
        air.locator("[name=humidity]").focus();
        air.locator("[data-key='5']").click();
        air.locator("[data-unit='%']").click();
        assertThat(air.locator("[name=humidity]")).hasValue("5 %");
        overflowsNowhere(page);
    }

    @Test
    @Order(8)
    void should_ring_by_the_clock_of_now_when_the_page_was_kept_long_ago_and_there_is_no_network() throws Exception {
        Page page = ilse();
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        page.navigate(shop.at(MADE + "lay-up-1"));
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        page.reload();
        // as if it had been kept 1000 minutes ago, longer than any pot lasts
        page.evaluate("""
                async () => {
                  const pages = await caches.open("fayline-pages-1");
                  const find = async () => (await pages.keys()).find((k) => k.url.endsWith("/lay-up-1"));
                  while (!await find()) await new Promise((r) => setTimeout(r, 100));
                  const key = await find();
                  const kept = await pages.match(key, { ignoreVary: true });
                  const headers = new Headers(kept.headers);
                  headers.set("Fetched", String(Date.now() - 1000 * 60000));
                  await pages.put(key, new Response(await kept.text(), { headers }));
                }""");
        shop.kill();
        page.clock().install();
        page.reload();
        assertThat(page.locator("[data-kept-line]")).containsText("No network");
        // what was awaited when the page was kept is over by now
        Locator banner = page.locator("[data-ringing-box]");
        assertThat(banner).containsText("reached by computation");
        Locator pot = page.locator("[data-pot]").first();
        int minutes = Integer.parseInt(pot.getAttribute("data-minutes"));
        assertThat(minutes).isBetween(3, 600);
        pot.locator("input[value='Mixed now']").click();
        assertThat(pot.locator("time")).containsText("left");
        page.clock().fastForward((minutes - 1) * 60_000L);
        assertThat(pot.locator("time")).containsText("left");
        assertThat(banner).not().containsText("its working life is over");
        page.clock().fastForward(120_000L);
        assertThat(banner).containsText("its working life is over");
        // the browser tells of the dead server itself
        shop.forgive();
    }
}
