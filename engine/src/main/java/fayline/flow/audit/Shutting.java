package fayline.flow.audit;

import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import java.time.Instant;
import java.util.Optional;

/**
 * How a start stands to a window that shuts.
 *
 * @param missed whether it starts after the window shut
 * @param sentence the start, the span since the earlier step and the span after which it shuts
 */
record Shutting(boolean missed, String sentence) {
    /** Empty where the window does not shut, or its earlier step or its clock is not known. */
    static Optional<Shutting> of(Audited audited, Job job, Link link) {
        return link.shuts()
                .flatMap(shuts -> audited.moment(link)
                        .flatMap(moment ->
                                audited.time(shuts).map(time -> of(audited, job, link, shuts, moment, time))));
    }

    private static Shutting of(Audited audited, Job job, Link link, Span shuts, Instant moment, EquivalentTime time) {
        Instant start = job.planned().start();
        boolean missed = start.isAfter(moment) && time.exceeded(moment, start, shuts.minutes());
        String sentence = job.id() + " starts at " + audited.tell(start) + ", "
                + ClocksRun.tell(time.between(moment, start), shuts) + " after the " + link.from() + " of "
                + link.step() + ", whose window shuts after " + ClocksRun.tell(shuts.minutes(), shuts);
        return new Shutting(missed, sentence);
    }
}
