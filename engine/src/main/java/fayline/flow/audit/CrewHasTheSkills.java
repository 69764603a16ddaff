package fayline.flow.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/** As many of a step's crew have a skill as the step needs. */
final class CrewHasTheSkills implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            new TreeMap<>(job.work().skills()).forEach((skill, needed) -> {
                long able = job.crew().stream()
                        .flatMap(p -> audited.worker(p).stream())
                        .filter(w -> w.skills().contains(skill))
                        .count();
                if (able < needed) {
                    found.add(broken(
                            job.id(),
                            "of " + job.crew() + " at " + job.id() + ", " + able + " can " + skill
                                    + "; expected at least " + needed));
                }
            });
        }
        return found;
    }
}
