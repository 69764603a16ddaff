package fayline.app.web.people;

import fayline.app.usecase.people.People;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Door;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Set;

/** How a phone learns to trust the shop's own authority; it tells nothing of the shop. */
public final class TrustPage implements Page {
    private static final String TRUST = "/trust";
    private static final String FILE = TRUST + "/authority.crt";
    static final Set<String> ADDRESSES = Set.of(TRUST, FILE);
    private final Trust trust;
    private final DoorPages pages;

    /**
     * Makes the page.
     *
     * @param trust what phones need
     * @param people the people, who bound how many come
     * @param door the door
     */
    public TrustPage(Trust trust, People people, Door door) {
        this.trust = trust;
        this.pages = new DoorPages(people, door);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                TRUST,
                ctx -> pages.show(new Visit(ctx), "people/trust.jte", "Trust this server", trust, List.of()),
                Asks.NOTHING);
        routes.get(FILE, this::file, Asks.NOTHING);
    }

    private void file(Context ctx) {
        if (!trust.isOwn()) {
            throw Refusal.absent("certificate to install");
        }
        ctx.header("Content-Disposition", "attachment; filename=\"fayline-shop.crt\"");
        ctx.contentType("application/x-x509-ca-cert").result(trust.file());
    }
}
