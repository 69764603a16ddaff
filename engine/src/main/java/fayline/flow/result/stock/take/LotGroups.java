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
     * @param mingled lots of which some use that names no lot may have drawn: they are one group
     */
    static List<List<Lot>> of(List<Lot> lots, List<Mix> mixes, Set<String> mingled) {
        if (mixes.isEmpty()) {
            return lots.isEmpty() ? List.of() : List.of(lots);
        }
        Map<String, Set<String>> together = new LinkedHashMap<>();
        lots.forEach(l -> together.put(l.id(), new LinkedHashSet<>(Set.of(l.id()))));
        mixes.forEach(m -> join(together, m.resinLot(), m.hardenerLot()));
        mingled.forEach(id -> join(together, mingled.iterator().next(), id));
        List<List<Lot>> groups = new ArrayList<>();
        for (Set<String> ids : new LinkedHashSet<>(together.values())) {
            groups.add(lots.stream().filter(l -> ids.contains(l.id())).toList());
        }
        return groups;
    }

    private static void join(Map<String, Set<String>> together, String one, String other) {
        Set<String> a = together.get(one);
        Set<String> b = together.get(other);
        if (a != null && b != null && a != b) {
            a.addAll(b);
            b.forEach(id -> together.put(id, a));
        }
    }
}
