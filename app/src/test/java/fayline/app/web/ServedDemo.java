package fayline.app.web;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The demonstration behind a door of its own, as browsers see it; opened once for a class of tests. */
record ServedDemo(OpenShop open, LookAtShop looking, WebServer server) implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);

    static ServedDemo in(Path folder) throws Exception {
        OpenShop open = open(folder.resolve("data"));
        LookAtShop looking = new LookAtShop(open.shop());
        return new ServedDemo(
                open,
                looking,
                WebServer.start(
                        0,
                        new Site(
                                open.shop(), looking, new LeastFinish(folder.resolve("library")), open::sign, "test")));
    }

    private static @Nullable Path replayed;

    /** The demonstration as its first start leaves it. Its eight weeks are replayed once; each test has a copy of its own. */
    static synchronized OpenShop open(Path data) throws IOException {
        Path first = replayed;
        if (first == null) {
            first = Files.createTempDirectory("fayline-demo");
            openWith(first).close();
            replayed = first;
        }
        try (Stream<Path> files = Files.walk(first)) {
            for (Path file : files.toList()) {
                Path copy = data.resolve(first.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
        return openWith(data);
    }

    private static OpenShop openWith(Path data) throws IOException {
        return OpenShop.openWith(data, Path.of("../demo/ousel"), CLOCK, Optional.empty());
    }

    ShopView view() {
        return looking.look("").orElseThrow();
    }

    /** Somebody of the crew. */
    String person() {
        return view().definition().shop().people().items().get(0).id();
    }

    @Override
    public void close() {
        server.close();
        open.close();
    }
}
