package fayline.app.web.people;

import fayline.app.web.frame.Door;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.util.List;

/** How a phone learns to trust the shop's own authority; it tells nothing of the shop. */
public final class TrustPage implements Page {
    static final String TRUST = "/trust";
    private final Trust trust;
    private final DoorPages pages;

    /**
     * Makes the page.
     *
     * @param trust what phones need
     * @param door the door
     */
    public TrustPage(Trust trust, Door door) {
        this.trust = trust;
        this.pages = new DoorPages(door);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(TRUST, ctx -> pages.show(new Visit(ctx), "people/trust.jte", "Trust this server", trust, List.of()));
        routes.get(TRUST + "/authority.crt", ctx -> {
            if (!trust.isOwn()) {
                throw Refusal.absent("certificate to install");
            }
            ctx.header("Content-Disposition", "attachment; filename=\"fayline-shop.crt\"");
            ctx.contentType("application/x-x509-ca-cert").result(trust.file());
        });
    }
}
