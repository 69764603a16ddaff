package fayline.flow.audit;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Someone is in the shop at each moment after the hands leave at which a step must be looked at. */
final class BagsAreWatched implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Job job : audited.todo()) {
            for (int minutes : job.work().watchMin()) {
                Instant look = job.planned().handsEnd().plusSeconds(60L * minutes);
                boolean watched = audited.work().people().stream()
                        .anyMatch(w -> audited.presence(w.id()).at(look));
                if (!watched) {
                    found.add(broken(
                            job.id(),
                            "nobody is in the shop at " + audited.tell(look) + ", " + minutes
                                    + " min after the hands left " + job.id() + "; expected someone to look at it"));
                }
            }
        }
        return found;
    }
}
