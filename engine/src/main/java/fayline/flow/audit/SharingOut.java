package fayline.flow.audit;

import fayline.flow.plan.Hold;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Shares places out among holds so that each has as many as it takes and no two that share a step have one in common. */
final class SharingOut {
    /** Tries before it is given up as impossible; real work needs a handful. */
    private static final int MOST_TRIES = 100_000;

    private final List<Hold> holds;
    private final Map<Hold, List<String>> candidates;
    private final Map<Hold, List<String>> shared = new LinkedHashMap<>();
    private int tries;

    SharingOut(List<Hold> holds, Map<Hold, List<String>> candidates) {
        this.holds = holds;
        this.candidates = candidates;
    }

    /** The places of each hold; empty where there is no way. */
    Optional<Map<Hold, List<String>>> find() {
        return share(0) ? Optional.of(new LinkedHashMap<>(shared)) : Optional.empty();
    }

    private boolean share(int at) {
        if (at == holds.size()) {
            return true;
        }
        Hold hold = holds.get(at);
        Set<String> free = new LinkedHashSet<>(candidates.getOrDefault(hold, List.of()));
        shared.forEach((other, places) -> {
            if (HoldPlaces.shareAStep(hold, other)) {
                free.removeAll(places);
            }
        });
        return choose(at, List.copyOf(free), 0, new ArrayList<>());
    }

    private boolean choose(int at, List<String> free, int from, List<String> taken) {
        if (++tries > MOST_TRIES) {
            return false;
        }
        Hold hold = holds.get(at);
        if (taken.size() == hold.count()) {
            shared.put(hold, List.copyOf(taken));
            if (share(at + 1)) {
                return true;
            }
            shared.remove(hold);
            return false;
        }
        for (int i = from; i < free.size(); i++) {
            taken.add(free.get(i));
            if (choose(at, free, i + 1, taken)) {
                return true;
            }
            taken.remove(taken.size() - 1);
        }
        return false;
    }
}
