package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Role;
import fayline.flow.project.shop.Person;
import fayline.flow.record.EntryKind;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is sent to the shop's network: from where, how much, in whose name, and over which connection. */
class NetworkRequestsTest extends OnTheNetwork {
    @Test
    void should_refuse_other_origins_and_changes_without_the_token() throws Exception {
        served.lead();
        Browser lead = served.leadAtDesk();
        String csrf = Browser.hidden(lead.page("/people"), "csrf");
        long head = served.head();
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
        assertThat(served.head()).isEqualTo(head);
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
        long before = served.head();
        HttpResponse<String> r = phone.send("/shop", "/shop/air", "air", "19.5 degC", "by", served.person(0));
        assertThat(r.statusCode()).as(r.body()).isEqualTo(200);
        assertThat(served.told(before, EntryKind.READING_TAKEN)).hasSize(1).allMatch(e -> e.by().equals(crew));
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
        long before = served.head();
        HttpResponse<String> forAnother = crewPhone.send(hold, hold + "/finish", "signed", signer);
        assertThat(forAnother.statusCode()).as(step).isEqualTo(422);
        assertThat(forAnother.body()).contains("Nobody signs for another");
        assertThat(served.told(before, EntryKind.ACT_REFUSED)).hasSize(1);
        assertThat(crewPhone.page(hold)).contains("Waits for a signature").contains("not a licensed signature");
        Browser inspector = served.phoneOf(signer);
        HttpResponse<String> signed = inspector.send(hold, hold + "/finish", "signed", signer);
        assertThat(signed.statusCode()).as(signed.body()).isEqualTo(200);
        assertThat(served.told(before, EntryKind.STEP_FINISHED))
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
}
