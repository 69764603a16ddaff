package fayline.flow.result.trace;

import fayline.flow.record.RecordState;
import fayline.flow.record.TakenReading;
import fayline.flow.record.made.Draw;
import fayline.flow.record.made.Laid;
import fayline.flow.record.made.Mix;
import fayline.flow.record.made.StepMade;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;

/** Follows lots into parts, and parts back to lots. */
public final class LotTrace {
    private static final int BITS_OF_A_STEP = 3;
    private final RecordState record;

    /** Over what the entries amount to. */
    public LotTrace(RecordState record) {
        this.record = record;
    }

    /** Where a lot went: every mix, ply and step that names it, in the order of time. */
    public List<TracedUse> forward(String lot) {
        return uses(record.made().steps().values(), r -> true, lot::equals);
    }

    /**
     * What a part or joint holds: every lot named for it, in the order of time.
     *
     * @param made {@code project/made}
     */
    public List<TracedUse> backward(String made) {
        return uses(
                record.made().steps().subMap(made + "/", made + "0").values(),
                r -> (r.project() + "/" + r.of()).startsWith(made + "/"),
                l -> !l.isEmpty());
    }

    private List<TracedUse> uses(Collection<StepMade> steps, Predicate<TakenReading> which, Predicate<String> lots) {
        List<TracedUse> uses = new ArrayList<>();
        for (StepMade s : steps) {
            for (Mix m : s.mixes()) {
                if (lots.test(m.resinLot())) {
                    uses.add(mix(m, "resin", m.resinLot(), m.resin(), m.hardenerLot()));
                }
                if (lots.test(m.hardenerLot())) {
                    uses.add(mix(m, "hardener", m.hardenerLot(), m.hardener(), m.resinLot()));
                }
            }
            for (Laid p : s.plies()) {
                if (!p.skipped() && lots.test(p.lot())) {
                    uses.add(ply(p));
                }
            }
            for (Draw x : s.draws()) {
                if (lots.test(x.lot())) {
                    uses.add(draw(x));
                }
            }
        }
        for (TakenReading r : record.readings()) {
            String lot = r.values().getOrDefault("lot", "");
            if (lots.test(lot) && which.test(r) && r.of().split("/", -1).length == BITS_OF_A_STEP) {
                uses.add(reading(r));
            }
        }
        uses.sort(Comparator.comparing(TracedUse::at).thenComparingLong(TracedUse::seq));
        return List.copyOf(uses);
    }

    private static TracedUse mix(Mix m, String component, String lot, String amount, String with) {
        return new TracedUse(
                lot, component, m.step(), m.at(), m.by(), m.seq(), TracedUse.Sort.MIX, m.batch(), amount, with);
    }

    private static TracedUse ply(Laid p) {
        String what = p.name().isEmpty() ? p.ply() : p.ply() + ", " + p.name();
        return new TracedUse(p.lot(), "", p.step(), p.at(), p.by(), p.seq(), TracedUse.Sort.PLY, what, "", "");
    }

    private static TracedUse draw(Draw x) {
        return new TracedUse(
                x.lot(), x.component(), x.step(), x.at(), x.by(), x.seq(), TracedUse.Sort.DRAWN, "", x.amount(), "");
    }

    private static TracedUse reading(TakenReading r) {
        return new TracedUse(
                r.values().getOrDefault("lot", ""),
                "",
                r.project() + "/" + r.of(),
                r.at(),
                r.by(),
                r.seq(),
                TracedUse.Sort.READING,
                r.kind(),
                r.values().getOrDefault("value", ""),
                "");
    }
}
