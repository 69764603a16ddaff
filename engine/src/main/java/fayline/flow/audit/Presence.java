package fayline.flow.audit;

import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Moments at which someone is there: half-open stretches, those that touch or overlap made one. */
final class Presence {
    private final List<Stretch> stretches;

    private Presence(List<Stretch> stretches) {
        this.stretches = stretches;
    }

    static Presence of(Collection<Stretch> given) {
        List<Stretch> sorted = given.stream()
                .filter(s -> s.from().isBefore(s.to()))
                .sorted(Comparator.comparing(Stretch::from))
                .toList();
        List<Stretch> merged = new ArrayList<>();
        for (Stretch next : sorted) {
            int last = merged.size() - 1;
            if (last >= 0 && !next.from().isAfter(merged.get(last).to())) {
                Stretch before = merged.get(last);
                Instant to = next.to().isAfter(before.to()) ? next.to() : before.to();
                merged.set(last, new Stretch(before.from(), to));
            } else {
                merged.add(next);
            }
        }
        return new Presence(List.copyOf(merged));
    }

    boolean covers(Stretch wanted) {
        return stretches.stream().anyMatch(s -> !s.from().isAfter(wanted.from()) && !s.to().isBefore(wanted.to()));
    }

    boolean at(Instant moment) {
        return stretches.stream().anyMatch(s -> !s.from().isAfter(moment) && s.to().isAfter(moment));
    }
}
