package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.SignIns;
import fayline.app.usecase.people.Way;
import java.net.HttpCookie;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

/** What a browser holds once somebody is signed in: cookies and tokens, how they end, and that none is forged. */
class NetworkSignInTest extends OnTheNetwork {
    private static String token(Browser browser) {
        return browser.cookies().stream()
                .filter(c -> c.getName().equals("__Host-fayline-in"))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("");
    }

    @Test
    void should_set_cookies_that_scripts_other_sites_and_plain_connections_never_see() throws Exception {
        served.lead();
        Browser browser = served.browser();
        String csrf = Browser.hidden(browser.page("/sign-in"), "csrf");
        String before = browser.cookies().toString();
        HttpResponse<String> in = browser.raw(
                "POST",
                "/sign-in",
                "csrf=" + csrf + "&name=" + served.person(0) + "&password="
                        + ServedNetwork.PASSWORD.replace(" ", "%20"));
        assertThat(in.statusCode()).isEqualTo(303);
        List<String> set = in.headers().allValues("Set-Cookie");
        assertThat(set)
                .hasSize(2)
                .allSatisfy(c -> assertThat(c)
                        .startsWith("__Host-")
                        .contains("Path=/")
                        .contains("Secure")
                        .contains("HttpOnly")
                        .contains("SameSite=Strict")
                        .doesNotContain("Domain="));
        assertThat(browser.cookies().toString()).isNotEqualTo(before);
        assertThat(in.headers().firstValue("Strict-Transport-Security")).contains("max-age=31536000");
        assertThat(browser.raw("GET", "/", "").headers().firstValue("Cache-Control"))
                .contains("no-store");
    }

    @Test
    void should_give_a_fresh_session_and_token_at_each_sign_in_and_end_the_old_ones() throws Exception {
        served.lead();
        Browser browser = served.browser();
        String door = browser.page("/sign-in");
        List<HttpCookie> planted = List.copyOf(browser.cookies());
        HttpResponse<String> in =
                browser.sendFrom(door, "/sign-in", "name", served.person(0), "password", ServedNetwork.PASSWORD);
        assertThat(in.statusCode()).isEqualTo(200);
        Browser attacker = served.browser();
        attacker.holds(planted);
        assertThat(attacker.page("/")).contains("With a password");
        // the token of the page before signing in is worth nothing afterwards
        assertThat(browser.post("/me/pin", "csrf", Browser.hidden(door, "csrf"), "pin", "918273")
                        .statusCode())
                .isEqualTo(403);
        String first = token(browser);
        Browser second = served.leadAtDesk();
        assertThat(token(second)).isNotEqualTo(first);
        assertThat(token(second)).hasSizeGreaterThanOrEqualTo(43);
    }

    @Test
    void should_refuse_a_stolen_cookie_of_a_sign_in_that_was_ended() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        Browser phone = served.phoneOf(crew);
        assertThat(phone.page("/")).contains("Today");
        Browser thief = served.browser();
        thief.holds(List.copyOf(phone.cookies()));
        assertThat(thief.page("/"))
                .as("while it holds, the cookie is the sign-in")
                .contains("Today");
        Browser lead = served.leadAtDesk();
        String people = lead.page("/people");
        String device = Browser.hidden(people, "device");
        HttpResponse<String> ended = lead.sendFrom(people, "/people/end-device", "device", device);
        assertThat(ended.body()).contains("Done, and recorded");
        for (Browser b : List.of(phone, thief)) {
            assertThat(b.get("/").uri().getPath()).isEqualTo("/sign-in");
            HttpResponse<String> changed = b.raw("POST", "/shop/air", "air=20%20degC&csrf=x");
            assertThat(changed.statusCode()).isEqualTo(401);
            assertThat(changed.body()).contains("sign-in has ended").contains("Nothing was done");
        }
    }

    @Test
    void should_refuse_a_token_after_signing_out_idling_and_for_a_person_who_was_removed() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        Browser phone = served.phoneOf(crew);
        List<HttpCookie> kept = List.copyOf(phone.cookies());
        String me = phone.page("/me");
        HttpResponse<String> out = phone.raw("POST", "/sign-out", "csrf=" + Browser.hidden(me, "csrf"));
        assertThat(out.headers().firstValue("Location")).contains("/sign-in");
        assertThat(out.headers().firstValue("Clear-Site-Data")).contains("\"cache\"");
        phone.holds(kept);
        assertThat(phone.get("/").uri().getPath()).isEqualTo("/sign-in");

        Browser desk = served.leadAtDesk();
        served.clock().by(Way.PASSWORD.idle().plusSeconds(1));
        assertThat(desk.get("/people").uri().getPath()).isEqualTo("/sign-in");

        Browser one = served.phoneOf(crew);
        Browser two = served.phoneOf(crew);
        Browser lead = served.leadAtDesk();
        lead.send("/people", "/people/remove", "person", crew);
        assertThat(one.get("/").uri().getPath()).isEqualTo("/sign-in");
        assertThat(two.get("/").uri().getPath()).isEqualTo("/sign-in");
    }

    @Test
    void should_refuse_forged_cut_and_swapped_tokens() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        String good = token(lead);
        for (String forged : List.of(
                "",
                "x",
                good.substring(1),
                good + "A",
                good.toLowerCase(java.util.Locale.ROOT),
                "A".repeat(43),
                "A".repeat(5000))) {
            HttpResponse<String> r = served.browser().raw("GET", "/", "", "Cookie", "__Host-fayline-in=" + forged);
            assertThat(r.statusCode()).as(forged).isIn(303, 431);
        }
        // the token of a device is none of a sign-in
        Browser tablet = served.browser();
        tablet.code(served.pairingCode("", "bench"));
        String device = tablet.cookies().stream()
                .filter(c -> c.getName().equals("__Host-fayline-device"))
                .findFirst()
                .orElseThrow()
                .getValue();
        assertThat(served.browser()
                        .raw("GET", "/", "", "Cookie", "__Host-fayline-in=" + device)
                        .statusCode())
                .isEqualTo(303);
    }

    @Test
    void should_end_ones_own_devices_and_sign_ins_and_nobody_elses() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        String other = served.admit(2, Role.CREW);
        Browser mine = served.phoneOf(crew);
        Browser theirs = served.phoneOf(other);
        String device = Browser.hidden(theirs.page("/me"), "device");
        HttpResponse<String> refused = mine.send("/me", "/me/end-device", "device", device);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("no such device");
        assertThat(mine.page("/me")).doesNotContain(device);
        assertThat(theirs.page("/")).contains("Today");
        String own = Browser.hidden(mine.page("/me"), "device");
        assertThat(mine.send("/me", "/me/end-device", "device", own).uri().getPath())
                .isEqualTo("/sign-in");
    }

    @Test
    void should_keep_the_record_sound_and_free_of_secrets_after_all_this() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        SignIns.Current current = served.people().signIns().all().get(0);
        assertThat(current.way()).isEqualTo(Way.PASSWORD);
        String all = served.open().shop().entries(1).toString();
        assertThat(all)
                .doesNotContain(ServedNetwork.PASSWORD)
                .doesNotContain(token(lead))
                .doesNotContain("argon2");
        assertThat(fayline.app.usecase.archive.VerifyRecord.verify(served.open().path(), java.util.Optional.empty())
                        .fault())
                .isEmpty();
        assertThat(UUID.fromString(current.id())).isNotNull();
        assertThat(Act.values()).hasSize(17);
    }
}
