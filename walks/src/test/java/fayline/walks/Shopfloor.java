package fayline.walks;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.WaitForSelectorState;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The real program on a free port with the demonstration in a data folder of its own, and a real browser before it. */
final class Shopfloor implements AutoCloseable {
    private static final List<String> QUIET = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final RunningShop server;
    private final Playwright playwright;
    private final Browser browser;
    private final Optional<CuttingProxy> wire;

    private Shopfloor(RunningShop server, Playwright playwright, Browser browser, Optional<CuttingProxy> wire) {
        this.wire = wire;
        this.server = server;
        this.playwright = playwright;
        this.browser = browser;
    }

    /** Opens shop and browser; skips the walk by name where no Chromium is installed. */
    static Shopfloor open() throws IOException {
        return open(List.of("--demo"));
    }

    /** The demonstration on the shop's network, where whoever comes must sign in. */
    static Shopfloor network() throws IOException {
        return open(List.of("--demo", "--lan"));
    }

    /** The same with nothing in it: no demonstration, no project. */
    static Shopfloor empty() throws IOException {
        return open(List.of());
    }

    /** The demonstration behind a wire that can be cut. */
    static Shopfloor behindWire() throws IOException {
        return open(List.of("--demo"), true);
    }

    private static Shopfloor open(List<String> asked) throws IOException {
        return open(asked, false);
    }

    private static Shopfloor open(List<String> asked, boolean wired) throws IOException {
        Optional<Path> chromium = Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
        assumeTrue(chromium.isPresent(), "no Chromium is installed (Debian package chromium)");
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        List<String> with = new ArrayList<>(QUIET);
        if (asked.contains("--lan")) {
            // as a phone does that was told to trust the shop's authority; without trust no page is kept
            with.add("--ignore-certificate-errors");
        }
        RunningShop server = RunningShop.in(Files.createTempDirectory("fayline-walk"), asked);
        Optional<CuttingProxy> wire = wired ? Optional.of(new CuttingProxy(server.port())) : Optional.empty();
        // the browser takes the wire for the server: the address on every page is the same
        wire.ifPresent(w -> with.add(
                "--host-resolver-rules=MAP " + server.host() + ":" + server.port() + " 127.0.0.1:" + w.port()));
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium.orElseThrow())
                        .setArgs(with));
        return new Shopfloor(server, playwright, browser, wire);
    }

    /** Starts the server again, at the address that phones know. */
    void start() throws IOException {
        server.start();
    }

    /** The code that the server printed for whoever becomes the lead. */
    String code() {
        return server.code();
    }

    /** The wire between browser and server. */
    CuttingProxy wire() {
        return wire.orElseThrow();
    }

    /** Kills the server as a power cut would. */
    void kill() throws InterruptedException {
        server.kill();
    }

    /** The data folder. */
    Path data() {
        return server.data();
    }

    /** The checkout. */
    static Path root() {
        return RunningShop.root();
    }

    /** The full address of a page. */
    String at(String path) {
        return server.address() + path;
    }

    /** A phone at the bench: 360 px wide, touch. */
    Page phone() {
        return page(360, 740, true);
    }

    /** A desk: 1280 px wide. */
    Page desk() {
        return page(1280, 900, false);
    }

    /** Picks at a screen who is before it. */
    Page as(Page page, String name) {
        page.navigate(at("/who"));
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(name).setExact(true))
                .click();
        return page;
    }

    /** How long a page may take on a machine that does much else. */
    private static final int PATIENT_MS = 90_000;

    /** A phone of somebody, with its worker at work: it keeps pages and entries from here on. */
    Page phoneOf(String name) {
        Page page = phone();
        page.setDefaultTimeout(PATIENT_MS);
        as(page, name);
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        // the worker may have come while the page was being loaded; the next page is its own
        page.navigate(at("/"));
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        return page;
    }

    /** Opens a page as the shop tells it: where the shop is slow the phone shows what it kept, until the page has renewed itself. */
    void fresh(Page page, String path) {
        page.navigate(at(path));
        page.waitForFunction("() => !('keptAt' in document.documentElement.dataset)");
    }

    /** Waits until the phone holds the page that is open, as it is now. */
    static void held(Page page) {
        page.evaluate("""
                async () => {
                  const open = async () => {
                    const pages = await caches.open("fayline-pages-1");
                    const one = await pages.match(location.href.replace(/#.*/, ""), { ignoreVary: true });
                    return one && Number(one.headers.get("Fetched")) >= performance.timeOrigin;
                  };
                  while (!await open()) await new Promise((r) => setTimeout(r, 100));
                }""");
    }

    /** Waits for something that says a text. */
    static void waitFor(Page page, String selector, String text) {
        page.locator(selector, new Page.LocatorOptions().setHasText(text))
                .first()
                .waitFor();
    }

    /** Starts the step of a card, having said which way round where that is asked. */
    static void start(Page card) {
        if (card.locator("#which-way").count() > 0) {
            card.locator("#which-way").fill("Taper to the bow, left hand, Ned agrees");
        }
        card.locator("button[form=start]").click();
    }

    /** Finishes the step of a card, with a reason for each thing that is not recorded. */
    static void finish(Page card) {
        for (Locator why : card.locator("#finish input[name^='why-']").all()) {
            why.fill("told by the walk");
        }
        card.locator("button.main").click();
    }

    /** Sends a note from a card. */
    static void note(Page card, String text) {
        card.locator("summary", new Page.LocatorOptions().setHasText("Add a note"))
                .click();
        card.locator("#note-text").fill(text);
        card.locator("form[action*='/note'] button").click();
    }

    /** Sends a note from a card and waits for the page after it: the program's, or the one that the phone has. */
    static void noteAndLeave(Page card, String text) {
        leaving(card, () -> note(card, text));
    }

    /** Does what leads to another page and waits for that page. */
    static void leaving(Page page, Runnable deed) {
        page.evaluate("() => { document.documentElement.dataset.left = 'yes'; }");
        deed.run();
        page.locator("html:not([data-left])")
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
        // a page whose scripts are still on the way does not answer to what is typed
        page.waitForLoadState();
    }

    /** Runs the command line in a process of its own, after which the exit code and what it said are known. */
    static String command(String... words) throws IOException, InterruptedException {
        return RunningShop.command(words);
    }

    private Page page(int width, int height, boolean touch) {
        BrowserContext context = browser.newContext(new Browser.NewContextOptions()
                .setViewportSize(width, height)
                .setHasTouch(touch)
                .setIgnoreHTTPSErrors(true)
                .setTimezoneId("UTC"));
        Page page = context.newPage();
        page.onConsoleMessage(m -> {
            if (m.type().equals("error")) {
                errors.add(m.text());
            }
        });
        page.onPageError(errors::add);
        return page;
    }

    private final List<String> errors = new ArrayList<>();

    /** What the browser complained about so far: scripts, content policy. */
    List<String> errors() {
        return List.copyOf(errors);
    }

    /** Takes what was complained of so far as meant. */
    void forgive() {
        errors.clear();
    }

    @Override
    public void close() throws IOException {
        browser.close();
        playwright.close();
        if (wire.isPresent()) {
            wire.get().close();
        }
        try {
            kill();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while the server was being stopped", e);
        }
    }
}
