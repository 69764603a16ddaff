package fayline.solver.shop;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.serial.TimeLine;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the lead wishes, as far as a model can say it: who must and must not be in a crew, between which minutes a step begins, and
 * which places a stay may choose among. Where a stay takes several places, which of them is left to the placing by serial rules.
 */
final class Wished {
    private final Work work;
    private final TimeLine time;
    private final Map<String, Integer> personOf = new HashMap<>();

    Wished(Work work, TimeLine time) {
        this.work = work;
        this.time = time;
        for (int p = 0; p < work.people().size(); p++) {
            personOf.put(work.people().get(p).id(), p);
        }
    }

    private List<WorkWish> of(String step) {
        return work.wishes().stream()
                .filter(w -> w.step().equals(step) && !w.isPast(work.now()))
                .toList();
    }

    /** People by index, of the known ones. */
    Set<Integer> people(WorkStep step, WorkWish.Kind kind) {
        Set<Integer> people = new HashSet<>();
        for (WorkWish w : of(step.id())) {
            Integer person = personOf.get(w.on());
            if (w.kind() == kind && person != null) {
                people.add(person);
            }
        }
        return people;
    }

    int firstMin(WorkStep step) {
        return of(step.id()).stream()
                .flatMap(w -> w.from().stream())
                .mapToInt(time::ceil)
                .max()
                .orElse(-TimeLine.FOREVER);
    }

    int lastMin(WorkStep step) {
        return of(step.id()).stream()
                .flatMap(w -> w.before().stream())
                .mapToInt(b -> time.ceil(b) - 1)
                .min()
                .orElse(TimeLine.FOREVER);
    }

    /** A hold not begun, choosing only among what is wished. */
    Hold among(Hold hold) {
        List<WorkWish> wishes =
                hold.steps().stream().flatMap(s -> of(s).stream()).toList();
        List<String> left = hold.candidates().stream()
                .filter(c -> wishes.stream().noneMatch(w -> w.kind() == WorkWish.Kind.AWAY && w.on().equals(c)))
                .toList();
        List<String> wanted = left.stream()
                .filter(c -> wishes.stream().anyMatch(w -> w.kind() == WorkWish.Kind.AT && w.on().equals(c)))
                .toList();
        List<String> among = wanted.size() == hold.count() ? wanted : left;
        return among.size() < hold.count() ? hold : new Hold(hold.id(), hold.kind(), among, hold.count(), hold.steps());
    }
}
