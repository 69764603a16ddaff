package fayline.app.web;

import fayline.app.web.frame.Door;
import fayline.app.web.frame.Gate;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Reach;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.staticfiles.Location;
import io.javalin.router.Endpoint;
import io.javalin.util.JavalinBindException;
import io.javalin.util.JavalinException;
import java.net.BindException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeoutException;
import javax.net.ssl.SSLContext;
import org.eclipse.jetty.ee10.servlet.SessionHandler;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.server.ForwardedRequestCustomizer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.server.handler.EagerContentHandler;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.webjars.WebJarVersionLocator;

/**
 * Serves the pages on this machine alone, listening on 127.0.0.1, or on the shop's network over TLS; checks every request at
 * the {@link Door}, and finishes what is under way before it stops.
 */
public final class WebServer implements AutoCloseable {
    /** The port taken where none is asked for. */
    public static final int USUAL_PORT = 7423;

    /** How much of a request is waited for before a thread takes it up, in bytes: any form but a long file. */
    private static final long WAITED_FOR = 64 * 1024;
    /** What a buffer of the network weighs beside its content, in bytes. */
    private static final int FRAMING = 64;
    /** Longer requests that come more slowly are broken off; the phone sends them again. Common practice, no source. */
    private static final long LEAST_BYTES_PER_S = 200;

    private static final String LOOPBACK = "127.0.0.1";
    private static final List<String> TLS_VERSIONS = List.of("TLSv1.3", "TLSv1.2");
    private static final int MOST_THREADS = 64;
    private static final int STOP_MS = 5000;
    /** What came with a form and is longer than this waits in a file of the system's until it is read, then goes. */
    private static final int IN_MEMORY = 200_000;

    private static final int SESSION_S = 24 * 3600;
    private final Javalin javalin;
    private final Listening listening;
    private final Optional<String> home;
    private final List<Page> pages;

    /** The connector, known once the server is built. */
    private static final class Listening {
        private volatile int port;
    }

    private WebServer(Javalin javalin, Listening listening, Optional<String> home, List<Page> pages) {
        this.pages = pages;
        this.javalin = javalin;
        this.listening = listening;
        this.home = home;
    }

    /** The pages of one server, made for its door. */
    @FunctionalInterface
    public interface Pages {
        /** Makes the pages. */
        List<Page> behind(Door door);
    }

    /**
     * Starts a server.
     *
     * @param port the port; 0 for any free one
     * @param pages the pages
     * @throws PortBusyException if the port is taken
     */
    public static WebServer start(int port, Pages pages) {
        return start(port, Optional.empty(), pages);
    }

    /**
     * How the shop's network is let in.
     *
     * @param keys the server's key and certificate
     * @param names the names and addresses under which it may be asked for
     * @param home the name or address that others are told
     * @param gate asks who it is and whether they may
     */
    public record Network(SSLContext keys, Set<String> names, String home, Gate gate) {
        /** Copies the set. */
        public Network {
            names = Set.copyOf(names);
        }
    }

    /**
     * Starts a server for the shop's network, over TLS only, or for this machine alone.
     *
     * @param port the port; 0 for any free one
     * @param network how the network is let in; empty for this machine alone
     * @param pages the pages
     * @throws PortBusyException if the port is taken
     */
    public static WebServer start(int port, Optional<Network> network, Pages pages) {
        Listening listening = new Listening();
        Reach reach = network.map(n -> new Reach(true, n.names(), () -> listening.port))
                .orElseGet(() -> Reach.thisMachine(() -> listening.port));
        Door door = new Door(reach, network.map(Network::gate).orElse(Gate.OPEN));
        List<Page> behind = pages.behind(door);
        Javalin javalin = Javalin.create(config -> configure(config, port, network, door, behind));
        try {
            javalin.start();
        } catch (JavalinBindException e) {
            throw new PortBusyException(port, e);
        } catch (RuntimeException e) {
            if (boundElsewhere(e)) {
                throw new PortBusyException(port, e);
            }
            throw e;
        }
        listening.port = javalin.port();
        return new WebServer(javalin, listening, network.map(Network::home), behind);
    }

