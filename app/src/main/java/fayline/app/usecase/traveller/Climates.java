package fayline.app.usecase.traveller;

import fayline.flow.record.RecordState;
import fayline.flow.record.TakenReading;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The shop's air as it was read. */
public final class Climates {
    private Climates() {}

    /** The readings of the air, in the order of time. */
    public static List<TakenReading> all(RecordState state) {
        return state.readings().stream()
                .filter(r -> r.kind().equals("climate"))
                .sorted(Comparator.comparing(TakenReading::at))
                .toList();
    }

    /** The newest reading up to a moment. */
    public static Optional<TakenReading> newest(RecordState state, Instant at) {
        return state.readings().stream()
                .filter(r -> r.kind().equals("climate") && !r.at().isAfter(at))
                .max(Comparator.comparing(TakenReading::at));
    }

    /**
     * The newest of readings up to a moment.
     *
     * @param inOrder readings in the order of time
     * @param at the moment
     */
    public static Optional<TakenReading> newest(List<TakenReading> inOrder, Instant at) {
        int low = 0;
        int high = inOrder.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (inOrder.get(middle).at().isAfter(at)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low == 0 ? Optional.empty() : Optional.of(inOrder.get(low - 1));
    }
}
