package fayline.flow.audit;

import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Nobody's hands are at two steps at the same moment. */
final class NobodyIsInTwoPlaces implements PlanRule {
    private record Turn(Job job, Instant from, Instant to) {}

    @Override
    public List<BrokenRule> judge(Audited audited) {
        Map<String, List<Turn>> turns = new LinkedHashMap<>();
        for (Job job : audited.jobs()) {
            for (Stretch stretch : job.stretches()) {
                for (String person : job.crew()) {
                    turns.computeIfAbsent(person, p -> new ArrayList<>())
                            .add(new Turn(job, stretch.from(), stretch.to()));
                }
            }
        }
        List<BrokenRule> found = new ArrayList<>();
        turns.forEach((person, list) -> check(audited, person, list, found));
        return found;
    }

    private void check(Audited audited, String person, List<Turn> turns, List<BrokenRule> found) {
        turns.sort(Comparator.comparing(Turn::from).thenComparing(t -> t.job().id()));
        for (int i = 0; i < turns.size(); i++) {
            Turn one = turns.get(i);
            for (int j = i + 1; j < turns.size() && turns.get(j).from().isBefore(one.to()); j++) {
                Turn other = turns.get(j);
                boolean same = one.job().id().equals(other.job().id());
                if (!same && !(one.job().begun() && other.job().begun())) {
                    found.add(broken(
                            other.job().id(),
                            one.job().id(),
                            person + " is at " + other.job().id() + " from " + audited.tell(other.from())
                                    + " and at " + one.job().id() + " until " + audited.tell(one.to())
                                    + "; expected one at a time"));
                }
            }
        }
    }
}
