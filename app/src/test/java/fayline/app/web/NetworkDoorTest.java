package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.SignIns;
import fayline.app.usecase.people.Way;
import fayline.flow.project.shop.Person;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import java.net.HttpCookie;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The door to the shop's network, as browsers of all sorts meet it. */
class NetworkDoorTest {
    @TempDir
    static Path folder;

    private static ServedNetwork served;

    @BeforeAll
    static void serve() throws Exception {
        served = ServedNetwork.in(folder);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    @BeforeEach
    void begin() {
        served.empty();
    }

    private static long head() {
        return served.open().shop().state().head().seq();
    }

    private static List<Entry> told(long after, EntryKind kind) {
        return served.open().shop().entries(after + 1).stream()
                .filter(e -> e.kind().equals(kind.key()))
                .toList();
    }

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

    private static String token(Browser browser) {
        return browser.cookies().stream()
                .filter(c -> c.getName().equals("__Host-fayline-in"))
                .map(HttpCookie::getValue)
                .findFirst()
                .orElse("");
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
    void should_refuse_other_origins_and_changes_without_the_token() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        String csrf = Browser.hidden(lead.page("/people"), "csrf");
        long head = head();
        String body = "csrf=" + csrf + "&label=tablet";
        for (String[] from : new String[][] {
            {"Origin", "https://elsewhere.example"},
            {"Origin", "null"},
            {"Origin", "http://127.0.0.1:" + served.server().port()},
            {"Sec-Fetch-Site", "cross-site"},
            {"Sec-Fetch-Site", "same-site"}
        }) {
            HttpResponse<String> r = lead.raw("POST", "/people/pairing", body, from);
            assertThat(r.statusCode()).as(String.join(" ", from)).isEqualTo(403);
            assertThat(r.body()).contains("not from Fayline");
        }
        assertThat(lead.raw("POST", "/people/pairing", "label=tablet").statusCode())
                .isEqualTo(403);
        assertThat(lead.raw("POST", "/people/pairing", "label=tablet&csrf=" + csrf + "x")
                        .statusCode())
                .isEqualTo(403);
        assertThat(lead.raw(
                                "POST",
                                "/people/pairing",
                                body,
                                "Origin",
                                "https://127.0.0.1:" + served.server().port())
                        .statusCode())
                .isEqualTo(200);
        assertThat(head()).isEqualTo(head);
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

        long before = head();
        HttpResponse<String> last = tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", "778890");
        for (int i = 1; i < 6; i++) {
            last = tablet.send("/sign-in", "/sign-in/pin", "person", crew, "pin", "77889" + i);
        }
        assertThat(last.statusCode()).isEqualTo(429);
        assertThat(last.headers().firstValue("Retry-After")).isPresent();
        assertThat(last.body()).contains("too many wrong tries");
        assertThat(told(before, EntryKind.SIGN_IN_BARRED)).hasSize(1);
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
    void should_take_names_and_notes_that_look_like_markup_as_text() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        String script = "<script>alert(1)</script>";
        HttpResponse<String> r = lead.send("/people", "/people/admit", "person", "", "name", script, "role", "viewer");
        assertThat(r.body()).contains("&lt;script&gt;alert(1)").doesNotContain(script);
        String viewer = served.people().roster().all().stream()
                .filter(p -> p.role() == Role.VIEWER)
                .findFirst()
                .orElseThrow()
                .person();
        HttpResponse<String> code =
                lead.send("/people", "/people/pairing", "person", viewer, "label", "\"><img src=x onerror=alert(1)>");
        assertThat(code.body()).doesNotContain("<img").contains("&lt;img");
        Browser phone = served.browser();
        String typed = code.body().replaceAll("(?s).*id=\"one-time-code\">([^<]+)<.*", "$1");
        assertThat(phone.code(typed).body())
                .doesNotContain("<img")
                .doesNotContain(script)
                .contains("&lt;script&gt;");
        assertThat(lead.page("/people")).doesNotContain("<img").doesNotContain(script);
    }

    @Test
    void should_name_the_signed_in_person_whatever_the_form_says() throws Exception {
        served.lead();
        String crew = served.admit(1, Role.CREW);
        Browser phone = served.phoneOf(crew);
        long before = head();
        HttpResponse<String> r = phone.send("/shop", "/shop/air", "air", "19.5 degC", "by", served.person(0));
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        assertThat(told(before, EntryKind.READING_TAKEN)).hasSize(1).allMatch(e -> e.by().equals(crew));
        assertThat(phone.page("/shop")).doesNotContain("Who are you?").contains("As ");
    }

    @Test
    void should_refuse_a_file_and_what_is_too_long() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        String csrf = Browser.hidden(lead.page("/people"), "csrf");
        HttpResponse<String> photo = lead.raw(
                "POST", "/shop/air", "", "Content-Type", "multipart/form-data; boundary=b", "X-CSRF-Token", csrf);
        assertThat(photo.statusCode()).isEqualTo(415);
        HttpResponse<String> long1 = lead.raw("POST", "/shop/air", "csrf=" + csrf + "&air=" + "x".repeat(2_100_000));
        assertThat(long1.statusCode()).isEqualTo(413);
    }

