package fayline.app.web.live;

import fayline.app.usecase.people.Actor;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.function.BooleanSupplier;

/** How far the record is, as a stream that goes on while a page is open, and as one line for whoever asks now and then. */
public final class LivePage implements Page {
    private static final String STREAM = "text/event-stream";

    private final Sights sights;
    private final LookAtShop looking;
    private final Readers readers;

    /**
     * Makes it.
     *
     * @param sights knows whether who asked is still known
     * @param looking knows how far the record is
     */
    public LivePage(Sights sights, LookAtShop looking) {
        this.sights = sights;
        this.looking = looking;
        this.readers = new Readers(looking::latest);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/live", this::follow);
        routes.get(
                "/live/head",
                ctx -> ctx.contentType("text/plain; charset=utf-8")
                        .result(looking.latest().line()));
    }

    @Override
    public void end() {
        readers.close();
    }

    private void follow(Context ctx) {
        String accepts = ctx.header("Accept");
        if (accepts == null || !accepts.contains(STREAM) || !ctx.method().name().equals("GET")) {
            throw new Refusal(
                    406,
                    "This address is a stream for open pages, not a page.",
                    List.of("Open Today: it follows the record by itself."));
        }
        Visit visit = new Visit(ctx);
        BooleanSupplier stays = sights.stays(visit);
        String signIn = visit.actor().map(Actor::signIn).orElse("");
        if (!readers.haveRoom()) {
            throw new Refusal(
                    503,
                    "Too many pages follow the record at once.",
                    List.of("Nothing is lost: this page asks now and then instead."));
        }
        // what stands between may not gather what is meant to arrive now
        ctx.header("X-Accel-Buffering", "no");
        ctx.contentType(STREAM + "; charset=utf-8");
        ctx.future(() -> readers.add(signIn, stays, ctx.res()));
    }
}
