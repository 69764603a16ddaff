package fayline.flow.audit;

import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** A priced window that is missed is listed, nothing else is, and the hands stay as much longer as it costs. */
final class MissedWindowsArePaid implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            unlisted(audited, job, found);
            listed(audited, job, found);
            if (!job.planned().missed().isEmpty()) {
                price(job, found);
            }
        }
        return found;
    }

    private void unlisted(Audited audited, Job job, List<BrokenRule> found) {
        for (Link link : job.work().after()) {
            if (link.miss().isPresent() && !job.planned().missed().contains(link.step())) {
                Miss miss = link.miss().get();
                Shutting.of(audited, job, link)
                        .filter(Shutting::missed)
                        .ifPresent(s -> found.add(broken(
                                job.id(),
                                link.step(),
                                s.sentence() + "; expected it among the missed ones, at " + miss.personMinutes()
                                        + " person-minutes: " + miss.does())));
            }
        }
    }

    private void listed(Audited audited, Job job, List<BrokenRule> found) {
        Set<String> seen = new HashSet<>();
        for (String missed : job.planned().missed()) {
            Optional<Link> priced = job.work().after().stream()
                    .filter(l -> l.step().equals(missed) && l.miss().isPresent())
                    .findFirst();
            if (priced.isEmpty()) {
                found.add(broken(
                        job.id(),
                        missed,
                        job.id() + " lists the window after " + missed + " as missed; expected only windows that have "
                                + "a price"));
            } else if (Shutting.of(audited, job, priced.get())
                    .filter(Shutting::missed)
                    .isEmpty()) {
                found.add(broken(
                        job.id(),
                        missed,
                        job.id() + " lists the window after " + missed + " as missed, but starts inside it at "
                                + audited.tell(job.planned().start()) + "; expected only windows that are missed"));
            } else if (!seen.add(missed)) {
                found.add(broken(
                        job.id(), missed, job.id() + " lists the window after " + missed + " twice; expected once"));
            }
        }
    }

    private void price(Job job, List<BrokenRule> found) {
        int crew = job.crew().size();
        OptionalInt listed = job.listedMinutes(crew);
        if (listed.isEmpty() || crew == 0) {
            return;
        }
        long extra = job.work().after().stream()
                .filter(l -> job.planned().missed().contains(l.step()))
                .flatMap(l -> l.miss().stream())
                .mapToLong(m -> -Math.floorDiv(-m.personMinutes(), crew))
                .sum();
        if (job.handsMinutes() != listed.getAsInt() + extra) {
            found.add(broken(
                    job.id(),
                    job.id() + " misses " + job.planned().missed() + " and keeps " + crew + " people busy for "
                            + Minutes.tell(job.handsMinutes()) + "; expected " + Minutes.tell(listed.getAsInt() + extra)
                            + ", of which " + Minutes.tell(extra) + " pay for it"));
        }
    }
}
