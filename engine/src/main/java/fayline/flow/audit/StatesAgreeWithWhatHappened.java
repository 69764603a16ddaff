package fayline.flow.audit;

import fayline.flow.plan.WorkStep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is to do has not happened, what runs has started, what is done has started and ended, none of it after now. */
final class StatesAgreeWithWhatHappened implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (WorkStep step : audited.work().steps()) {
            WorkStep.Actual actual = step.actual();
            boolean agrees = switch (step.state()) {
                case TODO -> actual.started().isEmpty();
                case RUNNING -> actual.started().isPresent();
                case DONE -> actual.started().isPresent() && actual.ended().isPresent();
            };
            if (!agrees) {
                found.add(broken(
                        step.id(),
                        step.id() + " is " + step.state() + ", started " + tell(audited, actual.started())
                                + " and ended " + tell(audited, actual.ended())
                                + "; expected a start for what runs, start and end for what is done"));
            }
            List<Instant> times = Stream.of(actual.started(), actual.handsEnded(), actual.ended())
                    .flatMap(Optional::stream)
                    .toList();
            for (int i = 1; i < times.size(); i++) {
                if (times.get(i).isBefore(times.get(i - 1))) {
                    found.add(broken(
                            step.id(),
                            step.id() + " has happened in the order "
                                    + times.stream().map(audited::tell).toList()
                                    + "; expected start, hands' end, end"));
                }
            }
            if (actual.started().filter(s -> s.isAfter(audited.work().now())).isPresent()) {
                found.add(broken(
                        step.id(),
                        step.id() + " started " + tell(audited, actual.started()) + "; expected no later than now, "
                                + audited.tell(audited.work().now())));
            }
        }
        return found;
    }

    private static String tell(Audited audited, Optional<Instant> moment) {
        return moment.map(audited::tell).orElse("never");
    }
}