    private static boolean boundElsewhere(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (t instanceof BindException) {
                return true;
            }
        }
        return false;
    }

    private static void configure(
            JavalinConfig config, int port, Optional<Network> network, Door door, List<Page> pages) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.concurrency.useVirtualThreads = false;
        config.http.maxRequestSize = Door.LONGEST_KEPT;
        config.http.generateEtags = false;
        config.jetty.multipartConfig.maxTotalRequestSize(Door.LONGEST_WITH_PICTURES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(Door.LONGEST_WITH_PICTURES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxInMemoryFileSize(IN_MEMORY, SizeUnit.BYTES);
        // many may wait for one picture of the shop; streams hold none of them
        QueuedThreadPool threads = new QueuedThreadPool(MOST_THREADS, 2);
        threads.setName("web");
        config.jetty.threadPool = threads;
        config.jetty.modifyServer(server -> server.setStopTimeout(STOP_MS));
        config.jetty.modifyServletContextHandler(handler -> {
            handler.setSessionHandler(sessions(network.isPresent()));
            handler.insertHandler(patient());
        });
        config.jetty.addConnector((server, http) -> connector(server, http, port, network));
        files(config);
        door.addTo(config.routes);
        ErrorPages.addTo(config.routes);
        pages.forEach(page -> page.addTo(config.routes));
    }

    /** Waits for what a slow phone sends without a thread: forty of them would hold all threads, and nobody else be served. */
    private static EagerContentHandler patient() {
        return new EagerContentHandler(
                new EagerContentHandler.RetainedContentLoaderFactory(WAITED_FOR, FRAMING, false));
    }

    private static SessionHandler sessions(boolean tls) {
        SessionHandler sessions = new SessionHandler();
        sessions.setHttpOnly(true);
        sessions.setSameSite(HttpCookie.SameSite.STRICT);
        sessions.setSecureCookies(tls);
        sessions.setSessionCookie(tls ? "__Host-fayline" : "fayline");
        sessions.setSessionPath("/");
        sessions.setMaxInactiveInterval(SESSION_S);
        return sessions;
    }

    // The least rate is marked for removal in a later Jetty, which has a handler for it; in the pinned one it works.
    @SuppressWarnings("removal")
    private static ServerConnector connector(
            Server server, HttpConfiguration usual, int port, Optional<Network> network) {
        HttpConfiguration http = new HttpConfiguration(usual);
        http.setSendServerVersion(false);
        http.setMinRequestDataRate(LEAST_BYTES_PER_S);
        http.setSendXPoweredBy(false);
        http.getCustomizers().removeIf(c -> c instanceof ForwardedRequestCustomizer);
        ServerConnector connector;
        if (network.isPresent()) {
            // our own check of the host, at the door, stands in for the one by server name
            http.addCustomizer(new SecureRequestCustomizer(false));
            SslContextFactory.Server keys = new SslContextFactory.Server();
            keys.setSslContext(network.get().keys());
            keys.setIncludeProtocols(TLS_VERSIONS.toArray(String[]::new));
            connector = new ServerConnector(
                    server, 1, 1, new SslConnectionFactory(keys, "http/1.1"), new HttpConnectionFactory(http));
        } else {
            connector = new ServerConnector(server, 1, 1, new HttpConnectionFactory(http));
            connector.setHost(LOOPBACK);
        }
        connector.setPort(port);
        return connector;
    }

    private static void files(JavalinConfig config) {
        folder(config, "/static", "/fayline/app/web/static");
        folder(config, "/fonts", "/fayline/app/fonts");
        String version = new WebJarVersionLocator().version("htmx.org");
        if (version == null) {
            throw new IllegalStateException("the page library htmx.org is not on the class path");
        }
        folder(config, "/lib/htmx", "/META-INF/resources/webjars/htmx.org/" + version);
    }

    private static void folder(JavalinConfig config, String address, String place) {
        config.staticFiles.add(files -> {
            files.hostedPath = address;
            files.directory = place;
            files.location = Location.CLASSPATH;
            files.headers = java.util.Map.of("Cache-Control", "no-cache");
        });
    }

    /** The port on which it listens. */
    public int port() {
        return listening.port;
    }

    /** The address to open. */
    public String address() {
        return home.map(h -> "https://" + h).orElse("http://" + LOOPBACK) + ":" + listening.port + "/";
    }

    /** Every address it answers, for those who check them all. */
    List<Endpoint> endpoints() {
        return javalin.unsafe.internalRouter.allHttpHandlers().stream()
                .map(parsed -> parsed.endpoint)
                .toList();
    }

    /** Finishes what is under way, for a while, and stops. */
    @Override
    public void close() {
        pages.forEach(Page::end);
        try {
            javalin.stop();
        } catch (JavalinException e) {
            // a phone that never sends the rest of a request is not waited for: it sends it again
            if (!(e.getCause() instanceof TimeoutException)) {
                throw e;
            }
        }
    }
}
