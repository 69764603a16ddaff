package fayline.flow.result.rate;

import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Shop;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Who was at what for how long, from starts and finishes. A step begun and finished on one day counts from start to finish; one
 * that goes over nights counts within each person's usual hours without the breaks. While somebody is at several steps, each
 * gets an equal share of the time. Common practice, no source.
 *
 * @param minutes person-minutes of each finished step, by its local id; steps without people or time are left out
 * @param months hours worked in each month that saw work, unfinished steps included up to now
 */
public record BookedHours(Map<String, Double> minutes, SortedMap<YearMonth, Double> months) {
    /** Copies the map. */
    public BookedHours {
        minutes = Map.copyOf(minutes);
        months = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(months));
    }

    private record Stint(String step, Instant from, Instant to) {}

    /**
     * Some time of one person at one step.
     *
     * @param person who
     * @param step the step by its local id
     * @param day the day on which it began, in the shop's zone
     * @param minutes how long
     */
    public record Worked(String person, String step, LocalDate day, double minutes) {}

    /**
     * Books.
     *
     * @param shop people, hours and zone
     * @param state what has happened
     */
    public static BookedHours of(Shop shop, ShopState state) {
        Map<String, Double> minutes = new HashMap<>();
        SortedMap<YearMonth, Double> months = new TreeMap<>();
        for (Worked w : worked(shop, state)) {
            minutes.merge(w.step(), w.minutes(), Double::sum);
            months.merge(YearMonth.from(w.day()), w.minutes() / 60, Double::sum);
        }
        state.steps().forEach((step, facts) -> {
            if (facts.minutes() > 0) {
                minutes.put(step, (double) facts.minutes());
            } else if (facts.handsEnded().isEmpty()) {
                minutes.remove(step);
            }
        });
        return new BookedHours(minutes, months);
    }

    /**
     * The time of each person at each step, unfinished steps up to now, one person after the other in the order of their ids and
     * each in the order of time.
     *
     * @param shop people, hours and zone
     * @param state what has happened
     */
    public static List<Worked> worked(Shop shop, ShopState state) {
        Map<String, List<Stint>> byPerson = new TreeMap<>();
        for (Map.Entry<String, StepFacts> e : new TreeMap<>(state.steps()).entrySet()) {
            for (String person : new TreeSet<>(e.getValue().people())) {
                byPerson.computeIfAbsent(person, p -> new ArrayList<>())
                        .addAll(stints(shop, state.now(), person, e.getKey(), e.getValue()));
            }
        }
        List<Worked> all = new ArrayList<>();
        byPerson.forEach((person, stints) -> share(person, stints, shop.zone(), all));
        return all;
    }

    private static List<Stint> stints(Shop shop, Instant now, String person, String step, StepFacts facts) {
        Instant from = facts.started();
        Instant to = facts.handsEnded().orElse(now);
        ZoneId zone = shop.zone();
        LocalDate first = from.atZone(zone).toLocalDate();
        LocalDate last = to.atZone(zone).toLocalDate();
        Optional<Person> known = shop.people().find(person);
        if (first.equals(last) || known.isEmpty()) {
            return from.isBefore(to) && first.equals(last) ? List.of(new Stint(step, from, to)) : List.of();
        }
        List<Stint> stints = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            for (Person.Hours h : known.get().hours()) {
                if (h.days().contains(day.getDayOfWeek())) {
                    Instant in = day.atTime(h.from()).atZone(zone).toInstant();
                    Instant out = day.atTime(h.to()).atZone(zone).toInstant();
                    Instant pause = h.pause()
                            .map(p -> p.from())
                            .map(day::atTime)
                            .map(t -> t.atZone(zone).toInstant())
                            .orElse(out);
                    Instant again = h.pause()
                            .map(p -> p.to())
                            .map(day::atTime)
                            .map(t -> t.atZone(zone).toInstant())
                            .orElse(out);
                    add(stints, step, later(from, in), earlier(to, pause));
                    add(stints, step, later(from, again), earlier(to, out));
                }
            }
        }
        return stints;
    }

    private static void add(List<Stint> stints, String step, Instant from, Instant to) {
        if (from.isBefore(to)) {
            stints.add(new Stint(step, from, to));
        }
    }

    private static Instant later(Instant a, Instant b) {
        return a.isAfter(b) ? a : b;
    }

    private static Instant earlier(Instant a, Instant b) {
        return a.isBefore(b) ? a : b;
    }

    /** Shares one person's time among the steps open at each moment. */
    private static void share(String person, List<Stint> stints, ZoneId zone, List<Worked> all) {
        TreeSet<Instant> moments = new TreeSet<>();
        stints.forEach(s -> {
            moments.add(s.from());
            moments.add(s.to());
        });
        Instant before = null;
        for (Instant t : moments) {
            if (before != null) {
                Instant from = before;
                List<Stint> open = stints.stream()
                        .filter(s -> !s.from().isAfter(from) && !s.to().isBefore(t))
                        .toList();
                double length = Duration.between(from, t).toSeconds() / 60.0;
                LocalDate day = from.atZone(zone).toLocalDate();
                for (Stint s : open) {
                    all.add(new Worked(person, s.step(), day, length / open.size()));
                }
            }
            before = t;
        }
    }
}
