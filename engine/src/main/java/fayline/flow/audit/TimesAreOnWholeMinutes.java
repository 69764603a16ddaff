package fayline.flow.audit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every time of what has not begun is on a whole minute. */
final class TimesAreOnWholeMinutes implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            Stream<Instant> times = Stream.concat(
                    Stream.of(
                            job.planned().start(),
                            job.planned().handsEnd(),
                            job.planned().end()),
                    job.planned().stretches().stream().flatMap(s -> Stream.of(s.from(), s.to())));
            times.filter(t -> Math.floorMod(t.getEpochSecond(), 60) != 0 || t.getNano() != 0)
                    .findFirst()
                    .ifPresent(t ->
                            found.add(broken(job.id(), job.id() + " has the time " + t + "; expected whole minutes")));
        }
        return found;
    }
}
