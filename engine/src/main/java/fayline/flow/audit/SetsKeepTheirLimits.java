package fayline.flow.audit;

import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import java.util.ArrayList;
import java.util.List;

/**
 * A set that has not begun is no larger than its group allows, than one pot serves and than each of its places holds, and no
 * smaller than is worth one, but where the pieces between begun sets do not come out in whole sets.
 */
final class SetsKeepTheirLimits implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (PieceGroup group : audited.work().sets().groups()) {
            int run = 0;
            int smallest = Integer.MAX_VALUE;
            int most = most(group);
            for (PieceSet set : group.sets()) {
                List<Job> jobs = jobs(audited, group, set);
                boolean begun = jobs.stream().anyMatch(Job::begun);
                if (begun) {
                    small(group, run, smallest, most, found);
                    run = 0;
                    smallest = Integer.MAX_VALUE;
                    continue;
                }
                run += set.size();
                smallest = Math.min(smallest, set.size());
                large(group, set, jobs, found);
            }
            small(group, run, smallest, most, found);
        }
        return found;
    }

    private static List<Job> jobs(Audited audited, PieceGroup group, PieceSet set) {
        return audited.jobs().stream()
                .filter(j -> j.work().made().equals(set.made())
                        && group.project().equals(j.work().project()))
                .toList();
    }

    /** What a set may have beside its own limit: what any place that it must use, or one pot, allows at most. */
    private static int most(PieceGroup group) {
        int pot = group.limits().stream()
                .filter(l -> l.place().isEmpty())
                .mapToInt(Limit::most)
                .min()
                .orElse(Integer.MAX_VALUE);
        int place = group.limits().stream()
                .filter(l -> !l.place().isEmpty())
                .mapToInt(Limit::most)
                .max()
                .orElse(Integer.MAX_VALUE);
        return Math.max(1, Math.min(group.most(), Math.min(pot, place)));
    }

    private void large(PieceGroup group, PieceSet set, List<Job> jobs, List<BrokenRule> found) {
        if (set.size() > group.most()) {
            found.add(new BrokenRule(name(), List.of(), words(group, set) + "; expected at most " + group.most()));
        }
        for (Limit limit : group.limits()) {
            boolean used = limit.place().isEmpty()
                    || jobs.stream().anyMatch(j -> j.planned().places().contains(limit.place()));
            if (used && set.size() > limit.most()) {
                String what = limit.place().isEmpty() ? "one pot is for " : limit.place() + " holds ";
                found.add(new BrokenRule(name(), List.of(), words(group, set) + ", but " + what + limit.most()));
            }
        }
    }

    /** Pieces in a row between begun sets that could have come out in whole sets, and one is smaller. */
    private void small(PieceGroup group, int run, int smallest, int most, List<BrokenRule> found) {
        int least = Math.min(group.least(), most);
        int sets = (run + most - 1) / most;
        if (run > 0 && smallest < least && sets * least <= run) {
            found.add(new BrokenRule(
                    name(),
                    List.of(),
                    "a set of " + group.id() + " has " + smallest + " pieces of " + run
                            + " in a row; expected at least " + least));
        }
    }

    private static String words(PieceGroup group, PieceSet set) {
        return "the set " + set.from() + " to " + set.to() + " of " + group.id() + " has " + set.size() + " pieces";
    }
}
