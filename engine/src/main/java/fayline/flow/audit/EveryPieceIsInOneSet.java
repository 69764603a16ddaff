package fayline.flow.audit;

import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.PieceSet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Each piece of a group is made in exactly one set of the plan, whichever sets the plan has. */
final class EveryPieceIsInOneSet implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        Set<String> made = new HashSet<>();
        audited.plan().steps().forEach(p -> made.add(made(p.step())));
        audited.plan().unplanned().forEach(u -> made.add(made(u.step())));
        List<BrokenRule> found = new ArrayList<>();
        Map<String, Set<PieceSet>> known = new LinkedHashMap<>();
        audited.work()
                .divisions()
                .forEach(w -> w.sets()
                        .groups()
                        .forEach(g -> known.computeIfAbsent(g.id(), id -> new LinkedHashSet<>())
                                .addAll(g.sets())));
        for (PieceGroup group : audited.work().sets().groups()) {
            int[] times = new int[Math.max(0, group.pieces())];
            known.getOrDefault(group.id(), Set.of()).stream()
                    .filter(s -> made.contains(group.project() + "/" + s.made()))
                    .forEach(s -> count(s, times));
            for (int i = 0; i < times.length; i++) {
                if (times[i] != 1) {
                    found.add(new BrokenRule(
                            name(),
                            List.of(),
                            "piece " + (i + 1) + " of " + group.id() + " is in " + times[i] + " sets; expected one"));
                }
            }
        }
        return found;
    }

    private static void count(PieceSet set, int[] times) {
        for (int i = Math.max(1, set.from()); i <= Math.min(set.to(), times.length); i++) {
            times[i - 1]++;
        }
    }

    /** Project and what is made, of a step's id. */
    private static String made(String step) {
        String[] bits = step.split("/", -1);
        return bits.length < 2 ? step : bits[0] + "/" + bits[1];
    }
}
