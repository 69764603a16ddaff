package fayline.flow.record.trouble;

import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Folds {@code deviation-raised} and {@code deviation-settled}. Of two decisions about one deviation the first holds. Where
 * structure is touched, an entry by another person that names the same disposition agrees to it.
 */
public final class TroubleFold implements Room {
    private static final String RAISED = "deviation-raised";
    private final Map<Long, Happened> raised = new HashMap<>();
    private final Map<Long, Long> aboutOf = new HashMap<>();
    private final Map<Long, SortedMap<Long, Happened>> decided = new HashMap<>();
    private final SortedMap<Long, Deviation> deviations = new TreeMap<>();

    /** An empty fold. */
    public TroubleFold() {}

    @Override
    public void hold(Happened happened) {
        long deviation = happened.seq();
        if (happened.kind().equals(RAISED)) {
            raised.put(deviation, happened);
        } else {
            deviation = happened.fields().whole("deviation").orElse(0L);
            aboutOf.put(happened.seq(), deviation);
            decided.computeIfAbsent(deviation, d -> new TreeMap<>()).put(happened.seq(), happened);
        }
        refresh(deviation);
    }

    @Override
    public void drop(long seq) {
        Long deviation = aboutOf.get(seq);
        if (deviation == null) {
            raised.remove(seq);
            refresh(seq);
        } else {
            decided.getOrDefault(deviation, new TreeMap<>()).remove(seq);
            refresh(deviation);
        }
    }

    /** What all of it amounts to now. */
    public TroubleState state() {
        return new TroubleState(deviations);
    }

    /** What the deviation is of that an entry raised or decided about: {@code project/made}; empty where it is of none. */
    public String madeOf(long entry) {
        Deviation of = deviations.get(aboutOf.getOrDefault(entry, entry));
        return of == null ? "" : of.made();
    }

    /** The entry by which something made was scrapped last; 0 where it was not. */
    public long scrappedAt(String made) {
        return deviations.values().stream()
                .filter(d -> d.made().equals(made) && !d.isOpen())
                .flatMap(d -> d.settled().stream())
                .filter(s -> s.disposition() == Disposition.SCRAP)
                .mapToLong(s -> Math.max(s.seq(), s.agreed()))
                .max()
                .orElse(0);
    }

    private void refresh(long seq) {
        Happened h = raised.get(seq);
        if (h == null) {
            deviations.remove(seq);
            return;
        }
        SortedMap<Long, Happened> decisions = decided.getOrDefault(seq, new TreeMap<>());
        boolean structural =
                isYes(h, "structural") || decisions.values().stream().anyMatch(d -> isYes(d, "structural"));
        deviations.put(
                seq,
                new Deviation(
                        seq,
                        h.fields().text("about"),
                        h.at(),
                        h.by(),
                        h.told(),
                        h.fields().text("text"),
                        Photo.allOf(h.fields()),
                        structural,
                        settled(decisions),
                        h.fields().whole("change").orElse(0L)));
    }

    private static boolean isYes(Happened h, String field) {
        return h.fields().text(field).equals("yes");
    }

    private static Optional<Settlement> settled(SortedMap<Long, Happened> decisions) {
        for (Happened first : decisions.values()) {
            Value.Fields f = first.fields();
            Optional<Disposition> what = Disposition.of(f.text("disposition"));
            // Who names themselves as the second person agrees, and decides nothing.
            if (what.isPresent() && !f.text("second").equals(first.by())) {
                Optional<Happened> agreed = f.text("second").isEmpty()
                        ? decisions.tailMap(first.seq() + 1).values().stream()
                                .filter(d -> agrees(d, first))
                                .findFirst()
                        : Optional.empty();
                return Optional.of(new Settlement(
                        first.seq(),
                        first.at(),
                        first.by(),
                        what.get(),
                        f.text("note"),
                        agreed.map(Happened::by).orElse(f.text("second")),
                        agreed.map(Happened::seq).orElse(0L),
                        Rework.allOf(f)));
            }
        }
        return Optional.empty();
    }

    private static boolean agrees(Happened d, Happened first) {
        return !d.by().equals(first.by())
                && d.fields().text("second").equals(d.by())
                && d.fields().text("disposition").equals(first.fields().text("disposition"));
    }
}
