package fayline.flow.audit;

import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Presence and breaks of a person are stretches in order that do not overlap, and breaks lie in presence. */
final class HoursAreInOrder implements PlanRule {
    @Override
    public List<BrokenRule> judge(Audited audited) {
        List<BrokenRule> found = new ArrayList<>();
        for (Worker worker : audited.work().people()) {
            inOrder(audited, worker, "presence", worker.present(), found);
            inOrder(audited, worker, "breaks", worker.breaks(), found);
            Presence presence = audited.presence(worker.id());
            worker.breaks().stream()
                    .filter(b -> b.from().isBefore(b.to()) && !presence.covers(b))
                    .forEach(b -> found.add(new BrokenRule(
                            name(),
                            List.of(),
                            "the break of " + worker.id() + " at " + audited.tell(b.from())
                                    + " is outside the hours; expected it inside")));
        }
        return found;
    }

    private void inOrder(Audited audited, Worker worker, String what, List<Stretch> stretches, List<BrokenRule> found) {
        Instant before = Instant.MIN;
        for (Stretch stretch : stretches) {
            if (!stretch.from().isBefore(stretch.to()) || stretch.from().isBefore(before)) {
                found.add(new BrokenRule(
                        name(),
                        List.of(),
                        "the " + what + " of " + worker.id() + " from " + audited.tell(stretch.from()) + " to "
                                + audited.tell(stretch.to())
                                + " is empty or begins before the one listed before it ends; expected stretches in"
                                + " order"));
            }
            before = stretch.to();
        }
    }
}
