package fayline.flow.record.made;

import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds {@code lot-drawn}, {@code mix-made} and {@code ply-laid}. Only the step that an entry is of is put together anew. */
public final class MadeFold implements Room {
    private final Map<Long, String> stepOf = new HashMap<>();
    private final Map<String, SortedMap<Long, Happened>> ofStep = new HashMap<>();
    private final SortedMap<String, StepMade> steps = new TreeMap<>();
    private final Map<String, Long> begun = new HashMap<>();

    /** An empty fold. */
    public MadeFold() {}

    @Override
    public void hold(Happened happened) {
        String step = happened.fields().text("step");
        stepOf.put(happened.seq(), step);
        ofStep.computeIfAbsent(step, s -> new TreeMap<>()).put(happened.seq(), happened);
        refresh(step);
    }

    @Override
    public void drop(long seq) {
        String step = stepOf.remove(seq);
        if (step != null) {
            ofStep.getOrDefault(step, new TreeMap<>()).remove(seq);
            refresh(step);
        }
    }

    /**
     * Something was scrapped and is made anew.
     *
     * @param made the part or joint, {@code project/made}
     * @param from the entry from which on what goes into it counts as what it has; 0 for from the first
     */
    public void begin(String made, long from) {
        begun.put(made, from);
        String prefix = made + "/";
        for (String step : List.copyOf(steps.tailMap(prefix).keySet())) {
            if (step.startsWith(prefix)) {
                refresh(step);
            }
        }
    }

    private long from(String step) {
        String[] bits = step.split("/", -1);
        return bits.length < 2 ? 0 : begun.getOrDefault(bits[0] + "/" + bits[1], 0L);
    }

    /** What all of it amounts to now. */
    public MadeState state() {
        return new MadeState(steps);
    }

    private void refresh(String step) {
        List<Draw> draws = new ArrayList<>();
        List<Mix> mixes = new ArrayList<>();
        List<Laid> plies = new ArrayList<>();
        for (Happened h : ofStep.getOrDefault(step, new TreeMap<>()).values()) {
            switch (h.kind()) {
                case "lot-drawn" -> draws.add(draw(h));
                case "mix-made" -> mixes.add(mix(h));
                default -> plies.add(laid(h));
            }
        }
        StepMade made = new StepMade(step, from(step), draws, mixes, plies);
        if (made.isEmpty()) {
            steps.remove(step);
        } else {
            steps.put(step, made);
        }
    }

    private static Draw draw(Happened h) {
        Value.Fields f = h.fields();
        return new Draw(
                h.seq(),
                f.text("step"),
                h.at(),
                h.by(),
                h.told(),
                f.text("lot"),
                f.text("component"),
                f.text("amount"),
                f.text("override").equals("yes"),
                f.text("why"));
    }

    private static Mix mix(Happened h) {
        Value.Fields f = h.fields();
        return new Mix(
                h.seq(),
                f.text("step"),
                h.at(),
                h.by(),
                h.told(),
                f.text("batch"),
                f.text("system"),
                f.text("resin-lot"),
                f.text("hardener-lot"),
                f.text("resin"),
                f.text("hardener"),
                f.text("weighed").equals("yes"),
                f.text("why"));
    }

    private static Laid laid(Happened h) {
        Value.Fields f = h.fields();
        return new Laid(
                h.seq(),
                f.text("step"),
                h.at(),
                h.by(),
                h.told(),
                f.text("ply"),
                f.text("name"),
                f.text("lot"),
                f.text("skipped").equals("yes"),
                f.text("why"));
    }
}
