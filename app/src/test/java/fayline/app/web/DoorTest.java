package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.app.web.frame.Door;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Visit;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.CookieManager;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class DoorTest {
    private static final String POLICY = "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; "
            + "frame-ancestors 'none'; img-src 'self' data: blob:";
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
    private WebServer server;

    @BeforeEach
    void start() {
        server = WebServer.start(0, DoorTest::pages);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private static List<Page> pages(Door door) {
        return List.of(routes -> {
            routes.get("/token", ctx -> new Visit(ctx).show(door.token(new Visit(ctx))));
            routes.post("/change", ctx -> new Visit(ctx).show("changed " + new Visit(ctx).field("what")));
            routes.get("/fails", ctx -> {
                throw new IllegalStateException("secret detail");
            });
        });
    }

    private HttpResponse<String> get(String path, String... headers) throws Exception {
        HttpRequest.Builder b =
                HttpRequest.newBuilder(URI.create(server.address()).resolve(path));
        for (int i = 0; i < headers.length; i += 2) {
            b.header(headers[i], headers[i + 1]);
        }
        return client.send(b.build(), HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String body, String... headers) throws Exception {
        HttpRequest.Builder b = HttpRequest.newBuilder(
                        URI.create(server.address()).resolve("/change"))
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(body));
        for (int i = 0; i < headers.length; i += 2) {
            b.header(headers[i], headers[i + 1]);
        }
        return client.send(b.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void should_send_the_security_headers_with_every_answer() throws Exception {
        for (String path :
                List.of("/token", "/static/app.css", "/lib/htmx/dist/htmx.min.js", "/no-such-page", "/fails")) {
            HttpResponse<String> r = get(path);
            assertThat(r.headers().firstValue("Content-Security-Policy"))
                    .as(path)
                    .contains(POLICY);
            assertThat(r.headers().firstValue("X-Content-Type-Options"))
                    .as(path)
                    .contains("nosniff");
            assertThat(r.headers().firstValue("X-Frame-Options")).as(path).contains("DENY");
            assertThat(r.headers().firstValue("Referrer-Policy")).as(path).contains("same-origin");
            assertThat(String.join(",", r.headers().allValues("Vary"))).as(path).contains("Accept-Encoding");
            assertThat(r.headers().firstValue("Server")).as(path).isEmpty();
        }
        assertThat(get("/token")
                        .headers()
                        .firstValue("Content-Type")
                        .orElseThrow()
                        .toLowerCase(java.util.Locale.ROOT))
                .isEqualTo("text/html;charset=utf-8");
    }

    @Test
    void should_keep_the_session_from_scripts_and_other_sites() throws Exception {
        assertThat(get("/token").headers().firstValue("Set-Cookie").orElseThrow())
                .contains("fayline=")
                .contains("HttpOnly")
                .contains("SameSite=Strict");
    }

    @Test
    void should_refuse_a_change_without_its_token() throws Exception {
        String token = get("/token").body();
        assertThat(post("what=x").statusCode()).isEqualTo(403);
        assertThat(post("what=x&csrf=" + token + "x").statusCode()).isEqualTo(403);
        HttpResponse<String> good = post("what=x&csrf=" + token);
        assertThat(good.statusCode()).isEqualTo(200);
        assertThat(good.body()).isEqualTo("changed x");
        assertThat(post("what=y", "X-CSRF-Token", token).body()).isEqualTo("changed y");
    }

    @Test
    void should_refuse_other_origins_even_with_the_token() throws Exception {
        String token = get("/token").body();
        assertThat(post("csrf=" + token, "Origin", "http://elsewhere.example").statusCode())
                .isEqualTo(403);
        assertThat(post("csrf=" + token, "Origin", "null").statusCode()).isEqualTo(403);
        assertThat(post("csrf=" + token, "Sec-Fetch-Site", "cross-site").statusCode())
                .isEqualTo(403);
        assertThat(post("csrf=" + token, "Sec-Fetch-Site", "same-site").statusCode())
                .isEqualTo(403);
        assertThat(get("/token", "Sec-Fetch-Site", "cross-site", "Sec-Fetch-Mode", "no-cors")
                        .statusCode())
                .isEqualTo(403);
        assertThat(get(
                                "/token",
                                "Sec-Fetch-Site",
                                "cross-site",
                                "Sec-Fetch-Mode",
                                "navigate",
                                "Sec-Fetch-Dest",
                                "document")
                        .statusCode())
                .isEqualTo(200);
        assertThat(post("csrf=" + token, "Origin", "http://127.0.0.1:" + server.port(), "Sec-Fetch-Site", "same-origin")
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void should_refuse_other_names_for_this_machine() throws Exception {
        assertThat(raw("GET /token HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("GET /token HTTP/1.1\r\nHost: localhost:" + server.port() + "\r\nConnection: close\r\n\r\n"))
                .startsWith("HTTP/1.1 200");
    }

    @Test
    void should_refuse_what_is_too_long_or_a_file() throws Exception {
        String token = get("/token").body();
        assertThat(post("csrf=" + token + "&what=" + "x".repeat((int) Door.LONGEST))
                        .statusCode())
                .isEqualTo(413);
        HttpRequest multipart = HttpRequest.newBuilder(
                        URI.create(server.address()).resolve("/change"))
                .header("Content-Type", "multipart/form-data; boundary=b")
                .POST(HttpRequest.BodyPublishers.ofString("--b--"))
                .build();
        assertThat(client.send(multipart, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(415);
    }

    @Test
    void should_speak_plainly_when_something_fails() throws Exception {
        HttpResponse<String> absent = get("/no-such-page");
        assertThat(absent.statusCode()).isEqualTo(404);
        assertThat(absent.body()).contains("There is no such page here.").contains("href=\"/\"");
        HttpResponse<String> failed = get("/fails");
        assertThat(failed.statusCode()).isEqualTo(500);
        assertThat(failed.body())
                .doesNotContain("secret detail")
                .contains("Nothing that was acknowledged before is lost");
    }

    @Test
    void should_name_the_port_when_it_is_taken() {
        assertThatThrownBy(() -> WebServer.start(server.port(), DoorTest::pages))
                .isInstanceOf(PortBusyException.class)
                .hasMessageContaining("Port " + server.port())
                .hasMessageContaining("--port");
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), server.port());
                OutputStream out = socket.getOutputStream();
                InputStream in = socket.getInputStream()) {
            out.write(request.getBytes(StandardCharsets.US_ASCII));
            out.flush();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
