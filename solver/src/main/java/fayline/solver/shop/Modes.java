package fayline.solver.shop;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.solver.shop.ShopCase.Item;
import fayline.solver.shop.ShopCase.Tie;
import fayline.solver.shop.Slots.Need;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** All ways in which a step can be done: crew sizes, windows missed or kept, and where it stops over nights. */
final class Modes {
    /** With more windows than this, all or none of the rest are missed together. */
    private static final int WINDOWS = 3;
    /** Lengths with their stops, of one crew: the most common ones. */
    private static final int LENGTHS = 8;
    /** Longer than the longest break, shorter than a night: five hours. */
    static final int NIGHT = 60;

    private Modes() {}

    static List<Mode> of(ShopCase shop, Item item) {
        if (!item.hasHands()) {
            return List.of(new Mode(0, 0, Set.of(), watched(shop, item, all(shop, item), 0), false));
        }
        List<Mode> modes = new ArrayList<>();
        for (Set<Tie> missed : missable(item)) {
            Set<String> ids = new HashSet<>();
            missed.forEach(t -> ids.add(t.link().step()));
            for (CrewTime c : item.step.hands()) {
                int minutes = Math.max(1, c.minutes());
                for (Tie t : missed) {
                    int price =
                            t.link().miss().map(WorkStep.Miss::personMinutes).orElse(0);
                    minutes += (price + c.people() - 1) / c.people();
                }
                add(shop, item, c.people(), Slots.up(minutes), ids, modes);
            }
        }
        return List.copyOf(modes);
    }

    private static BitSet all(ShopCase shop, Item item) {
        BitSet all = new BitSet();
        int from = Math.max(shop.slots.first, Slots.up(item.earliestMin));
        int to = Math.min(shop.slots.last, Slots.down(Math.min(item.latestMin, shop.slots.last * Slots.MIN)));
        if (to >= from) {
            all.set(from, to + 1);
        }
        return all;
    }

    private static List<Set<Tie>> missable(Item item) {
        List<Tie> soft = item.ties.stream().filter(t -> t.isSoft(item)).toList();
        List<Set<Tie>> sets = new ArrayList<>();
        int n = Math.min(WINDOWS, soft.size());
        for (int bits = 0; bits < 1 << n; bits++) {
            Set<Tie> set = new HashSet<>();
            for (int i = 0; i < soft.size(); i++) {
                if ((bits >> Math.min(i, n - 1) & 1) == 1) {
                    set.add(soft.get(i));
                }
            }
            sets.add(set);
        }
        return sets;
    }

    private static void add(ShopCase shop, Item item, int crew, int slots, Set<String> missed, List<Mode> modes) {
        if (crew < item.with.size()) {
            return;
        }
        Need need = new Need(crew, item.step.skills());
        if (!item.step.interruptible()) {
            BitSet through = shop.slots.throughStarts(need, slots, item.step.accompanied());
            through.and(all(shop, item));
            for (int p : item.with) {
                through.stream()
                        .filter(t -> !shop.slots.isPresent(p, t, slots))
                        .boxed()
                        .toList()
                        .forEach(through::clear);
            }
            BitSet starts = watched(shop, item, through, slots);
            if (!starts.isEmpty()) {
                modes.add(new Mode(crew, slots, missed, starts, false));
            }
            return;
        }
        int[] elapsed = shop.slots.elapsed(need, slots);
        BitSet all = all(shop, item);
        Map<Integer, BitSet> byLength = new TreeMap<>();
        for (int t = all.nextSetBit(0); t >= 0; t = all.nextSetBit(t + 1)) {
            int at = t;
            if (elapsed[t] > 0 && item.with.stream().allMatch(p -> shop.slots.isWorking(p, at))) {
                byLength.computeIfAbsent(elapsed[t], e -> new BitSet()).set(t);
            }
        }
        byLength.entrySet().stream()
                .sorted(Comparator.<Map.Entry<Integer, BitSet>>comparingInt(
                                e -> -e.getValue().cardinality())
                        .thenComparingInt(Map.Entry::getKey))
                .limit(LENGTHS)
                .map(e -> new Mode(
                        crew,
                        e.getKey(),
                        missed,
                        watched(shop, item, e.getValue(), e.getKey()),
                        e.getKey() - slots >= NIGHT))
                .filter(m -> !m.starts().isEmpty())
                .forEach(modes::add);
    }

    /** Only starts after which somebody is there whenever someone must look. */
    private static BitSet watched(ShopCase shop, Item item, BitSet starts, int slots) {
        if (item.step.watchMin().isEmpty()) {
            return starts;
        }
        BitSet left = (BitSet) starts.clone();
        for (int watch : item.step.watchMin()) {
            for (int t = starts.nextSetBit(0); t >= 0; t = starts.nextSetBit(t + 1)) {
                int at = t + slots + Slots.down(watch);
                // Beyond the last slot nobody knows; the plan made of it is judged to the minute.
                if (at <= shop.slots.last && shop.slots.heads(at) == 0) {
                    left.clear(t);
                }
            }
        }
        return left;
    }
}
