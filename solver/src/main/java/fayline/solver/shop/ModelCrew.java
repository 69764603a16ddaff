package fayline.solver.shop;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntervalVar;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.solver.shop.ShopCase.Item;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;

/**
 * Crews as numbers: never more hands than people who are in and not at a fixed step, in all and of each skill. Work that stops
 * over a night is counted only in the shop's main hours, since its people are away with it.
 */
final class ModelCrew {
    private final ShopCase shop;
    private final CpModel model;
    private final List<Shift> shifts = new ArrayList<>();
    /** For each person, the slots at which a fixed step needs the hands. */
    private final BitSet[] busy;

    /** Hands of a step in one way. */
    private record Shift(Item item, Mode mode, IntervalVar interval) {}

    ModelCrew(ShopCase shop, Standing standing, Range range, CpModel model) {
        this.shop = shop;
        this.model = model;
        busy = busy(shop, standing, range.free());
    }

    static BitSet[] busy(ShopCase shop, Standing standing, boolean[] free) {
        BitSet[] busy = new BitSet[shop.slots.people];
        Map<String, Integer> personOf = new HashMap<>();
        for (int p = 0; p < busy.length; p++) {
            busy[p] = new BitSet();
            personOf.put(shop.work.people().get(p).id(), p);
        }
        List<PlannedStep> fixed = new ArrayList<>(shop.happened.values());
        shop.items.stream().filter(i -> !free[i.index]).forEach(i -> fixed.add(standing.of(i)));
        for (PlannedStep p : fixed) {
            for (Stretch s : p.stretches()) {
                int from = Math.max(0, Slots.down(shop.time.floor(s.from())));
                int to = Slots.up(shop.time.floor(s.to()));
                for (String person : to > from ? p.people() : List.<String>of()) {
                    Integer index = personOf.get(person);
                    if (index != null) {
                        busy[index].set(from, to);
                    }
                }
            }
        }
        return busy;
    }

    void add(StepVars[] vars) {
        for (StepVars v : vars) {
            for (int i = 0; v != null && v.item().hasHands() && i < v.modes().size(); i++) {
                Mode m = v.modes().get(i);
                IntervalVar interval = model.newOptionalFixedSizeIntervalVar(
                        v.start(), m.slots(), v.uses().get(i), v.item().step.id() + " by " + m.crew());
                shifts.add(new Shift(v.item(), m, interval));
            }
        }
        for (int p = 0; p < busy.length; p++) {
            oneAtATime(p);
        }
        Set<String> skills = new TreeSet<>();
        skills.add("");
        shifts.forEach(s -> skills.addAll(s.item.step.skills().keySet()));
        for (String skill : skills) {
            int most =
                    (int) shop.work.people().stream().filter(p -> has(p, skill)).count();
            boolean anyStops = shifts.stream().anyMatch(s -> s.mode.stops() && demand(s, skill) > 0);
            cumulative(skill, most, false, t -> shop.slots.heads(t) > 0 ? away(t, skill) : 0);
            if (anyStops) {
                cumulative(skill, most, true, t -> 2 * shop.slots.heads(t) > shop.slots.people ? away(t, skill) : 0);
            }
        }
    }

    /** What the lead wants one person for is not done at the same time, nor while fixed work has that person's hands. */
    private void oneAtATime(int person) {
        List<IntervalVar> mine = new ArrayList<>();
        shifts.stream()
                .filter(s -> s.item.with.contains(person) && !s.mode.stops())
                .forEach(s -> mine.add(s.interval));
        if (!mine.isEmpty()) {
            for (long[] b : Slots.intervals(busy[person])) {
                mine.add(model.newFixedInterval(b[0], b[1] + 1 - b[0], "busy"));
            }
            model.addNoOverlap(mine);
        }
    }

    private static boolean has(Worker p, String skill) {
        return skill.isEmpty() || p.skills().contains(skill);
    }

    private static int demand(Shift s, String skill) {
        return skill.isEmpty() ? s.mode.crew() : s.item.step.skills().getOrDefault(skill, 0);
    }

    /** How many of a skill are not in, or in but at a fixed step. */
    private int away(int slot, String skill) {
        int n = 0;
        for (int p = 0; p < busy.length; p++) {
            boolean counts = has(shop.work.people().get(p), skill);
            n += counts && (!shop.slots.isPresent(p, slot, 1) || busy[p].get(slot)) ? 1 : 0;
        }
        return n;
    }

    private void cumulative(String skill, int most, boolean withStops, IntUnaryOperator away) {
        CumulativeConstraint crew = model.addCumulative(most);
        int from = Integer.MAX_VALUE;
        int to = 0;
        for (Shift s : shifts) {
            if (demand(s, skill) > 0 && (withStops || !s.mode.stops())) {
                crew.addDemand(s.interval, demand(s, skill));
                from = Math.min(from, s.mode.starts().nextSetBit(0));
                to = Math.max(to, s.mode.starts().length() + s.mode.slots());
            }
        }
        int since = from;
        int level = 0;
        for (int t = from; t <= Math.min(to, shop.slots.last + 1); t++) {
            int now = t < to && t <= shop.slots.last ? Math.min(most, away.applyAsInt(t)) : 0;
            if (now != level) {
                if (level > 0) {
                    crew.addDemand(model.newFixedInterval(since, (long) t - since, "away"), level);
                }
                since = t;
                level = now;
            }
        }
        if (level > 0) {
            crew.addDemand(model.newFixedInterval(since, Math.max(0, (long) to - since), "away"), level);
        }
    }
}
