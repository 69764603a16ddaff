package fayline.app.usecase.folder;

import fayline.app.usecase.inspect.AnswerFinding;
import fayline.app.usecase.inspect.HoldVisit;
import fayline.app.usecase.inspect.Pictures;
import fayline.app.usecase.inspect.RaiseFinding;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.store.file.HistoryEvent;
import java.time.Instant;
import java.util.Optional;

/** Does what a history tells of visits and what they found. */
final class InspectReplay {
    private final ShopRecord shop;
    private final String project;
    private final FolderPhotos photos;

    InspectReplay(ShopRecord shop, String project, FolderPhotos photos) {
        this.shop = shop;
        this.project = project;
        this.photos = photos;
    }

    Outcome replay(Sent sent, HistoryEvent e) {
        Optional<Instant> at = Optional.of(e.at());
        Pictures pictures = Pictures.told(photos.of(e));
        return switch (e.act()) {
            case VISIT ->
                new HoldVisit(shop)
                        .hold(
                                sent,
                                project,
                                new HoldVisit.Held(
                                        e.said("stage"),
                                        e.said("who"),
                                        e.said("own").equals("yes"),
                                        e.text(),
                                        e.said("scale"),
                                        e.said("facing")),
                                pictures,
                                at);
            case FINDING ->
                named(e, "visit")
                        .map(v -> new RaiseFinding(shop).raise(sent, v, e.said("about"), e.text(), pictures, at))
                        .orElseGet(() -> unknown(e, "visit"));
            case PUT_RIGHT ->
                named(e, "finding")
                        .map(f -> new AnswerFinding(shop).mend(sent, f, e.text(), pictures, at))
                        .orElseGet(() -> unknown(e, "finding"));
            default ->
                named(e, "finding")
                        .map(f -> new AnswerFinding(shop)
                                .sign(
                                        sent,
                                        f,
                                        e.said("who"),
                                        !e.said("accepted").equals("no"),
                                        e.text(),
                                        at))
                        .orElseGet(() -> unknown(e, "finding"));
        };
    }

    private Optional<Long> named(HistoryEvent e, String key) {
        return shop.seqOf(EventIds.named(project, e.said(key)));
    }

    private static Outcome unknown(HistoryEvent e, String key) {
        return Outcome.refused("its " + key + " \"" + e.said(key) + "\" is not recorded before it");
    }
}
