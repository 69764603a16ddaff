package fayline.flow.result.shop;

import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Skill;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** When people are in the shop, from their usual hours less the days they are away. */
final class Presence {
    private final ZoneId zone;
    private final LocalDate from;
    private final LocalDate to;

    /**
     * Presence over a span of days.
     *
     * @param zone the shop's zone
     * @param now hours count from the start of this day
     * @param horizon the last day, included
     */
    Presence(ZoneId zone, Instant now, Instant horizon) {
        this.zone = zone;
        this.from = now.atZone(zone).toLocalDate();
        this.to = horizon.atZone(zone).toLocalDate();
    }

    Worker worker(Person person) {
        List<Stretch> present = new ArrayList<>();
        List<Stretch> breaks = new ArrayList<>();
        for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
            if (away(person, day)) {
                continue;
            }
            for (Person.Hours h : person.hours()) {
                if (h.days().contains(day.getDayOfWeek()) && h.to().isAfter(h.from())) {
                    present.add(stretch(day, h.from(), h.to()));
                    if (h.pause().isPresent()) {
                        breaks.add(stretch(
                                day, h.pause().get().from(), h.pause().get().to()));
                    }
                }
            }
        }
        TreeSet<String> skills = new TreeSet<>();
        person.skills().stream().map(Skill::key).forEach(skills::add);
        return new Worker(person.id(), person.name(), skills, joined(present), joined(breaks));
    }

    private static boolean away(Person person, LocalDate day) {
        return person.absences().stream().anyMatch(a -> !day.isBefore(a.from()) && !day.isAfter(a.to()));
    }

    private Stretch stretch(LocalDate day, LocalTime start, LocalTime end) {
        return new Stretch(
                day.atTime(start).atZone(zone).toInstant(),
                day.atTime(end).atZone(zone).toInstant());
    }

    /** In order, those that overlap or touch made into one. */
    private static List<Stretch> joined(List<Stretch> stretches) {
        List<Stretch> sorted = new ArrayList<>(stretches);
        sorted.sort(Comparator.comparing(Stretch::from).thenComparing(Stretch::to));
        List<Stretch> out = new ArrayList<>();
        for (Stretch s : sorted) {
            if (!s.from().isBefore(s.to())) {
                continue;
            }
            Stretch last = out.isEmpty() ? null : out.get(out.size() - 1);
            if (last != null && !s.from().isAfter(last.to())) {
                Instant to = s.to().isAfter(last.to()) ? s.to() : last.to();
                out.set(out.size() - 1, new Stretch(last.from(), to));
            } else {
                out.add(s);
            }
        }
        return out;
    }
}
