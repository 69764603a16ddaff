package fayline.app.web.lots;

import fayline.app.web.frame.Sight;
import fayline.flow.result.trace.TracedUse;
import java.util.List;

/**
 * What lots a part holds.
 *
 * @param name the part's or joint's name
 * @param address its page
 * @param lots each lot once
 * @param uses every use
 */
public record LotsInView(String name, String address, List<Row> lots, List<UseOfLot> uses) {
    /** Copies the lists. */
    public LotsInView {
        lots = List.copyOf(lots);
        uses = List.copyOf(uses);
    }

    /** A lot and of what it is. */
    public record Row(LotView.Link lot, String what) {}

    /** A use with its lot. */
    public record UseOfLot(LotView.Link lot, LotView.Use use) {}

    static LotsInView of(Sight sight, String made, List<TracedUse> uses) {
        return new LotsInView(
                sight.madeName(made),
                sight.madeLink(made),
                uses.stream()
                        .map(TracedUse::lot)
                        .distinct()
                        .map(l -> new Row(
                                LotWords.link(l),
                                sight.definition()
                                        .lots()
                                        .find(l)
                                        .map(x -> LotWords.what(sight, x))
                                        .or(() -> sight.view()
                                                .record()
                                                .stock()
                                                .receipt(l)
                                                .map(r -> sight.stuffName(r.of())))
                                        .orElse("unknown to the stores")))
                        .toList(),
                uses.stream()
                        .map(u -> new UseOfLot(LotWords.link(u.lot()), LotWords.use(sight, u)))
                        .toList());
    }
}