    @Test
    void should_let_a_name_of_the_list_sign_a_hold_point_only_in_that_name() throws Exception {
        served.lead();
        String signer = served.person(3);
        served.admit(3, Role.INSPECTOR);
        String crew = served.admit(1, Role.CREW);
        String step = served.open().shop().definitions().get(0).facts().id();
        Person person = served.open()
                .shop()
                .definitions()
                .get(0)
                .shop()
                .people()
                .find(signer)
                .orElseThrow();
        assertThat(person.skills()).contains(fayline.flow.project.shop.Skill.SIGN);
        String hold = HoldStep.path(served.open().shop());
        Browser crewPhone = served.phoneOf(crew);
        String card = crewPhone.page(hold);
        assertThat(card).as("the crew may start it").contains("id=\"start\"");
        crewPhone.sendFrom(card, hold + "/start", "people", crew);
        long before = head();
        HttpResponse<String> forAnother = crewPhone.send(hold, hold + "/finish", "signed", signer);
        assertThat(forAnother.statusCode()).as(step).isEqualTo(422);
        assertThat(forAnother.body()).contains("Nobody signs for another");
        assertThat(told(before, EntryKind.ACT_REFUSED)).hasSize(1);
        assertThat(crewPhone.page(hold)).contains("Waits for a signature").contains("not a licensed signature");
        Browser inspector = served.phoneOf(signer);
        HttpResponse<String> signed = inspector.send(hold, hold + "/finish", "signed", signer);
        assertThat(signed.statusCode()).as(signed.body()).isEqualTo(200);
        assertThat(told(before, EntryKind.STEP_FINISHED))
                .hasSize(1)
                .allMatch(
                        e -> e.by().equals(signer) && e.fields().text("signed").equals(signer));
    }

    @Test
    void should_refuse_other_names_for_this_machine_and_plain_connections() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        // the client sends the Host of its address; a name that is not ours does not resolve to us here, so ask by the
        // door
        try (java.net.Socket plain = new java.net.Socket(
                java.net.InetAddress.getLoopbackAddress(), served.server().port())) {
            plain.getOutputStream()
                    .write(("GET / HTTP/1.1\r\nHost: 127.0.0.1:"
                                    + served.server().port() + "\r\n\r\n")
                            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            String answer =
                    new String(plain.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.ISO_8859_1);
            assertThat(answer).doesNotContain("HTTP/1.1 200").doesNotContain("Ousel");
        }
        try (javax.net.ssl.SSLSocket tls = (javax.net.ssl.SSLSocket) served.client()
                .getSocketFactory()
                .createSocket("127.0.0.1", served.server().port())) {
            assertThat(tls.getSession().getProtocol()).isEqualTo("TLSv1.3");
            tls.getOutputStream()
                    .write("GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
            String answer = new String(tls.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 403").contains("not this machine's own");
        }
        assertThat(lead.page("/")).contains("Today");
    }

    @Test
    void should_speak_the_two_newest_versions_of_tls_only() throws Exception {
        for (String version : List.of("TLSv1.2", "TLSv1.3")) {
            try (javax.net.ssl.SSLSocket tls = (javax.net.ssl.SSLSocket) served.client()
                    .getSocketFactory()
                    .createSocket("127.0.0.1", served.server().port())) {
                tls.setEnabledProtocols(new String[] {version});
                tls.startHandshake();
                assertThat(tls.getSession().getProtocol()).isEqualTo(version);
            }
        }
        // a hand-written first record of TLS 1.1: the server answers with an alert and no more
        try (java.net.Socket old = new java.net.Socket(
                java.net.InetAddress.getLoopbackAddress(), served.server().port())) {
            old.getOutputStream().write(helloOfTls11());
            byte[] answer = old.getInputStream().readAllBytes();
            assertThat(answer).isNotEmpty();
            assertThat(answer[0]).as("an alert record").isEqualTo((byte) 21);
        }
    }

    /** A ClientHello that offers TLS 1.1 with one common cipher suite and nothing else. */
    private static byte[] helloOfTls11() {
        List<Integer> body = new ArrayList<>(List.of(3, 2));
        for (int i = 0; i < 32; i++) {
            body.add(i);
        }
        body.addAll(List.of(0, 0, 2, 0xC0, 0x13, 1, 0));
        List<Integer> hello = new ArrayList<>(List.of(1, 0, 0, body.size()));
        hello.addAll(body);
        List<Integer> record = new ArrayList<>(List.of(22, 3, 1, 0, hello.size()));
        record.addAll(hello);
        byte[] bytes = new byte[record.size()];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = record.get(i).byteValue();
        }
        return bytes;
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
    void should_take_no_path_that_leads_out_of_a_definition() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        for (String path : List.of(
                "../people.yaml",
                "..\\people.yaml",
                "/etc/passwd",
                "C:/people.yaml",
                "parts/../../x.yaml",
                "parts/%2e%2e/x.yaml",
                "people.yaml\u0000.jar",
                "parts/" + "x".repeat(300) + ".yaml",
                "p\u0430rts/wing.yaml")) {
            HttpResponse<String> r = lead.send(
                    "/shop", "/definition/file", "path", path, "based-on", "", "how", "save", "text", "part: {}\n");
            assertThat(r.statusCode()).as(path).isEqualTo(422);
            assertThat(served.open().shop().state().files("ousel-1")).doesNotContainKey(path);
        }
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
        assertThat(fayline.app.usecase.open.VerifyRecord.verify(served.open().path(), java.util.Optional.empty())
                        .fault())
                .isEmpty();
        assertThat(UUID.fromString(current.id())).isNotNull();
        assertThat(Act.values()).hasSize(10);
    }
}
