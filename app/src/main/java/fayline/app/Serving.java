package fayline.app;

import fayline.app.cli.ExitCode;
import fayline.app.cli.ServeOptions;
import fayline.app.cli.Surroundings;
import fayline.app.pdf.CardsPdf;
import fayline.app.pdf.Paper;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.open.UsualPlace;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.web.PortBusyException;
import fayline.app.web.Site;
import fayline.app.web.WebServer;
import fayline.flow.project.Definition;
import fayline.store.file.trust.UnusableCertificateException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Opens a shop and serves its pages until the program is stopped. */
final class Serving {
    private final ServeOptions options;
    private final Surroundings s;

    Serving(ServeOptions options, Surroundings surroundings) {
        this.options = options;
        this.s = surroundings;
    }

    int run() {
        return options.train() ? train() : serve();
    }

    private int serve() {
        OpenShop open = open(options.data());
        if (options.lan().isPresent() && open.shop().definitions().isEmpty()) {
            open.close();
            s.err()
                    .println("The data folder " + open.path()
                            + " holds no project, and the lead is picked from its list of"
                            + " people. Import one first: fayline import FOLDER --data " + open.path());
            return ExitCode.BAD_INPUT;
        }
        Optional<ServingNetwork> lan;
        LookAtShop looking;
        WebServer server;
        try {
            lan = options.lan().map(l -> ServingNetwork.of(open, l, s.clock()));
            ShopRecord shop =
                    lan.map(l -> open.shop().judgedBy(l.people().judge())).orElse(open.shop());
            looking = new LookAtShop(shop);
            server = WebServer.start(
                    options.port().orElse(WebServer.USUAL_PORT),
                    lan.map(ServingNetwork::network),
                    site(open, shop, looking, lan.map(ServingNetwork::entrance)));
        } catch (PortBusyException e) {
            open.close();
            s.err().println(e.getMessage());
            return ExitCode.FAULT;
        } catch (UnusableCertificateException e) {
            open.close();
            s.err().println(e.getMessage());
            return ExitCode.BAD_INPUT;
        } catch (RuntimeException e) {
            open.close();
            throw e;
        }
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            server.close();
                            open.close();
                        },
                        "stop"));
        s.out().println("Fayline is at " + server.address());
        s.out().println("Data: " + open.path() + ". Ctrl-C stops it.");
        lan.ifPresent(l -> l.tell(s.out(), server.address()));
        s.out().flush();
        if (options.browser()) {
            browse(server.address());
        }
        LookAtShop warmed = looking;
        Thread warm = new Thread(() -> warm(warmed), "warm-up");
        warm.setDaemon(true);
        warm.start();
        return ExitCode.DONE;
    }

    private Site site(OpenShop open, ShopRecord shop, LookAtShop looking, Optional<Site.Entrance> entrance) {
        String version = Main.class.getPackage().getImplementationVersion();
        LeastFinish least = new LeastFinish(UsualPlace.libraries());
        return new Site(shop, looking, least, open::sign, version == null ? "unpackaged" : version, entrance);
    }

    private OpenShop open(Path data) {
        if (options.now().isEmpty()) {
            return open(data, Optional.empty());
        }
        ZoneId zone;
        try (OpenShop first = open(data, Optional.empty())) {
            zone = first.shop().definitions().stream()
                    .map(Definition::shop)
                    .map(shop -> shop.zone())
                    .findFirst()
                    .orElse(ZoneOffset.UTC);
        }
        return open(data, options.now().map(moment -> moment.apply(zone)));
    }

    private OpenShop open(Path data, Optional<Instant> now) {
        try {
            return options.demo() || options.train()
                    ? OpenShop.openWith(data, demo(), s.clock(), now)
                    : OpenShop.open(data, s.clock(), now);
        } catch (IOException e) {
            throw new UncheckedIOException("the demonstration in " + demo() + " cannot be read", e);
        }
    }

    /** The demonstration's folder, beside the program. */
    private static Path demo() {
        return Path.of(System.getProperty("fayline.home", ".")).resolve("demo").resolve("ousel");
    }

    /** Computes the first page and loads what prints, so that the first to ask does not wait for it. */
    private static void warm(LookAtShop looking) {
        looking.look("");
        CardsPdf.print(List.of(), new CardsPdf.Setting("http://localhost/", "", "", Paper.A4));
    }

    /** Opens a browser where there is one; where there is none, the printed address is enough. */
    private static void browse(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command;
        if (system.startsWith("mac")) {
            command = List.of("open", address);
        } else if (system.startsWith("windows")) {
            command = List.of("rundll32", "url.dll,FileProtocolHandler", address);
        } else if (System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null) {
            command = List.of("xdg-open", address);
        } else {
            return;
        }
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            // no such command here: the address stands on the console
            return;
        }
    }

    /** Serves itself a few pages from a folder that is gone afterwards. */
    private int train() {
        try {
            Path folder = Files.createTempDirectory("fayline-train");
            try (OpenShop open = open(folder, Optional.empty());
                    WebServer server = WebServer.start(
                            0, site(open, open.shop(), new LookAtShop(open.shop()), Optional.empty()))) {
                for (String page : List.of("", "weeks", "airframe", "stores", "static/app.css")) {
                    fetch(server.address() + page);
                }
            } finally {
                remove(folder);
            }
            return ExitCode.DONE;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return ExitCode.FAULT;
        }
    }

    private static void fetch(String address) throws IOException, InterruptedException {
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() != 200) {
            throw new IOException(address + " answered " + answer.statusCode());
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(p);
            }
        }
    }
}
