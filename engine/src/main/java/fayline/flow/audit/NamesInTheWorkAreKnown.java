package fayline.flow.audit;

import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Links, spans, holds, deliveries and wishes of the work lead to what it holds. */
final class NamesInTheWorkAreKnown implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (WorkStep step : audited.work().steps()) {
            for (Link link : step.after()) {
                if (audited.step(link.step()).isEmpty()) {
                    found.add(broken(
                            step.id(), step.id() + " waits for " + link.step() + "; expected a step of the work"));
                }
            }
            Stream.concat(
                            Stream.of(step.alone()),
                            step.after().stream().flatMap(l -> Stream.concat(Stream.of(l.opens()), l.shuts().stream())))
                    .map(Span::clock)
                    .filter(c -> !c.isEmpty() && audited.clock(c).isEmpty())
                    .distinct()
                    .forEach(c -> found.add(broken(
                            step.id(), step.id() + " counts on the clock " + c + "; expected a clock of the work")));
            step.awaits().stream()
                    .filter(d -> audited.delivery(d).isEmpty())
                    .forEach(d -> found.add(
                            broken(step.id(), step.id() + " awaits " + d + "; expected a delivery of the work")));
        }
        for (Hold hold : audited.work().holds()) {
            for (String step : hold.steps()) {
                if (audited.step(step).isEmpty()) {
                    found.add(
                            broken(step, "the hold " + hold.id() + " spans " + step + "; expected a step of the work"));
                }
            }
        }
        audited.work().wishes().stream()
                .filter(w -> audited.step(w.step()).isEmpty())
                .forEach(w -> found.add(broken(
                        w.step(), "the wish " + w.id() + " is for " + w.step() + "; expected a step of the work")));
        for (Follow same : audited.work().hands().follows()) {
            boolean waits = audited.step(same.step()).stream()
                    .flatMap(s -> s.after().stream())
                    .anyMatch(l -> l.step().equals(same.first()));
            if (!waits) {
                found.add(broken(
                        same.step(),
                        same.step() + " is to follow " + same.first() + "; expected it to wait for that step"));
            }
        }
        return found;
    }
}
