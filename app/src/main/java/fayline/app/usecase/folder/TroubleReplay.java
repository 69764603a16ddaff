package fayline.app.usecase.folder;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.trouble.RaiseDeviation;
import fayline.app.usecase.trouble.SettleDeviation;
import fayline.flow.record.trouble.Rework;
import fayline.store.file.HistoryEvent;
import java.util.Optional;

/** Does what a history tells of deviations. */
final class TroubleReplay {
    private final ShopRecord shop;
    private final String project;
    private final FolderPhotos photos;

    TroubleReplay(ShopRecord shop, String project, FolderPhotos photos) {
        this.shop = shop;
        this.project = project;
        this.photos = photos;
    }

    Outcome replay(Sent sent, HistoryEvent e) {
        if (e.act() == HistoryEvent.Act.DEVIATION) {
            return new RaiseDeviation(shop)
                    .told(
                            sent,
                            new RaiseDeviation.Raised(
                                    project + "/" + e.said("about"),
                                    e.text(),
                                    MadeReplay.isYes(e, "structural"),
                                    ChangeReplay.named(shop, project, e).orElse(0L)),
                            photos.of(e),
                            MadeReplay.time(e));
        }
        Optional<Long> named = shop.seqOf(EventIds.named(project, e.said("deviation")));
        if (named.isEmpty()) {
            return Outcome.refused("it decides about \"" + e.said("deviation") + "\", which is not recorded before it");
        }
        if (e.said("second").equals(e.by())) {
            return new SettleDeviation(shop).agree(sent, named.get(), Optional.of(e.at()));
        }
        return new SettleDeviation(shop)
                .settle(
                        sent,
                        named.get(),
                        new SettleDeviation.Decision(
                                e.said("disposition"),
                                e.text(),
                                MadeReplay.isYes(e, "structural"),
                                e.said("second"),
                                e.rows().stream()
                                        .map(r -> new Rework(
                                                r.getOrDefault("what", ""),
                                                r.getOrDefault("time", ""),
                                                r.getOrDefault("kind", "")))
                                        .toList()),
                        Optional.of(e.at()));
    }
}
