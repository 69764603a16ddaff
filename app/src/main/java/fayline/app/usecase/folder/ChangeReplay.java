package fayline.app.usecase.folder;

import fayline.app.usecase.change.DecideChange;
import fayline.app.usecase.change.RaiseChange;
import fayline.app.usecase.change.SettleChange;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.change.Verdict;
import fayline.store.file.HistoryEvent;
import java.util.List;
import java.util.Optional;

/** Does what a history tells of changes of the design. */
final class ChangeReplay {
    private final ShopRecord shop;
    private final String project;

    ChangeReplay(ShopRecord shop, String project) {
        this.shop = shop;
        this.project = project;
    }

    Outcome replay(Sent sent, HistoryEvent e) {
        if (e.act() == HistoryEvent.Act.CHANGE) {
            return new RaiseChange(shop)
                    .raise(
                            sent,
                            project,
                            new RaiseChange.Raised(
                                    e.said("number"),
                                    e.said("what"),
                                    e.said("why"),
                                    words(e, "touches"),
                                    MadeReplay.isYes(e, "structural")),
                            Optional.of(e.at()));
        }
        return named(shop, project, e)
                .map(c -> upon(sent, c, e))
                .orElseGet(() -> Outcome.refused("its change \"" + e.said("change") + "\" is not recorded before it"));
    }

    /** The entry that raised the change that an event names. */
    static Optional<Long> named(ShopRecord shop, String project, HistoryEvent e) {
        return e.said("change").isEmpty() ? Optional.empty() : shop.seqOf(EventIds.named(project, e.said("change")));
    }

    private Outcome upon(Sent sent, long change, HistoryEvent e) {
        return switch (e.act()) {
            case CHANGE_DECISION -> decide(sent, change, e);
            case CHANGE_LINE ->
                new SettleChange(shop)
                        .settle(
                                sent,
                                change,
                                new SettleChange.Settling(
                                        List.of(e.said("item")), e.said("how"), e.text(), e.said("drawing")),
                                Optional.of(e.at()));
            default -> new SettleChange(shop).close(sent, change, e.text(), Optional.of(e.at()));
        };
    }

    private Outcome decide(Sent sent, long change, HistoryEvent e) {
        if (e.said("second").equals(e.by())) {
            return new DecideChange(shop).agree(sent, change, Optional.of(e.at()));
        }
        return new DecideChange(shop)
                .told(
                        sent,
                        change,
                        new DecideChange.Decision(
                                e.said("decision").equals("accepted"),
                                e.text(),
                                MadeReplay.isYes(e, "structural"),
                                e.said("second")),
                        words(e, "items"),
                        e.rows().stream()
                                .map(r -> new Verdict.Withdrawn(
                                        r.getOrDefault("made", ""), r.getOrDefault("drawing", "")))
                                .toList(),
                        e.at());
    }

    private static List<String> words(HistoryEvent e, String key) {
        return e.said(key).isEmpty() ? List.of() : List.of(e.said(key).split(" "));
    }
}
