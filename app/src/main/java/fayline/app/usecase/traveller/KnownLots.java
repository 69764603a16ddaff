package fayline.app.usecase.traveller;

import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.RecordState;
import fayline.flow.result.stock.Lots;
import java.time.Instant;
import java.util.List;

/** The lots that the stores know: those of the definition, and those that came since. */
public final class KnownLots {
    private KnownLots() {}

    /**
     * All of them, in the order in which they were written down, each ending on the day on which its date, its opened life or its time out
     * of the cold ends.
     *
     * @param d the definition
     * @param state the record
     * @param at the moment of use
     */
    public static List<Lot> of(Definition d, RecordState state, Instant at) {
        return Lots.of(d, state.stock(), state.made(), at).stream()
                .map(l -> l.endingOn(Lots.lastDay(
                        l, Lots.out(d, state.stock(), l, at), d.shop().zone())))
                .toList();
    }
}
