package fayline.flow.record.inspect;

import fayline.flow.record.inspect.FoundFault.Step;
import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds {@code visit-held}, {@code finding-raised}, {@code finding-corrected} and {@code finding-signed}. */
public final class InspectFold implements Room {
    private final SortedMap<Long, Happened> all = new TreeMap<>();

    /** An empty fold. */
    public InspectFold() {}

    @Override
    public void hold(Happened happened) {
        all.put(happened.seq(), happened);
    }

    @Override
    public void drop(long seq) {
        all.remove(seq);
    }

    /** What all of it amounts to now. There are few: it is put together anew each time. */
    public InspectState state() {
        SortedMap<Long, HeldVisit> visits = new TreeMap<>();
        SortedMap<Long, FoundFault> faults = new TreeMap<>();
        for (Happened h : all.values()) {
            switch (h.kind()) {
                case "visit-held" -> visits.put(h.seq(), visit(h));
                case "finding-raised" -> faults.put(h.seq(), fault(h));
                default -> {
                    // told with the finding that it is about
                }
            }
        }
        return new InspectState(visits, faults);
    }

    private static HeldVisit visit(Happened h) {
        Value.Fields f = h.fields();
        return new HeldVisit(
                h.seq(),
                f.whole("number").orElse(0L),
                h.project(),
                f.text("stage"),
                h.at(),
                h.by(),
                f.text("who"),
                f.text("own").equals("yes"),
                f.text("text"),
                Photo.allOf(f).stream()
                        .map(p -> new StagePhoto(p, f.text("scale"), f.text("facing")))
                        .toList());
    }

    private FoundFault fault(Happened h) {
        Value.Fields f = h.fields();
        List<Step> mended = new ArrayList<>();
        List<Step> signed = new ArrayList<>();
        for (Happened later : all.tailMap(h.seq() + 1).values()) {
            if (later.fields().whole("finding").orElse(0L) == h.seq()) {
                (later.kind().equals("finding-signed") ? signed : mended).add(step(later));
            }
        }
        return new FoundFault(
                h.seq(),
                f.text("number"),
                f.whole("visit").orElse(0L),
                f.text("about"),
                h.at(),
                h.by(),
                f.text("text"),
                Photo.allOf(f),
                mended,
                signed);
    }

    private static Step step(Happened h) {
        Value.Fields f = h.fields();
        return new Step(
                h.seq(),
                h.at(),
                h.by(),
                f.text("who"),
                !f.text("accepted").equals("no"),
                f.text("text"),
                Photo.allOf(f));
    }
}
