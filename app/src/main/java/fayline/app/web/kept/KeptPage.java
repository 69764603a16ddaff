package fayline.app.web.kept;

import fayline.app.usecase.journal.RecordTree;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Door;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Visit;
import fayline.flow.record.payload.Value;
import fayline.flow.record.proof.Digest;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The one door for what phones kept: each form is answered by itself, in order. One of which nobody knows what became stops the
 * row, so that nothing overtakes it; one that is refused stays on the phone for a person and holds nothing up.
 */
public final class KeptPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger(KeptPage.class);
    private static final String JSON = "application/json";
    /** What comes later than this is told afterwards: it has happened and is not refused for what ought to have been before it. */
    private static final Duration AFTERWARDS = Duration.ofMinutes(10);
    /** How far ahead a phone's clock may be. */
    private static final Duration AHEAD = Duration.ofMinutes(2);

    /** How much of the hash of a record's first entry phones know it by. */
    private static final int NAME = 32;

    private static final int UNREADABLE = 409;

    private final Sights sights;
    private final ShopRecord shop;
    private final Door door;
    private final RecordTree tree;
    private final List<TakesKept> takers;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     * @param door the door, for the session's token
     * @param tree proves that the record only grows
     * @param takers the pages whose forms may come late
     */
    public KeptPage(Sights sights, ShopRecord shop, Door door, RecordTree tree, List<TakesKept> takers) {
        this.tree = tree;
        this.sights = sights;
        this.shop = shop;
        this.door = door;
        this.takers = List.copyOf(takers);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/kept", ctx -> {
            Visit visit = new Visit(ctx);
            sights.show(visit, "kept.jte", frame(visit), "");
        });
        routes.get("/kept/head", ctx -> json(ctx, head(new Visit(ctx))));
        // whoever sees the shop may ask; of each entry the record's judge says whether it may be made, and why not
        routes.post("/kept/send", ctx -> json(ctx, send(new Visit(ctx), ctx.body())), Asks.to(Act.SEE));
    }

    private Frame frame(Visit visit) {
        return sights.look(visit)
                .map(s -> sights.frame(visit, s, "Kept on this phone", ""))
                .orElseGet(() -> sights.bare(visit, "Kept on this phone", ""));
    }

    private static void json(Context ctx, Value.Fields answer) {
        ctx.contentType(JSON).result(answer.canonical());
    }

    /** Where the record ends, with the proof that it goes on from where the phone last saw it end. */
    private Value.Fields head(Visit visit) {
        String seen = visit.query("size");
        RecordTree.Grown grown = tree.since(seen.matches("[0-9]{1,15}") ? Long.parseLong(seen) : 0);
        return Value.Fields.NONE
                .with("before", grown.before().hex())
                .with("path", grown.path().stream().map(Digest::hex).toList())
                .with("root", grown.root().hex())
                .with("size", grown.size())
                .with("format", KeptBatch.FORMAT)
                .with("head", shop.state().head().seq())
                .with("now", shop.now().toString())
                .with("person", visit.actor().map(a -> a.person()).orElse(""))
                .with("record", name())
                .with("token", door.token(visit));
    }

    /** The name of this record, by which a phone tells it from another that is served at the same address later. */
    private String name() {
        String origin = shop.origin();
        return origin.substring(0, Math.min(NAME, origin.length()));
    }

    private Value.Fields send(Visit visit, String body) {
        KeptBatch batch = KeptBatch.read(body);
        List<Value> answers = new ArrayList<>();
        boolean open = true;
        for (KeptForm form : batch.forms()) {
            KeptAnswer answer =
                    open ? answer(visit, batch, form) : KeptAnswer.unknown(form, "It waits for the one before it.");
            open = open && !answer.what().equals("unknown");
            answers.add(answer.value());
        }
        return Value.Fields.NONE
                .with("answers", new Value.Many(answers))
                .with("format", KeptBatch.FORMAT)
                .with("head", shop.state().head().seq());
    }

    private KeptAnswer answer(Visit visit, KeptBatch batch, KeptForm form) {
        if (!batch.record().isEmpty() && !batch.record().equals(name())) {
            return KeptAnswer.refused(
                    form, "This was kept for the record of another shop that was served here before.");
        }
        Instant now = shop.now();
        if (form.typedAt().isAfter(now.plus(AHEAD))) {
            return KeptAnswer.refused(
                    form,
                    "It was typed at " + form.typedAt() + " by the phone's clock; in the shop it is " + now
                            + ". Set the phone's clock, then change the time and send it again.");
        }
        if (visit.actor().filter(a -> !a.person().equals(form.by())).isPresent()) {
            return KeptAnswer.refused(form, "It was typed by " + form.by() + ", who must sign in here to send it.");
        }
        try {
            Optional<Sight> sight = sights.look(visit, form.project());
            if (sight.isEmpty() || form.project().isEmpty()) {
                return KeptAnswer.refused(form, "The project \"" + form.project() + "\" is not in this shop.");
            }
            return KeptAnswer.of(form, take(sight.get(), form, now));
        } catch (Refusal e) {
            // a definition that cannot be read now will be readable again; what is not there is for a person to decide
            return e.status() == UNREADABLE
                    ? KeptAnswer.unknown(form, e.sentence())
                    : KeptAnswer.refused(form, e.sentence());
        } catch (RuntimeException e) {
            LOG.error("the kept form {} failed", form.id(), e);
            return KeptAnswer.unknown(form, "Fayline itself has failed here. It will be sent again.");
        }
    }

    private Outcome take(Sight sight, KeptForm form, Instant now) {
        boolean known = shop.knows(form.id());
        boolean live = !known && form.typedAt().isAfter(now.minus(AFTERWARDS));
        Sent sent = new Sent(form.id(), form.by(), live);
        Optional<Instant> moment = known ? Optional.empty() : Optional.of(form.typedAt());
        for (TakesKept taker : takers) {
            Optional<Outcome> outcome = taker.takeKept(sight, form.address(), form.as(moment), sent);
            if (outcome.isPresent()) {
                return outcome.get();
            }
        }
        return Outcome.refused("Nothing of this program takes \"" + form.address() + "\".");
    }
}
