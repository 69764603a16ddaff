package fayline.flow.record.change;

import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Folds {@code change-raised}, {@code change-decided}, {@code change-settled} and {@code change-closed}. Of two decisions about one
 * change, and of two closings, the first holds; of two lines about one thing the later does. Where structure is touched, an entry by
 * another person that names the same decision agrees to it.
 */
public final class ChangeFold implements Room {
    private static final String RAISED = "change-raised";
    private static final String DECIDED = "change-decided";
    private static final String SETTLED = "change-settled";
    private static final String CLOSED = "change-closed";
    private final SortedMap<Long, Happened> raised = new TreeMap<>();
    private final Map<Long, Long> changeOf = new HashMap<>();
    private final Map<Long, SortedMap<Long, Happened>> answers = new HashMap<>();
    private final SortedMap<Long, Change> changes = new TreeMap<>();

    /** An empty fold. */
    public ChangeFold() {}

    @Override
    public void hold(Happened happened) {
        long change = happened.seq();
        if (happened.kind().equals(RAISED)) {
            raised.put(change, happened);
        } else {
            change = happened.fields().whole("change").orElse(0L);
            changeOf.put(happened.seq(), change);
            answers.computeIfAbsent(change, c -> new TreeMap<>()).put(happened.seq(), happened);
        }
        refresh(change);
    }

    @Override
    public void drop(long seq) {
        Long change = changeOf.get(seq);
        if (change == null) {
            raised.remove(seq);
            refresh(seq);
        } else {
            answers.getOrDefault(change, new TreeMap<>()).remove(seq);
            refresh(change);
        }
    }

    /** What all of it amounts to now. */
    public ChangeState state() {
        return new ChangeState(changes);
    }

    private void refresh(long seq) {
        Happened h = raised.get(seq);
        if (h == null) {
            changes.remove(seq);
            return;
        }
        Collection<Happened> mine = answers.getOrDefault(seq, new TreeMap<>()).values();
        Value.Fields f = h.fields();
        changes.put(
                seq,
                new Change(
                        seq,
                        h.project(),
                        f.text("number"),
                        h.at(),
                        h.by(),
                        f.text("what"),
                        f.text("why"),
                        f.texts("touches"),
                        isYes(h, "structural") || mine.stream().anyMatch(d -> isYes(d, "structural")),
                        verdict(mine),
                        settled(mine),
                        closed(mine)));
    }

    private static boolean isYes(Happened h, String field) {
        return h.fields().text(field).equals("yes");
    }

    private static Optional<Verdict> verdict(Collection<Happened> mine) {
        // Who names themselves as the second person agrees, and decides nothing.
        return mine.stream()
                .filter(h ->
                        h.kind().equals(DECIDED) && !h.fields().text("second").equals(h.by()))
                .findFirst()
                .map(first -> verdict(first, mine));
    }

    private static Verdict verdict(Happened first, Collection<Happened> mine) {
        Value.Fields f = first.fields();
        Optional<Happened> agreed = f.text("second").isEmpty()
                ? mine.stream().filter(h -> agrees(h, first)).findFirst()
                : Optional.empty();
        return new Verdict(
                first.seq(),
                first.at(),
                first.by(),
                f.text("decision").equals("accepted"),
                f.text("note"),
                agreed.map(Happened::by).orElse(f.text("second")),
                agreed.map(Happened::seq).orElse(0L),
                f.text("definition"),
                f.texts("items"),
                Verdict.Withdrawn.allOf(f));
    }

    private static boolean agrees(Happened h, Happened first) {
        return h.kind().equals(DECIDED)
                && h.seq() > first.seq()
                && !h.by().equals(first.by())
                && h.fields().text("second").equals(h.by())
                && h.fields().text("decision").equals(first.fields().text("decision"));
    }

    private static SortedMap<String, Change.Settled> settled(Collection<Happened> mine) {
        SortedMap<String, Change.Settled> settled = new TreeMap<>();
        mine.stream()
                .filter(h -> h.kind().equals(SETTLED))
                .forEach(h -> Treatment.of(h.fields().text("how"))
                        .ifPresent(how -> settled.put(
                                h.fields().text("item"),
                                new Change.Settled(
                                        h.seq(),
                                        h.at(),
                                        h.by(),
                                        how,
                                        h.fields().text("note"),
                                        h.fields().text("drawing")))));
        return settled;
    }

    private static Optional<Change.Closed> closed(Collection<Happened> mine) {
        return mine.stream()
                .filter(h -> h.kind().equals(CLOSED))
                .findFirst()
                .map(h -> new Change.Closed(h.seq(), h.at(), h.by(), h.fields().text("note")));
    }
}
