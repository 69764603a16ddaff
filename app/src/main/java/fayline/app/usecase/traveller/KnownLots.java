package fayline.app.usecase.traveller;

import fayline.flow.project.Definition;
import fayline.flow.project.stock.Lot;
import fayline.flow.record.RecordState;
import java.util.List;

/** The lots that the stores know: those of the definition. */
public final class KnownLots {
    private KnownLots() {}

    /** All of them, in the order in which they were written down. */
    public static List<Lot> of(Definition d, RecordState state) {
        return d.lots().stream().toList();
    }
}
