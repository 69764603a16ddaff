package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Three browsers as three people on one server that is killed while they write, and one whose sign-in is ended. */
@Tag("fault")
class ThreePeopleWalkTest {
    private static final int KILLS = Integer.getInteger("fayline.kills", 3);
    static final String CUT = "/card/chine-doubler-left/1/cut?project=ousel-1";

    private static Shopfloor shop;

    @BeforeAll
    static void open() throws Exception {
        shop = Shopfloor.network();
    }

    @AfterAll
    static void close() throws Exception {
        if (shop != null) {
            shop.close();
        }
    }

    /** The shop's lead at a desk, who has just become it. */
    static Page lead(Shopfloor shop) {
        Page desk = shop.desk();
        desk.setDefaultTimeout(120_000);
        desk.navigate(shop.at("/"));
        desk.locator("#code").fill(shop.code());
        desk.locator("#code-form button").click();
        desk.locator("#person").selectOption(new SelectOption().setIndex(1));
        desk.locator("[data-shows=password]").check();
        desk.locator("#password").fill(PeopleWalkTest.PASSWORD);
        desk.locator("form button.main").click();
        desk.navigate(shop.at("/people"));
        return desk;
    }

    private static String pairing(Shopfloor shop, Page desk, String name) {
        desk.navigate(shop.at("/people"));
        PeopleWalkTest.of(desk, name)
                .locator("form[action='/people/pairing'] button")
                .click();
        return desk.locator("#one-time-code").innerText().strip();
    }

    /** Pairs a phone with a code from the lead's page. */
    static Page pair(Shopfloor shop, Page desk, Page phone, String name) {
        phone.setDefaultTimeout(120_000);
        phone.navigate(shop.at("/sign-in#" + pairing(shop, desk, name)));
        phone.locator("#code-form button").click();
        assertThat(phone.locator("h1").innerText()).isEqualTo(name);
        return phone;
    }

    /** On a card, with the worker at work. */
    static void ready(Shopfloor shop, Page page) {
        page.navigate(shop.at(CUT));
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        page.navigate(shop.at(CUT));
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
    }

    static void waitFor(Page page, String list, String text) {
        page.locator(list, new Page.LocatorOptions().setHasText(text)).first().waitFor();
    }

    @Test
    void should_record_once_what_each_typed_when_the_server_was_killed_and_when_a_sign_in_was_ended() throws Exception {
        Page desk = lead(shop);
        List<String> ids = desk.locator("#admit-person option").all().stream()
                .map(o -> o.getAttribute("value"))
                .filter(v -> !v.isEmpty())
                .toList();
        List<String> names = desk.locator("#admit-person option").allInnerTexts();
        PeopleWalkTest.admit(shop, desk, ids.get(0), "crew");
        PeopleWalkTest.admit(shop, desk, ids.get(1), "crew");
        String last = names.get(2).strip();
        Page first = pair(shop, desk, shop.phone(), names.get(1).strip());
        Page second = pair(shop, desk, shop.phone(), last);
        List<Page> three = List.of(desk, first, second);
        for (int kill = 0; kill < KILLS; kill++) {
            three.forEach(p -> ready(shop, p));
            shop.kill();
            for (int i = 0; i < three.size(); i++) {
                Shopfloor.note(three.get(i), "Of " + i + " in the dark, " + kill + ".");
                waitFor(three.get(i), "[data-kept-here]", "Of " + i + " in the dark, " + kill);
            }
            shop.start();
            for (int i = 0; i < three.size(); i++) {
                three.get(i).navigate(shop.at("/kept"));
                waitFor(three.get(i), "[data-kept-sent]", "Of " + i + " in the dark, " + kill);
            }
        }
        ended(desk, second, last);
        desk.navigate(shop.at(CUT));
        String card = desk.locator("main").innerText();
        for (int kill = 0; kill < KILLS; kill++) {
            for (int i = 0; i < three.size(); i++) {
                assertThat(card.split("Of " + i + " in the dark, " + kill, -1)).hasSize(2);
            }
        }
        assertThat(card.split("Typed though ended", -1)).hasSize(2);
    }

    /** What is typed after a sign-in was ended stays on the phone until its person is back. */
    private static void ended(Page desk, Page phone, String name) {
        ready(shop, phone);
        desk.navigate(shop.at("/people"));
        desk.onDialog(d -> d.accept());
        Locator device = desk.locator("li")
                .filter(new Locator.FilterOptions().setHasText("phone of " + name))
                .filter(new Locator.FilterOptions().setHas(desk.locator("form[action='/people/end-device']")));
        device.locator("button").click();
        desk.locator(".said").waitFor();
        Shopfloor.note(phone, "Typed though ended.");
        waitFor(phone, "h1", "Kept on this phone");
        assertThat(phone.locator("main").innerText()).contains("not yet in the record");
        pair(shop, desk, phone, name);
        phone.navigate(shop.at("/kept"));
        waitFor(phone, "[data-kept-sent]", "Typed though ended");
    }
}
