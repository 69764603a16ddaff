package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What a step of the work needs can be asked of a shop: crews in order, times not negative, wet work in one go. */
final class StepsMakeSense implements PlanRule {
    private static final Set<String> AIRS = Set.of("wet", "dust", "quiet");
    private static final Set<String> MOMENTS = Set.of("start", "hands-end", "end");

    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (WorkStep step : audited.work().steps()) {
            crews(step, found);
            air(step, found);
            links(step, found);
            Stream<Span> spans = Stream.concat(
                    Stream.of(step.alone()),
                    step.after().stream().flatMap(l -> Stream.concat(Stream.of(l.opens()), l.shuts().stream())));
            if (spans.anyMatch(s -> !(s.minutes() >= 0) || Double.isInfinite(s.minutes()))
                    || step.watchMin().stream().anyMatch(m -> m < 0)) {
                found.add(broken(step.id(), step.id() + " has a span that is no number from 0 up; expected one"));
            }
        }
        return found;
    }

    private void crews(WorkStep step, List<BrokenRule> found) {
        int before = 0;
        for (CrewTime time : step.hands()) {
            if (time.people() <= before || time.minutes() < 1) {
                found.add(broken(
                        step.id(),
                        step.id() + " lists " + time.minutes() + " min for a crew of " + time.people()
                                + " after one of " + before
                                + "; expected at least 1 min, and crews of at least 1 with the least first"));
            }
            before = time.people();
        }
        step.skills().values().stream()
                .filter(n -> n > 0
                        && n
                                > step.hands().stream()
                                        .mapToInt(CrewTime::people)
                                        .max()
                                        .orElse(0))
                .findFirst()
                .ifPresent(n -> found.add(broken(
                        step.id(),
                        step.id() + " needs a skill of " + n
                                + " people; expected no more than the largest crew it lists")));
    }

    private void air(WorkStep step, List<BrokenRule> found) {
        if (!AIRS.contains(step.air())) {
            found.add(broken(step.id(), step.id() + " has the air '" + step.air() + "'; expected wet, dust or quiet"));
        }
        if (step.air().equals("wet") && step.interruptible()) {
            found.add(broken(step.id(), step.id() + " is wet and may be interrupted; expected wet work in one go"));
        }
    }

    private void links(WorkStep step, List<BrokenRule> found) {
        Set<String> priced = new HashSet<>();
        for (Link link : step.after()) {
            if (!MOMENTS.contains(link.from())) {
                found.add(broken(
                        step.id(),
                        link.step(),
                        step.id() + " waits for the '" + link.from() + "' of " + link.step()
                                + "; expected start, hands-end or end"));
            }
            if (link.miss().isEmpty()) {
                continue;
            }
            if (step.hands().isEmpty() || link.miss().get().personMinutes() < 0) {
                found.add(broken(
                        step.id(),
                        link.step(),
                        step.id() + " would pay " + link.miss().get().personMinutes()
                                + " person-minutes for a missed window; expected 0 or more, and hands to pay them"));
            }
            if (!priced.add(link.step())) {
                found.add(broken(
                        step.id(),
                        link.step(),
                        step.id() + " has two priced windows after " + link.step() + "; expected one at most"));
            }
        }
    }
}
