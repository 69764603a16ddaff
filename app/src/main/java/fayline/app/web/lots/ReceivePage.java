package fayline.app.web.lots;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.Certificate;
import fayline.app.usecase.stores.ReceiveLot;
import fayline.app.usecase.stores.ReceivedLot;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.flow.project.Definition;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The form by which a lot comes into the stores. */
public final class ReceivePage implements Page, TakesKept {
    private static final String HERE = "/stores/receive";
    private static final List<String> FIELDS =
            List.of("lot", "stuff", "quantity", "weighed", "received", "expires", "opened-life", "price", "order");
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the page. */
    public ReceivePage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, List.of(), Map.of("order", visit.query("order"))));
        });
        routes.post(
                HERE,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> take(visit, sight));
                },
                Asks.to(Act.WORK));
    }

    private void show(Visit visit, Sight sight, List<String> refused, Map<String, String> typed) {
        sights.show(
                visit,
                "lots/receive.jte",
                sights.frame(visit, sight, "Receive a lot", "/stores"),
                new ReceiveView(
                        refused,
                        typed,
                        stuff(sight.definition(), typed.getOrDefault("stuff", "")),
                        orders(sight, typed.getOrDefault("order", "")),
                        sight.time().today().toString()));
    }

    private static List<Frame.Choice> stuff(Definition d, String chosen) {
        List<Frame.Choice> all = new ArrayList<>();
        d.systems().forEach(s -> {
            for (String part : List.of("resin", "hardener")) {
                String id = s.id() + " " + part;
                all.add(new Frame.Choice(id, s.name() + ", " + part, id.equals(chosen)));
            }
        });
        d.materials().forEach(m -> all.add(new Frame.Choice(m.id(), m.name(), m.id().equals(chosen))));
        return all;
    }

    private static List<Frame.Choice> orders(Sight sight, String chosen) {
        List<Frame.Choice> all = new ArrayList<>();
        sight.definition().deliveries().stream()
                .filter(x -> x.arrived().isEmpty())
                .forEach(x -> all.add(new Frame.Choice(
                        x.id(), sight.stuffName(x.what()) + ", " + x.quantity(), x.id().equals(chosen))));
        return all;
    }

    @Override
    public Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent) {
        return address.equals(HERE) ? Optional.of(receive(sight, typed, sent)) : Optional.empty();
    }

    private Outcome receive(Sight sight, Typed typed, Sent sent) {
        String[] stuff = typed.field("stuff").split(" ", 2);
        List<Typed.Parcel> files = typed.parcels("certificate");
        return new ReceiveLot(shop)
                .receive(
                        sent,
                        sight.view().project(),
                        new ReceivedLot(
                                typed.field("lot"),
                                stuff[0],
                                stuff.length > 1 ? stuff[1] : "",
                                typed.field("quantity"),
                                typed.field("weighed").equals("yes"),
                                typed.field("received"),
                                typed.field("expires"),
                                typed.field("opened-life"),
                                typed.field("price"),
                                typed.field("order")),
                        files.isEmpty()
                                ? Optional.empty()
                                : Optional.of(new Certificate(files.get(0).bytes())),
                        typed.moment());
    }

    private void take(Visit visit, Sight sight) {
        Outcome outcome = receive(sight, visit, Sent.live(visit.once(), sight.sender(visit)));
        if (outcome.stands()) {
            visit.say(Answers.said(outcome), "stores-receive");
            visit.lead(LotWords.address(visit.field("lot")));
            return;
        }
        Map<String, String> typed = new TreeMap<>();
        FIELDS.forEach(f -> typed.put(f, visit.field(f)));
        visit.status(422);
        show(visit, sight, Answers.refused(outcome), typed);
    }
}
