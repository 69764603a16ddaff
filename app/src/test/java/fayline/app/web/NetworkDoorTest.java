package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Role;
import fayline.flow.record.EntryKind;
import java.net.http.HttpResponse;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** The door to the shop's network: setting up, pairing, PINs and how to trust the server. */
class NetworkDoorTest extends OnTheNetwork {
    @Test
    void should_make_the_lead_by_the_code_of_the_console_and_by_nothing_else() throws Exception {
        Browser browser = served.browser();
        assertThat(browser.page("/")).contains("Set up").doesNotContain("With a password");
        assertThat(browser.get("/sign-in/new").body()).contains("Set up");
        String code = served.people().setUpCode();
        assertThat(browser.code("0000-0000-0000").statusCode()).isEqualTo(422);
        HttpResponse<String> granted = browser.code(code);
        assertThat(granted.body()).contains("Who leads?").contains("At least 15 characters");
        String person = served.person(0);
        HttpResponse<String> bad =
                browser.sendFrom(granted.body(), "/sign-in/new", "person", person, "password", "too short");
        assertThat(bad.statusCode()).isEqualTo(422);
        assertThat(bad.body()).contains("9 characters, expected 15");
        HttpResponse<String> done =
                browser.sendFrom(granted.body(), "/sign-in/new", "person", person, "password", ServedNetwork.PASSWORD);
        assertThat(done.statusCode()).as(done.body()).isEqualTo(200);
        assertThat(done.uri().getPath()).isEqualTo("/");
        assertThat(browser.page("/people")).contains("Who may enter");
        Browser other = served.browser();
        assertThat(other.code(code).body()).contains("was used before");
    }

