package fayline.walks;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The shop's network: the lead is set up, a phone is paired, a shared tablet changes hands, a phone is ended. */
class PeopleWalkTest {
    static final String PASSWORD = "seven planks under the tarpaulin";

    private static Shopfloor shop;

    private final List<String> complaints = new ArrayList<>();
    private int heard;

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

    /** Runs the checker; what the browser complains of meanwhile is the checker's own doing. */
    private void sound(Page page) {
        complaints();
        ReachWalkTest.check(page);
        heard = shop.errors().size();
    }

    /** Everything that the browser complained of so far, but for the checker's doings. */
    private List<String> complaints() {
        List<String> all = shop.errors();
        complaints.addAll(all.subList(heard, all.size()));
        heard = all.size();
        return complaints;
    }

    /** Makes a pairing code on the lead's page and leads back there. */
    private String pairing(Page desk, Locator form) {
        form.locator("button").click();
        String code = desk.locator("#one-time-code").innerText().strip();
        sound(desk);
        desk.navigate(shop.at("/people"));
        return code;
    }

    /** The row of somebody, unfolded. */
    static Locator of(Page desk, String name) {
        Locator row = desk.locator("li")
                .filter(new Locator.FilterOptions()
                        .setHas(desk.locator("strong", new Page.LocatorOptions().setHasText(name))));
        row.locator("summary").first().click();
        return row.first();
    }

    /** Lets somebody enter. */
    static void admit(Shopfloor shop, Page desk, String person, String role) {
        desk.navigate(shop.at("/people"));
        Locator form = desk.locator("form[action='/people/admit']");
        if (!form.isVisible()) {
            desk.locator("summary", new Page.LocatorOptions().setHasText("Let somebody enter"))
                    .click();
        }
        form.locator("#admit-person").selectOption(person);
        form.locator("#admit-role").selectOption(role);
        form.locator("button").click();
        assertThat(desk.locator(".said").innerText()).contains("Done, and recorded");
    }

    /** Somebody gives themselves a PIN on their own phone. */
    static void pin(Shopfloor shop, Page phone, String pin) {
        phone.navigate(shop.at("/me"));
        phone.locator("#pin-new").fill(pin);
        phone.locator("form[action='/me/pin'] button").click();
        assertThat(phone.locator(".said").innerText()).contains("The PIN is set");
    }

    /** Enters at a shared tablet. */
    static void enter(Page tablet, String name, String pin) {
        tablet.locator("label.tick", new Page.LocatorOptions().setHasText(name)).click();
        tablet.locator("#pin").fill(pin);
        tablet.locator("form[action='/sign-in/pin'] button").click();
    }

    /** The form that pairs a shared tablet, filled in. */
    static Locator shared(Page desk) {
        Locator shared = desk.locator("form[action='/people/pairing']")
                .filter(new Locator.FilterOptions().setHas(desk.locator("#tablet")));
        shared.locator("#tablet").fill("bench tablet");
        return shared;
    }

    @Test
    void should_set_up_pair_a_phone_and_let_a_tablet_change_hands() {
        Page desk = shop.desk();
        desk.navigate(shop.at("/weeks"));
        assertThat(desk.locator("h1").innerText()).isEqualTo("Set up");
        assertThat(desk.content()).doesNotContain("Ousel");
        sound(desk);
        desk.locator("#code").fill(shop.code());
        desk.locator("#code-form button").click();
        sound(desk);
        desk.locator("#person").selectOption(new com.microsoft.playwright.options.SelectOption().setIndex(1));
        String lead = (String) desk.evaluate("() => document.getElementById('person').selectedOptions[0].textContent");
        desk.locator("[data-shows=password]").check();
        desk.locator("#password").fill(PASSWORD);
        desk.locator("form button.main").click();
        assertThat(desk.locator("h1").first().innerText()).contains("Today");
        desk.navigate(shop.at("/people"));
        sound(desk);
        List<String> ids = desk.locator("#admit-person option").all().stream()
                .map(o -> o.getAttribute("value"))
                .filter(v -> !v.isEmpty())
                .toList();
        List<String> names = desk.locator("#admit-person option").allInnerTexts();
        admit(shop, desk, ids.get(0), "crew");
        admit(shop, desk, ids.get(2), "inspector");
        String crew = names.get(1).strip();
        String inspector = names.get(3).strip();

        Page phone = shop.phone();
        phone.navigate(shop.at("/sign-in#" + pairing(desk, of(desk, crew).locator("form[action='/people/pairing']"))));
        assertThat(phone.url()).doesNotContain("#");
        assertThat(phone.locator("#code-form button").innerText()).isEqualTo("Pair this device");
        phone.locator("#code-form button").click();
        assertThat(phone.locator("h1").innerText()).isEqualTo(crew);
        sound(phone);
        pin(shop, phone, "402917");
        phone.navigate(shop.at("/shop"));
        assertThat(phone.locator("form[action='/shop/air']").count()).isEqualTo(1);
        assertThat(phone.locator("form[action='/shop/absence']").count()).isZero();
        phone.locator("#air-air").fill("19.5 degC");
        phone.locator("form[action='/shop/air'] button.main").click();
        assertThat(phone.locator(".said").innerText()).contains("Recorded");

        Page second = shop.phone();
        // this one has the door open before it is shown the code
        second.navigate(shop.at("/sign-in"));
        second.navigate(
                shop.at("/sign-in#" + pairing(desk, of(desk, inspector).locator("form[action='/people/pairing']"))));
        second.waitForFunction("() => location.hash === '' && document.getElementById('code').value !== ''");
        second.locator("#code-form button").click();
        pin(shop, second, "615203");

        Page tablet = shop.phone();
        Locator shared = shared(desk);
        tablet.navigate(shop.at("/sign-in#" + pairing(desk, shared)));
        tablet.locator("#code-form button").click();
        sound(tablet);
        enter(tablet, crew, "402917");
        assertThat(tablet.locator("h1").first().innerText()).contains("Today");
        tablet.navigate(shop.at("/me"));
        assertThat(tablet.locator(".title-line").innerText()).contains(crew).contains("by PIN");
        tablet.locator("button.main").click();
        enter(tablet, inspector, "000111");
        assertThat(tablet.locator("[role=alert]").innerText()).contains("That PIN is not right");
        enter(tablet, inspector, "615203");
        tablet.navigate(shop.at("/me"));
        assertThat(tablet.locator(".title-line").innerText()).contains(inspector);

        desk.navigate(shop.at("/people"));
        assertThat(desk.locator("main").innerText()).contains("bench tablet").contains(lead.strip());
        desk.onDialog(d -> d.accept());
        Locator device = desk.locator("li")
                .filter(new Locator.FilterOptions().setHasText("phone of " + crew))
                .filter(new Locator.FilterOptions().setHas(desk.locator("form[action='/people/end-device']")));
        device.locator("button").click();
        desk.locator(".said").waitFor();
        phone.navigate(shop.at("/"));
        assertThat(phone.locator("h1").innerText()).isEqualTo("Sign in");
        // the one refused PIN is told as an error of the network, and nothing else
        assertThat(complaints()).allMatch(e -> e.contains("422"));
    }
}
