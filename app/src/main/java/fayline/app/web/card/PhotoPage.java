package fayline.app.web.card;

import fayline.app.usecase.view.Photos;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import fayline.flow.record.payload.Photo;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;

/**
 * Pictures of notes, by the hash of their file. What is sent can be nothing but a picture: its type comes from its content, no
 * browser may guess another, and opened alone it stands in a sandbox.
 */
public final class PhotoPage implements Page {
    private static final String SANDBOX = "default-src 'none'; sandbox";
    private final Photos photos;

    /** Makes the page. */
    public PhotoPage(Photos photos) {
        this.photos = photos;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/photo/{hash}", ctx -> send(ctx, photos.whole(ctx.pathParam("hash")), ""));
        routes.get("/photo/{hash}/small", ctx -> send(ctx, photos.small(ctx.pathParam("hash")), "-small"));
    }

    private static void send(Context ctx, Optional<Photos.Shown> found, String which) {
        Photos.Shown shown = found.orElseThrow(() -> Refusal.absent("picture of that number"));
        String tag = "\"" + ctx.pathParam("hash") + which + "\"";
        ctx.header("Content-Security-Policy", SANDBOX);
        // Asked for again each time, so that whoever may no longer see it does not; sent again only where it is new.
        ctx.header("Cache-Control", "private, no-cache");
        ctx.header("ETag", tag);
        if (tag.equals(ctx.header("If-None-Match"))) {
            ctx.status(HttpStatus.NOT_MODIFIED);
            return;
        }
        Photo.Sort sort = shown.sort();
        String name = "photo-" + ctx.pathParam("hash").substring(0, 12) + which + "." + sort.ending();
        new Visit(ctx).send(shown.bytes(), sort.mediaType(), name);
    }
}
