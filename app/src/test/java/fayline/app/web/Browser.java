package fayline.app.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.net.ssl.SSLContext;

/** A browser without a screen: keeps cookies, follows what a form leads to, reads the hidden fields of a page. */
final class Browser {
    private final CookieManager cookies = new CookieManager();
    private final HttpClient client;
    private final URI home;

    Browser(WebServer server) {
        this.home = URI.create(server.address());
        this.client = builder().build();
    }

    Browser(WebServer server, SSLContext trusting) {
        this.home = URI.create(server.address());
        this.client = builder().sslContext(trusting).build();
    }

    private HttpClient.Builder builder() {
        return HttpClient.newBuilder().cookieHandler(cookies).followRedirects(HttpClient.Redirect.NORMAL);
    }

    /** Types a one-time code at the door. */
    HttpResponse<String> code(String code) throws IOException, InterruptedException {
        return post("/sign-in/code", "csrf", hidden(page("/sign-in"), "csrf"), "code", code);
    }

    /** The cookies it holds now. */
    List<HttpCookie> cookies() {
        return cookies.getCookieStore().getCookies();
    }

    /** Puts cookies of another browser in the place of its own. */
    void holds(List<HttpCookie> others) {
        cookies.getCookieStore().removeAll();
        others.forEach(c -> cookies.getCookieStore().add(home, c));
    }

    /** Sends one request as it is, with further headers as name and value in turn. */
    HttpResponse<String> raw(String method, String path, String body, String... headers)
            throws IOException, InterruptedException {
        HttpRequest.Builder b = HttpRequest.newBuilder(home.resolve(path))
                .method(method, HttpRequest.BodyPublishers.ofString(body, StandardCharsets.UTF_8));
        if (!body.isEmpty()) {
            b.header("Content-Type", "application/x-www-form-urlencoded");
        }
        for (int i = 0; i < headers.length; i += 2) {
            b.header(headers[i], headers[i + 1]);
        }
        return HttpClient.newBuilder()
                .cookieHandler(cookies)
                .sslContext(client.sslContext())
                .build()
                .send(b.build(), HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** Follows the record as an open page does, line by line as it comes. */
    HttpResponse<Stream<String>> follow(String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder b = HttpRequest.newBuilder(home.resolve("/live")).header("Accept", "text/event-stream");
        for (int i = 0; i < headers.length; i += 2) {
            b.header(headers[i], headers[i + 1]);
        }
        return HttpClient.newBuilder()
                .cookieHandler(cookies)
                .sslContext(client.sslContext())
                .build()
                .send(b.build(), HttpResponse.BodyHandlers.ofLines());
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(home.resolve(path)).build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    String page(String path) throws IOException, InterruptedException {
        HttpResponse<String> r = get(path);
        if (r.statusCode() != 200) {
            throw new IOException(path + " answered " + r.statusCode() + ": " + r.body());
        }
        return r.body();
    }

    byte[] bytes(String path) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(home.resolve(path)).build(), HttpResponse.BodyHandlers.ofByteArray())
                .body();
    }

    /** Sends a form with its fields as name and value in turn. */
    HttpResponse<String> post(String path, String... fields) throws IOException, InterruptedException {
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < fields.length; i += 2) {
            pairs.add(fields[i] + "=" + URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return client.send(
                HttpRequest.newBuilder(home.resolve(path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(String.join("&", pairs)))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** Sends a form in parts: fields as name and value in turn, then files under one name. */
    HttpResponse<String> postParts(String path, List<byte[]> files, String... fields)
            throws IOException, InterruptedException {
        String edge = "edge-of-a-part-7f3a";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int i = 0; i < fields.length; i += 2) {
            part(body, edge, "name=\"" + fields[i] + "\"", fields[i + 1].getBytes(StandardCharsets.UTF_8));
        }
        for (byte[] file : files) {
            String name = "name=\"photo\"; filename=\"../../shop.db\"\r\nContent-Type: text/html";
            part(body, edge, name, file);
        }
        body.writeBytes(("--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return client.send(
                HttpRequest.newBuilder(home.resolve(path))
                        .header("Content-Type", "multipart/form-data; boundary=" + edge)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** Sends what a phone kept, as its script does. */
    HttpResponse<String> postJson(String path, String token, String json) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(home.resolve(path))
                        .header("Content-Type", "application/json")
                        .header("X-CSRF-Token", token)
                        .POST(HttpRequest.BodyPublishers.ofString(json))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    private static void part(ByteArrayOutputStream body, String edge, String head, byte[] content) {
        body.writeBytes(("--" + edge + "\r\nContent-Disposition: form-data; " + head + "\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(content);
        body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    }

    /** Sends a body of a type as it is. */
    HttpResponse<String> body(String path, String type, String body) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(home.resolve(path))
                        .header("Content-Type", type)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    }

    /** What an address answers, with its headers. */
    HttpResponse<byte[]> whole(String path, String... headers) throws IOException, InterruptedException {
        HttpRequest.Builder b = HttpRequest.newBuilder(home.resolve(path));
        for (int i = 0; i < headers.length; i += 2) {
            b.header(headers[i], headers[i + 1]);
        }
        return client.send(b.build(), HttpResponse.BodyHandlers.ofByteArray());
    }

    /** Sends a form of a page that is looked at first: its tokens, then these fields as name and value in turn. */
    HttpResponse<String> send(String page, String to, String... fields) throws IOException, InterruptedException {
        return sendFrom(page(page), to, fields);
    }

    /** Sends a form of a page as it was served. */
    HttpResponse<String> sendFrom(String html, String to, String... fields) throws IOException, InterruptedException {
        String once = html.contains("name=\"once\"") ? hidden(html, "once") : "";
        return post(to, and(fields, "csrf", hidden(html, "csrf"), "once", once));
    }

    /** More fields after these. */
    static String[] and(String[] more, String... fields) {
        return Stream.concat(Stream.of(fields), Stream.of(more)).toArray(String[]::new);
    }

    void cookie(String name, String value) {
        HttpCookie cookie = new HttpCookie(name, value);
        cookie.setPath("/");
        cookie.setVersion(0);
        cookies.getCookieStore().add(home, cookie);
    }

    /** The value of a hidden field of a page. */
    static String hidden(String html, String name) {
        Matcher m = Pattern.compile("name=\"" + name + "\" value=\"([^\"]*)\"").matcher(html);
        if (!m.find()) {
            throw new IllegalArgumentException("no field " + name);
        }
        return m.group(1);
    }
}
