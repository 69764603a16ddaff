package fayline.flow.result.stock.take;

import fayline.flow.project.stock.Lot;
import fayline.flow.record.made.Mix;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which lots of a system went into the same mixes, and can therefore only be judged together. */
final class LotGroups {
    private LotGroups() {}

    /**
     * Groups of lots.
     *
     * @param lots the lots of one system
     * @param mixes its mixes
     * @param nameless whether some use names no lot: then it may have come from any, and all are one group
     */
    static List<List<Lot>> of(List<Lot> lots, List<Mix> mixes, boolean nameless) {
        if (lots.isEmpty()) {
            return List.of();
        }
        if (nameless || mixes.isEmpty()) {
            return List.of(lots);
        }
        Map<String, Set<String>> together = new LinkedHashMap<>();
        lots.forEach(l -> together.put(l.id(), new LinkedHashSet<>(Set.of(l.id()))));
        for (Mix m : mixes) {
            Set<String> a = together.get(m.resinLot());
            Set<String> b = together.get(m.hardenerLot());
            if (a != null && b != null && a != b) {
                a.addAll(b);
                b.forEach(id -> together.put(id, a));
            }
        }
        List<List<Lot>> groups = new ArrayList<>();
        for (Set<String> ids : new LinkedHashSet<>(together.values())) {
            groups.add(lots.stream().filter(l -> ids.contains(l.id())).toList());
        }
        return groups;
    }
}
