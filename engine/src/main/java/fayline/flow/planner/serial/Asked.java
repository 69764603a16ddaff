package fayline.flow.planner.serial;

import fayline.flow.plan.WorkWish;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the lead wishes of one step, by index.
 *
 * @param wishes all that bind it
 * @param with who must be in its crew; a person that the work does not know is {@link Net#UNKNOWN}
 * @param without who must not
 * @param from earliest start
 * @param last latest start
 */
record Asked(List<WorkWish> wishes, List<Integer> with, Set<Integer> without, int from, int last) {
    static final Asked NOTHING = new Asked(List.of(), List.of(), Set.of(), -TimeLine.FOREVER, TimeLine.FOREVER);

    Asked {
        wishes = List.copyOf(wishes);
        with = List.copyOf(with);
        without = Set.copyOf(without);
    }

    static Asked of(List<WorkWish> wishes, TimeLine time, Map<String, Integer> personOf) {
        if (wishes.isEmpty()) {
            return NOTHING;
        }
        List<Integer> with = new ArrayList<>();
        Set<Integer> without = new HashSet<>();
        int from = -TimeLine.FOREVER;
        int last = TimeLine.FOREVER;
        for (WorkWish w : wishes) {
            int person = personOf.getOrDefault(w.on(), Net.UNKNOWN);
            if (w.kind() == WorkWish.Kind.WITH && !with.contains(person)) {
                with.add(person);
            } else if (w.kind() == WorkWish.Kind.WITHOUT) {
                without.add(person);
            } else if (w.kind() == WorkWish.Kind.START) {
                from = Math.max(from, w.from().map(time::ceil).orElse(from));
                last = Math.min(last, w.before().map(b -> time.ceil(b) - 1).orElse(last));
            }
        }
        return new Asked(wishes, with, without, from, last);
    }

    /** Whether it must begin by some moment. */
    boolean isDated() {
        return last < TimeLine.FOREVER;
    }
}
