package fayline.walks;

import fayline.flow.record.payload.Value;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A phone that sends what it kept byte by byte, so that a test can say where each byte went. */
final class RawPhone {
    private static final Pattern LENGTH = Pattern.compile("(?i)\r\ncontent-length: (\\d+)");
    private final int server;
    private final String cookies;
    private final Value.Fields head;

    private RawPhone(int server, String cookies, Value.Fields head) {
        this.server = server;
        this.cookies = cookies;
        this.head = head;
    }

    /** How far the record was when the phone heard of it. */
    long head() {
        return head.whole("head").orElseThrow();
    }

    /** A phone that has heard of the server at a port of this machine. */
    static RawPhone at(int server) throws IOException, InterruptedException {
        CookieManager cookies = new CookieManager();
        HttpResponse<String> head = HttpClient.newBuilder()
                .cookieHandler(cookies)
                .build()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server + "/kept/head"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        String held = cookies.getCookieStore().getCookies().stream()
                .map(HttpCookie::toString)
                .collect(Collectors.joining("; "));
        if (head.statusCode() != 200) {
            throw new IOException("the server answered " + head.statusCode());
        }
        return new RawPhone(server, held, (Value.Fields) Value.parse(head.body()));
    }

    /** A note as it is kept on the phone. */
    static Value.Fields note(String id, String text) {
        return form(id, "/card/chine-doubler-left/1/cut/note", "text", text);
    }

    /** A correction of what an entry of a card says. */
    static Value.Fields correction(String id, String card, long entry, String text) {
        return form(
                id,
                card + "/correct",
                "entry",
                String.valueOf(entry),
                "how",
                "mend",
                "value",
                text,
                "why",
                "a slip of the thumb");
    }

    /** A page as it stands now. */
    String page(String path) throws IOException, InterruptedException {
        HttpResponse<String> page = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server + path))
                                .header("Cookie", cookies)
                                .build(),
                        HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
        if (page.statusCode() != 200) {
            throw new IOException("the server answered " + page.statusCode());
        }
        return page.body();
    }

    /** A form of a card as it is kept on the phone, its fields as name and value in turn. */
    static Value.Fields form(String id, String path, String... typed) {
        return Value.Fields.NONE
                .with("id", id)
                .with("path", path)
                .with("project", "ousel-1")
                .with("by", "ilse")
                .with("at", "2026-03-02T06:00:00Z")
                .with("fields", List.of(typed));
    }

    /** What goes over the wire to send these entries in their order. */
    byte[] request(Value.Fields... entries) {
        String body = Value.Fields.NONE
                .with("format", 1)
                .with("record", "")
                .with("entries", new Value.Many(List.<Value>of(entries)))
                .canonical();
        int length = body.getBytes(StandardCharsets.UTF_8).length;
        return ("POST /kept/send HTTP/1.1\r\nHost: 127.0.0.1:" + server + "\r\nContent-Type: application/json\r\n"
                        + "X-CSRF-Token: " + head.text("token") + "\r\nCookie: " + cookies + "\r\nContent-Length: "
                        + length
                        + "\r\nConnection: close\r\n\r\n" + body)
                .getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Sends and listens for the whole answer.
     *
     * @param port where to
     * @param request what goes over the wire
     * @param forFirstMs how long the first byte is waited for
     * @param forNextMs how long each further byte is
     * @return the answers; empty where they did not come whole, so that nobody knows
     */
    static Optional<List<Value.Fields>> send(int port, byte[] request, int forFirstMs, int forNextMs) {
        ByteArrayOutputStream heard = new ByteArrayOutputStream();
        try (Socket wire = new Socket(InetAddress.getLoopbackAddress(), port)) {
            wire.setSoTimeout(forFirstMs);
            wire.getOutputStream().write(request);
            wire.getOutputStream().flush();
            int first = wire.getInputStream().read();
            if (first >= 0) {
                heard.write(first);
                wire.setSoTimeout(forNextMs);
                wire.getInputStream().transferTo(heard);
            }
        } catch (IOException e) {
            // cut, or no patience left: what was heard so far decides
            return answers(heard.toString(StandardCharsets.UTF_8));
        }
        return answers(heard.toString(StandardCharsets.UTF_8));
    }

    private static Optional<List<Value.Fields>> answers(String heard) {
        int end = heard.indexOf("\r\n\r\n");
        Matcher length = LENGTH.matcher(heard);
        if (end < 0 || !heard.startsWith("HTTP/1.1 200") || !length.find()) {
            return Optional.empty();
        }
        String body = heard.substring(end + 4);
        if (body.getBytes(StandardCharsets.UTF_8).length < Integer.parseInt(length.group(1))) {
            return Optional.empty();
        }
        List<Value.Fields> answers = new ArrayList<>();
        ((Value.Fields) Value.parse(body)).items("answers").forEach(a -> answers.add((Value.Fields) a));
        return Optional.of(answers);
    }
}
