package fayline.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Rights;
import fayline.app.usecase.people.Role;
import fayline.app.web.frame.Asks;
import fayline.flow.record.EntryKind;
import io.javalin.http.HandlerType;
import io.javalin.router.Endpoint;
import io.javalin.security.Roles;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLSocket;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every address against everybody: a visitor whom nobody knows, and each role. */
class NetworkRoutesTest {
    private static final Pattern FORM = Pattern.compile("<form method=\"post\" action=\"([^\"]+)\"");
    private static final Pattern LINK = Pattern.compile("href=\"(/[^\"#]*)");
    private static final Set<String> OPEN =
            Set.of("/sign-in", "/sign-in/code", "/sign-in/pin", "/sign-in/new", "/trust", "/trust/authority.crt");
    private static final int PAGES = 70;

    @TempDir
    static Path folder;

    private static ServedNetwork served;
    private static final Map<Role, Browser> BROWSERS = new EnumMap<>(Role.class);
    private static final List<String> TELLING = new ArrayList<>();

    @BeforeAll
    static void serve() throws Exception {
        served = ServedNetwork.in(folder);
        served.lead();
        BROWSERS.put(Role.LEAD, served.leadAtDesk());
        BROWSERS.put(Role.CREW, served.phoneOf(served.admit(1, Role.CREW)));
        BROWSERS.put(Role.INSPECTOR, served.phoneOf(served.admit(3, Role.INSPECTOR)));
        BROWSERS.put(Role.VIEWER, served.phoneOf(served.admit(9, Role.VIEWER)));
        var definition = served.open().shop().definitions().get(0);
        TELLING.add(definition.facts().name());
        TELLING.add(definition.shop().name());
        definition.shop().people().forEach(p -> TELLING.add(p.name()));
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    private static List<Endpoint> endpoints() {
        return served.server().endpoints().stream()
                .filter(e -> e.method.equals(HandlerType.GET) || e.method.equals(HandlerType.POST))
                .toList();
    }

    private static String path(Endpoint e) {
        return e.path.replace("{id}", "canopy-left")
                .replace("{made}", "hull")
                .replace("{n}", "1")
                .replaceAll("\\{[a-z]+}", "x");
    }

    private static Set<Act> asked(Endpoint e) {
        Roles roles = e.metadata(Roles.class);
        if (roles != null) {
            for (var role : roles.getRoles()) {
                if (role instanceof Asks asks) {
                    return asks.anyOf();
                }
            }
        }
        return e.method.equals(HandlerType.GET) ? Set.of(Act.SEE) : Set.of();
    }

    @Test
    void should_show_a_visitor_the_door_and_nothing_else_on_every_address() throws Exception {
        int tried = 0;
        List<String> wanted = new ArrayList<>(endpoints().stream()
                .filter(e -> e.method.equals(HandlerType.GET))
                .map(NetworkRoutesTest::path)
                .toList());
        wanted.addAll(
                List.of("/no-such-page", "/.git/config", "/.git/HEAD", "/.env", "/shop.db", "/WEB-INF/", "/a/b/c"));
        for (String path : wanted) {
            served.clock().by(Duration.ofSeconds(5));
            HttpResponse<String> r = served.browser().raw("GET", path, "");
            boolean open = OPEN.contains(path);
            boolean leads = r.statusCode() == 303
                    && r.headers().firstValue("Location").orElse("").startsWith("/sign-in");
            assertThat(open ? r.statusCode() == 200 || leads : leads)
                    .as(path + " answered " + r.statusCode())
                    .isTrue();
            assertThat(withoutTokens(r.body())).as(path).doesNotContain(TELLING);
            assertThat(r.headers().map()).as(path).doesNotContainKey("access-control-allow-origin");
            tried++;
        }
        assertThat(tried).isGreaterThan(40);
    }

    /** A random token may hold a short name by chance. */
    private static String withoutTokens(String page) {
        return page.replaceAll("name=\"csrf\" value=\"[^\"]*\"", "");
    }

    @Test
    void should_lead_no_visitor_round_the_door_by_an_odd_path() throws Exception {
        for (String path : List.of(
                "/static/../weeks",
                "/static/..%2fweeks",
                "/static/%2e%2e/weeks",
                "/static/..;/weeks",
                "/static/;/../weeks",
                "/lib/../shop.db",
                "/sign-in/../weeks",
                "/sign-in/..%2fweeks",
                "/sign-in;x=/weeks",
                "/trust/../weeks",
                "//weeks",
                "/WEEKS",
                "/weeks/",
                "/weeks%00",
                "/%77eeks",
                "/weeks;jsessionid=1")) {
            String answer = raw("GET " + path + " HTTP/1.1");
            assertThat(answer)
                    .as(path)
                    .startsWith("HTTP/1.1 ")
                    .doesNotContain("HTTP/1.1 500")
                    .doesNotContain(TELLING);
            boolean shut = answer.contains("Location: /sign-in") || answer.matches("(?s)HTTP/1.1 (400|404).*");
            assertThat(shut)
                    .as(path + " answered " + answer.lines().findFirst())
                    .isTrue();
        }
    }

    /** Sends a request line as it is, without a client that would mend it. */
    private static String raw(String line) throws Exception {
        try (SSLSocket socket = (SSLSocket) served.client()
                .getSocketFactory()
                .createSocket("127.0.0.1", served.server().port())) {
            socket.getOutputStream()
                    .write((line + "\r\nHost: 127.0.0.1:" + served.server().port() + "\r\nConnection: close\r\n\r\n")
                            .getBytes(StandardCharsets.US_ASCII));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void should_refuse_a_visitor_every_change() throws Exception {
        long head = served.open().shop().state().head().seq();
        int tried = 0;
        for (Endpoint e : endpoints()) {
            if (e.method.equals(HandlerType.POST)) {
                served.clock().by(Duration.ofMinutes(16));
                Browser visitor = served.browser();
                String csrf = Browser.hidden(visitor.page("/sign-in"), "csrf");
                int without = visitor.raw("POST", path(e), "a=b").statusCode();
                assertThat(without).as(e.path).isIn(401, 403);
                int with = visitor.raw("POST", path(e), "csrf=" + csrf).statusCode();
                assertThat(with).as(e.path).isIn(OPEN.contains(e.path) ? List.of(303, 422, 429) : List.of(401));
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(30);
        assertThat(served.open().shop().state().work()).isLessThanOrEqualTo(head);
    }

    @Test
    void should_keep_assets_and_the_door_free_of_the_shop() throws Exception {
        for (String path : List.of(
                "/static/app.css",
                "/static/app.js",
                "/static/door.js",
                "/static/mark.svg",
                "/lib/htmx/dist/htmx.min.js")) {
            HttpResponse<String> r = served.browser().raw("GET", path, "");
            assertThat(r.statusCode()).as(path).isEqualTo(200);
            assertThat(r.body()).as(path).doesNotContain(TELLING);
        }
    }

    @Test
    void should_say_for_every_change_what_it_asks() {
        Set<String> silent = new TreeSet<>();
        for (Endpoint e : endpoints()) {
            if (e.method.equals(HandlerType.POST) && asked(e).isEmpty() && !OPEN.contains(e.path)) {
                silent.add(e.path);
            }
        }
        // where people sign in nobody picks a name from a list
        assertThat(silent).containsExactly("/who");
    }

    @Test
    void should_let_each_role_do_on_every_address_what_the_table_says_record_refusals_and_change_nothing_by_looking()
            throws Exception {
        Map<String, String> wrong = new TreeMap<>();
        int refused = 0;
        for (Role role : Role.values()) {
            Browser browser = Objects.requireNonNull(BROWSERS.get(role));
            String csrf = Browser.hidden(browser.page("/me"), "csrf");
            for (Endpoint e : endpoints()) {
                if (OPEN.contains(e.path) || e.path.equals("/sign-out") || e.path.equals("/better/news")) {
                    continue;
                }
                served.clock().by(Duration.ofSeconds(3));
                boolean may = asked(e).stream().anyMatch(a -> Rights.may(role, a));
                long before = served.open().shop().state().head().seq();
                HttpResponse<String> r =
                        browser.raw(e.method.name(), path(e), e.method.equals(HandlerType.POST) ? "csrf=" + csrf : "");
                boolean shut = r.statusCode() == 403 || r.statusCode() == 401;
                if (shut == may || r.statusCode() >= 500) {
                    wrong.put(role + " " + e.method + " " + e.path, String.valueOf(r.statusCode()));
                }
                if (e.method.equals(HandlerType.GET) && may) {
                    assertThat(served.open().shop().state().head().seq())
                            .as(e.path)
                            .isEqualTo(before);
                    String type = r.statusCode() == 303
                            ? ""
                            : r.headers().firstValue("Content-Type").orElse("none");
                    assertThat(type.startsWith("text/") ? type.toLowerCase(Locale.ROOT) : "charset=utf-8")
                            .as(e.path + " is " + type)
                            .contains("charset=utf-8");
                    assertThat(type).as(e.path).isNotEqualTo("none");
                }
                if (shut && !asked(e).isEmpty()) {
                    refused++;
                    assertThat(r.body()).as(e.path).contains("you may not").contains("The lead decides");
                    assertThat(served.open().shop().entries(before + 1))
                            .as(role + " " + e.path)
                            .hasSize(1)
                            .allMatch(x -> x.kind().equals(EntryKind.ACT_REFUSED.key()));
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(refused).isGreaterThan(50);
    }

    @Test
    void should_hide_on_every_page_what_the_role_may_not_do() throws Exception {
        Map<String, String> shown = new TreeMap<>();
        for (Role role : List.of(Role.VIEWER, Role.INSPECTOR, Role.CREW)) {
            for (Map.Entry<String, String> page :
                    crawl(Objects.requireNonNull(BROWSERS.get(role))).entrySet()) {
                Matcher form = FORM.matcher(page.getValue());
                while (form.find()) {
                    String action = form.group(1);
                    if (!action.equals("/sign-out") && !mayPost(role, action)) {
                        shown.put(role + " " + page.getKey(), action);
                    }
                }
            }
        }
        assertThat(shown).isEmpty();
    }

    private static boolean mayPost(Role role, String form) {
        String action = form.contains("?") ? form.substring(0, form.indexOf('?')) : form;
        return endpoints().stream()
                .filter(e -> e.method.equals(HandlerType.POST))
                .filter(e -> action.matches(e.path.replaceAll("\\{[a-z]+}", "[^/]+")))
                .findFirst()
                .map(e -> asked(e).stream().anyMatch(a -> Rights.may(role, a)))
                .orElse(false);
    }

    /** Pages by their address, one of each sort of address and some more, as far as links lead. */
    private static Map<String, String> crawl(Browser browser) throws Exception {
        Map<String, String> pages = new TreeMap<>();
        Set<String> seen = new TreeSet<>();
        Deque<String> next =
                new ArrayDeque<>(List.of("/", "/shop", "/definition", "/fits", "/better", "/me", "/airframe"));
        while (!next.isEmpty() && pages.size() < PAGES) {
            String path = next.removeFirst();
            if (!seen.add(sort(path))) {
                continue;
            }
            HttpResponse<String> r = browser.raw("GET", path.replace("&amp;", "&"), "");
            if (!r.headers().firstValue("Content-Type").orElse("").startsWith("text/html") || r.statusCode() != 200) {
                assertThat(r.statusCode())
                        .as("a page leads to what is refused: " + path)
                        .isNotEqualTo(403);
                continue;
            }
            pages.put(path, r.body());
            Matcher link = LINK.matcher(r.body());
            while (link.find()) {
                next.add(link.group(1));
            }
        }
        assertThat(pages).hasSizeGreaterThan(20);
        return pages;
    }

    /** Addresses of one sort look alike to whoever hides forms; two of each are looked at. */
    private static String sort(String path) {
        String bare = path.contains("?") ? path.substring(0, path.indexOf('?')) : path;
        String[] parts = bare.split("/");
        String tail = parts.length > 2 ? "/" + parts.length + parts[parts.length - 1].replaceAll("[0-9]", "") : "";
        return parts.length > 1 ? parts[1] + tail + (path.hashCode() & 1) : path;
    }
}
