package fayline.app.web.kept;

import fayline.app.web.frame.Page;
import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The script that a browser runs beside the pages. It is served from the root, because it may only see addresses below its own. */
public final class WorkerPage implements Page {
    private static final String PLACE = "/fayline/app/web/worker/worker.js";

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                "/worker.js",
                ctx -> ctx.header("Cache-Control", "no-cache")
                        .contentType("text/javascript; charset=utf-8")
                        .result(script()));
    }

    private static String script() {
        try (InputStream in = WorkerPage.class.getResourceAsStream(PLACE)) {
            if (in == null) {
                throw new IllegalStateException("the program is not whole: " + PLACE + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + PLACE, e);
        }
    }
}
