package fayline.walks;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A tablet that changes hands while it keeps an entry: that waits for its own person, unseen by the other, and is sent once. */
@Tag("fault")
class SharedTabletWalkTest {
    private static final String TEXT = "Weave lifts at the aft end.";

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

    private static Page crew(Page desk, String name, String pin) {
        Page phone = ThreePeopleWalkTest.pair(shop, desk, shop.phone(), name);
        PeopleWalkTest.pin(shop, phone, pin);
        return phone;
    }

    private static void enter(Page tablet, String name, String pin) {
        tablet.navigate(shop.at("/"));
        PeopleWalkTest.enter(tablet, name, pin);
        assertThat(tablet.locator("h1").first()).containsText("Today");
    }

    @Test
    void should_keep_an_entry_for_its_own_person_when_the_tablet_changes_hands() throws Exception {
        Page desk = ThreePeopleWalkTest.lead(shop);
        List<String> ids = desk.locator("#admit-person option").all().stream()
                .map(o -> o.getAttribute("value"))
                .filter(v -> !v.isEmpty())
                .toList();
        List<String> names = desk.locator("#admit-person option").allInnerTexts();
        PeopleWalkTest.admit(shop, desk, ids.get(0), "crew");
        PeopleWalkTest.admit(shop, desk, ids.get(1), "crew");
        String first = names.get(1).strip();
        String second = names.get(2).strip();
        crew(desk, first, "402917");
        Page phone = crew(desk, second, "615203");
        desk.navigate(shop.at("/people"));
        PeopleWalkTest.shared(desk).locator("button").click();
        Page tablet = shop.phone();
        tablet.setDefaultTimeout(120_000);
        tablet.navigate(
                shop.at("/sign-in#" + desk.locator("#one-time-code").innerText().strip()));
        tablet.locator("#code-form button").click();
        enter(tablet, first, "402917");
        ThreePeopleWalkTest.ready(shop, tablet);

        shop.kill();
        tablet.locator("summary", new Page.LocatorOptions().setHasText("Add a note"))
                .click();
        tablet.locator("#note-text").fill(TEXT);
        tablet.locator("#note-choose").setInputFiles(MannersWalkTest.photo());
        assertThat(tablet.locator("#note form[data-photos][data-ready='1']")).isVisible();
        tablet.locator("form[action*='/note'] button", new Page.LocatorOptions().setHasText("Keep the note"))
                .click();
        ThreePeopleWalkTest.waitFor(tablet, "[data-kept-here]", TEXT);
        assertThat(tablet.locator("[data-kept-here]")).containsText("with a photo");
        // it lies in a drawer while the lead ends its sign-in
        tablet.navigate("about:blank");
        shop.start();
        desk.onDialog(d -> d.accept());
        desk.navigate(shop.at("/people"));
        Locator signIn = desk.locator("li")
                .filter(new Locator.FilterOptions().setHasText("bench tablet"))
                .filter(new Locator.FilterOptions().setHas(desk.locator("form[action='/people/end-sign-in']")));
        signIn.locator("button").first().click();
        desk.locator(".said").waitFor();

        enter(tablet, second, "615203");
        tablet.navigate(shop.at("/kept"));
        ThreePeopleWalkTest.waitFor(tablet, "[data-kept-list]", "It waits until");
        assertThat(tablet.locator("main").innerText()).doesNotContain(TEXT);
        phone.navigate(shop.at(ThreePeopleWalkTest.CUT));
        assertThat(phone.locator("main").innerText()).doesNotContain(TEXT);
        tablet.navigate(shop.at("/me"));
        tablet.locator("button.main").click();

        enter(tablet, first, "402917");
        tablet.navigate(shop.at("/kept"));
        ThreePeopleWalkTest.waitFor(tablet, "[data-kept-sent]", TEXT);
        phone.navigate(shop.at(ThreePeopleWalkTest.CUT));
        String card = phone.locator("main").innerText();
        assertThat(card.split(TEXT, -1)).hasSize(2);
        assertThat(card).contains(first + ": " + TEXT);
        Locator image = phone.locator(".rows .photos img").first();
        image.scrollIntoViewIfNeeded();
        assertThat(image).hasJSProperty("naturalWidth", 480);
    }
}
