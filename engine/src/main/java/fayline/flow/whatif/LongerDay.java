package fayline.flow.whatif;

import fayline.flow.plan.Work;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * Everybody who is in on a day stays until an hour.
 *
 * @param date the day
 * @param until the hour
 */
public record LongerDay(LocalDate date, LocalTime until) implements Change {
    @Override
    public Work in(Work w) {
        return w.withPeople(w.people().stream().map(p -> staying(p, w.zone())).toList());
    }

    private Worker staying(Worker p, ZoneId zone) {
        Instant end = date.atTime(until).atZone(zone).toInstant();
        int last = -1;
        for (int i = 0; i < p.present().size(); i++) {
            if (p.present().get(i).from().atZone(zone).toLocalDate().equals(date)) {
                last = i;
            }
        }
        if (last < 0 || !p.present().get(last).to().isBefore(end)) {
            return p;
        }
        List<Stretch> present = new ArrayList<>(p.present());
        present.set(last, new Stretch(present.get(last).from(), end));
        return new Worker(p.id(), p.name(), p.skills(), present, p.breaks());
    }
}