    @Test
    void should_take_a_pairing_code_once_and_send_none_in_an_address() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        Browser lead = served.leadAtDesk();
        HttpResponse<String> shown =
                lead.send("/people", "/people/pairing", "person", crew, "label", "phone of the bench");
        String code = shown.body().replaceAll("(?s).*id=\"one-time-code\">([^<]+)<.*", "$1");
        assertThat(code).matches("[0-9A-Z]{4}-[0-9A-Z]{4}-[0-9A-Z]{4}");
        assertThat(shown.body()).contains("<svg").doesNotContain("?" + code).doesNotContain("=" + code);
        Browser phone = served.browser();
        HttpResponse<String> paired = phone.code(code);
        assertThat(paired.uri().getPath()).isEqualTo("/me");
        assertThat(paired.body()).contains("phone of the bench");
        Browser replay = served.browser();
        HttpResponse<String> again = replay.code(code);
        assertThat(again.statusCode()).isEqualTo(422);
        assertThat(again.body()).contains("was used before, or has ended");
        assertThat(replay.get("/").uri().getPath()).isEqualTo("/sign-in");
    }

    @Test
    void should_switch_person_by_pin_on_a_shared_tablet_and_bar_guesses() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        String inspector = served.admit(3, Role.INSPECTOR);
        Browser tablet = served.browser();
        HttpResponse<String> paired = tablet.code(served.pairingCode("", "bench tablet"));
        assertThat(paired.body()).contains("On this device: bench tablet").contains("Pick who you are");
        HttpResponse<String> in =
                tablet.sendFrom(paired.body(), "/sign-in/pin", "person", crew, "pin", ServedNetwork.PIN);
        assertThat(in.uri().getPath()).isEqualTo("/");
        assertThat(tablet.page("/me")).contains("Hand over to somebody else").contains("crew");
        tablet.send("/me", "/sign-out");
        tablet.send("/sign-in", "/sign-in/pin", "person", inspector, "pin", ServedNetwork.PIN);
        assertThat(tablet.page("/me")).contains("inspector");
        tablet.send("/me", "/sign-out");

        long before = served.head();
        HttpResponse<String> last = tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", "778890");
        for (int i = 1; i < 6; i++) {
            last = tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", "77889" + i);
        }
        assertThat(last.statusCode()).isEqualTo(429);
        assertThat(last.headers().firstValue("Retry-After")).isPresent();
        assertThat(last.body()).contains("too many wrong tries");
        assertThat(served.told(before, EntryKind.SIGN_IN_BARRED)).hasSize(1);
        HttpResponse<String> other =
                tablet.send("/sign-in", "/sign-in/pin", "person", inspector, "pin", ServedNetwork.PIN);
        assertThat(other.statusCode()).as("another person is not barred").isEqualTo(200);
    }

    @Test
    void should_let_a_tablet_idle_only_a_quarter_of_an_hour() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        Browser tablet = served.browser();
        tablet.code(served.pairingCode("", "bench tablet"));
        tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", ServedNetwork.PIN);
        assertThat(tablet.get("/").uri().getPath()).isEqualTo("/");
        served.clock().by(Duration.ofMinutes(16));
        assertThat(tablet.get("/").body()).contains("On this device: bench tablet");
    }

    @Test
    void should_show_how_to_trust_the_server_without_a_word_of_the_shop() throws Exception {
        Browser visitor = served.browser();
        assertThat(visitor.page("/trust"))
                .contains(served.authority().fingerprint())
                .doesNotContain("Ousel");
        HttpResponse<String> file = visitor.get("/trust/authority.crt");
        assertThat(file.headers().firstValue("Content-Type").orElse("")).startsWith("application/x-x509-ca-cert");
        assertThat(file.headers().firstValue("Content-Disposition").orElse("")).startsWith("attachment");
    }

    @Test
    void should_change_pin_and_password_only_with_the_old_one() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        assertThat(lead.send("/me", "/me/pin", "pin", "918273").body()).contains("The PIN is set");
        assertThat(lead.send("/me", "/me/pin", "pin", "564738").statusCode()).isEqualTo(422);
        assertThat(lead.send("/me", "/me/pin", "before", "918273", "pin", "564738")
                        .body())
                .contains("The PIN is set");
        HttpResponse<String> wrong =
                lead.send("/me", "/me/password", "before", "wrong", "password", "a wholly new long one 5");
        assertThat(wrong.body()).contains("The old password is not right");
        HttpResponse<String> right = lead.send(
                "/me", "/me/password", "before", ServedNetwork.PASSWORD, "password", "a wholly new long one 5");
        assertThat(right.body()).contains("The password is changed");
    }

    @Test
    void should_mask_secrets_and_let_password_managers_fill_them() throws Exception {
        String door = served.browser().page("/sign-in");
        assertThat(door).contains("autocomplete=\"one-time-code\"").doesNotContain("With a password");
        served.lead();
        door = served.browser().page("/sign-in");
        assertThat(door)
                .contains("type=\"password\" name=\"password\" autocomplete=\"current-password\"")
                .contains("name=\"name\" autocomplete=\"username\"");
        assertThat(served.leadAtDesk().page("/me"))
                .contains("type=\"password\" name=\"before\" autocomplete=\"current-password\"")
                .contains("type=\"password\" name=\"password\" autocomplete=\"new-password\"")
                .doesNotContain("onpaste");
    }

    @Test
    void should_set_a_pin_by_a_code_from_the_lead() throws Exception {
        served.lead();
        String crew = served.person(1);
        served.people().roster().admit(served.person(0), crew, "", Role.CREW);
        Browser lead = served.leadAtDesk();
        HttpResponse<String> shown = lead.send("/people", "/people/secret", "person", crew);
        String code = shown.body().replaceAll("(?s).*id=\"one-time-code\">([^<]+)<.*", "$1");
        Browser tablet = served.browser();
        tablet.code(served.pairingCode("", "bench"));
        HttpResponse<String> asked = tablet.code(code);
        assertThat(asked.body()).contains("Set a PIN");
        assertThat(tablet.sendFrom(asked.body(), "/sign-in/new", "pin", "123456")
                        .body())
                .contains("first that others would try");
        HttpResponse<String> set = tablet.sendFrom(asked.body(), "/sign-in/new", "pin", "902817");
        assertThat(set.body()).contains("You can sign in with it now");
        tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", "902817");
        assertThat(tablet.page("/me")).contains("crew");
    }
}
