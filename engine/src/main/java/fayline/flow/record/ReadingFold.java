package fayline.flow.record;

import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds readings, and what they were before they were corrected. */
final class ReadingFold {
    private final SortedMap<Long, TakenReading> readings = new TreeMap<>();
    private final List<MendedReading> mended = new ArrayList<>();

    List<TakenReading> readings() {
        return List.copyOf(readings.values());
    }

    List<MendedReading> mended() {
        return mended;
    }

    Optional<TakenReading> reading(long seq) {
        return Optional.ofNullable(readings.get(seq));
    }

    Touched hold(Happened h) {
        Value.Fields f = h.fields();
        readings.put(
                h.seq(),
                new TakenReading(
                        h.seq(),
                        h.project(),
                        h.at(),
                        h.by(),
                        f.text("kind"),
                        f.text("of"),
                        f.text("station"),
                        f.text("state"),
                        f.inner("values").allTexts()));
        return Touched.reading(h.seq());
    }

    Touched drop(long seq) {
        readings.remove(seq);
        return Touched.reading(seq);
    }

    /** A correction is about to be laid over a reading, where the entry that it names is one. */
    void mend(Entry correction, long reading, Value.Fields f) {
        reading(reading)
                .ifPresent(r -> mended.add(new MendedReading(
                        correction.seq(),
                        r,
                        Entry.time("", correction.at()),
                        correction.by(),
                        f.text("why"),
                        f.text("withdrawn").equals("yes"))));
    }
}
