package fayline.app.web;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;

/** The demonstration behind a door of its own, as browsers see it; opened once for a class of tests. */
record ServedDemo(OpenShop open, LookAtShop looking, WebServer server) implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T12:00:00Z"), ZoneOffset.UTC);

    static ServedDemo in(Path folder) throws Exception {
        OpenShop open = OpenShop.openWith(folder.resolve("data"), Path.of("../demo/ousel"), CLOCK, Optional.empty());
        LookAtShop looking = new LookAtShop(open.shop());
        return new ServedDemo(
                open,
                looking,
                WebServer.start(
                        0,
                        new Site(
                                open.shop(), looking, new LeastFinish(folder.resolve("library")), open::sign, "test")));
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
