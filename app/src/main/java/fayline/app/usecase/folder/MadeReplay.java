package fayline.app.usecase.folder;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.traveller.DrawLot;
import fayline.app.usecase.traveller.LayPly;
import fayline.app.usecase.traveller.MixCup;
import fayline.app.usecase.traveller.StepAsks;
import fayline.store.file.HistoryEvent;
import java.time.Instant;
import java.util.Optional;

/** Does what a history tells of what went into steps. */
final class MadeReplay {
    private final ShopRecord shop;

    MadeReplay(ShopRecord shop) {
        this.shop = shop;
    }

    Outcome replay(Sent sent, String step, HistoryEvent e) {
        BenchTime time = time(e);
        String lot = e.values().getOrDefault("lot", "");
        return switch (e.act()) {
            case DRAW ->
                new DrawLot(shop)
                        .draw(
                                sent,
                                step,
                                StepAsks.NOTHING,
                                new DrawLot.Drawn(
                                        lot,
                                        e.said("component"),
                                        e.said("amount"),
                                        isYes(e, "override"),
                                        e.said("why")),
                                time);
            case MIX ->
                new MixCup(shop)
                        .mix(
                                sent,
                                step,
                                StepAsks.NOTHING,
                                new MixCup.Cup(
                                        e.said("batch"),
                                        e.said("system"),
                                        e.said("resin-lot"),
                                        e.said("hardener-lot"),
                                        e.said("resin"),
                                        e.said("hardener"),
                                        e.said("why")),
                                time);
            default ->
                new LayPly(shop)
                        .lay(
                                sent,
                                step,
                                StepAsks.NOTHING,
                                new LayPly.Ticked(
                                        e.said("ply"), e.said("name"), lot, isYes(e, "skipped"), e.said("why")),
                                time);
        };
    }

    static BenchTime time(HistoryEvent e) {
        return new BenchTime(
                Optional.of(e.at()),
                Optional.of(e.said("told")).filter(t -> !t.isEmpty()).map(Instant::parse));
    }

    static boolean isYes(HistoryEvent e, String key) {
        return e.said(key).equals("yes");
    }
}
