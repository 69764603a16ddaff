package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** A step ends when its unattended time is over on its own clock, counted from when the hands left: not before, not after. */
final class CuresLastTheirTime implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.jobs()) {
            if (job.work().state() == WorkStep.State.DONE
                    || job.work().actual().ended().isPresent()) {
                continue;
            }
            audited.time(job.work().alone()).ifPresent(time -> check(audited, job, time, found));
        }
        return found;
    }

    private void check(Audited audited, Job job, EquivalentTime time, List<BrokenRule> found) {
        Instant handsEnd = job.planned().handsEnd();
        Instant end = job.planned().end();
        double minutes = job.work().alone().minutes();
        boolean reached = !end.isBefore(handsEnd) && time.reached(handsEnd, end, minutes);
        boolean latest =
                job.begun() && !job.handsAtIt() && !end.isAfter(audited.work().now());
        boolean first = end.equals(handsEnd) || !time.reached(handsEnd, end.minusSeconds(60), minutes);
        if (reached && (first || latest)) {
            return;
        }
        found.add(broken(
                job.id(),
                job.id() + " is left alone from " + audited.tell(handsEnd) + " to " + audited.tell(end) + ", "
                        + ClocksRun.tell(time.between(handsEnd, end), job.work().alone()) + "; expected "
                        + ClocksRun.tell(minutes, job.work().alone()) + ", over at "
                        + audited.tell(time.over(handsEnd, minutes))));
    }
}
