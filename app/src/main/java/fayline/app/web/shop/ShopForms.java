package fayline.app.web.shop;

import fayline.app.usecase.view.ShopView;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.TimeWords;
import fayline.flow.project.Climate;
import fayline.flow.project.Definition;
import fayline.flow.project.ProjectFacts;
import fayline.flow.project.shop.Person;
import fayline.flow.project.stock.Delivery;
import fayline.flow.project.stock.Lot;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the shop's page shows: what changes weekly, each with its form.
 *
 * @param refused why the last form was refused, a sentence each; empty where none was
 * @param people the crew
 * @param lots opening stock
 * @param stuffs what a lot can be of
 * @param deliveries what is on order
 * @param goals dated goals
 * @param days expected days of the shop's air
 * @param told whether the crew was told a plan today
 * @param moved what moved since then, or else since this morning, a sentence each
 * @param today the shop's day, as {@code 2026-03-03}
 */
public record ShopForms(
        List<String> refused,
        List<Crew> people,
        List<StockLot> lots,
        List<Frame.Choice> stuffs,
        List<Order> deliveries,
        List<Goal> goals,
        List<Day> days,
        boolean told,
        List<String> moved,
        String today) {
    /** Copies the lists. */
    public ShopForms {
        refused = List.copyOf(refused);
        people = List.copyOf(people);
        lots = List.copyOf(lots);
        stuffs = List.copyOf(stuffs);
        deliveries = List.copyOf(deliveries);
        goals = List.copyOf(goals);
        days = List.copyOf(days);
        moved = List.copyOf(moved);
    }

    /**
     * One of the crew.
     *
     * @param id the id
     * @param name the name
     * @param volunteer whether the person may or may not come
     * @param hours usual hours, by their place in the list
     * @param away absences, by their place in the list
     */
    public record Crew(String id, String name, boolean volunteer, List<Hours> hours, List<Away> away) {
        /** Copies the lists. */
        public Crew {
            hours = List.copyOf(hours);
            away = List.copyOf(away);
        }
    }

    /**
     * Working hours.
     *
     * @param place their place in the list
     * @param days the days in words
     * @param from start
     * @param to end
     */
    public record Hours(int place, String days, String from, String to) {}

    /**
     * An absence.
     *
     * @param place its place in the list
     * @param from its first day
     * @param words from when to when, and why
     */
    public record Away(int place, String from, String words) {}

    /**
     * A lot.
     *
     * @param id its number
     * @param of what it is
     * @param quantity how much, as typed
     * @param opened when it was opened; empty where it was not
     * @param expires the date on it; empty where there is none
     */
    public record StockLot(String id, String of, String quantity, String opened, String expires) {}

    /**
     * A delivery.
     *
     * @param id its id
     * @param what what comes
     * @param due the promised day
     * @param latest the day to plan with where a doubt was written down
     * @param arrived the day it came
     */
    public record Order(String id, String what, String due, String latest, String arrived) {}

    /**
     * A dated goal.
     *
     * @param id its id
     * @param name what is reached
     * @param due the day
     */
    public record Goal(String id, String name, String due) {}

    /**
     * An expected day.
     *
     * @param place its place in the list
     * @param date the day
     * @param day air by day, as shown
     * @param night air by night
     * @param humidity humidity
     */
    public record Day(int place, String date, String day, String night, String humidity) {}

    static ShopForms of(ShopView view, TimeWords time, List<String> refused) {
        Definition d = view.definition();
        LocalDate today = time.today();
        List<Day> days = new ArrayList<>();
        for (int i = 0; i < d.climate().forecast().size(); i++) {
            Climate.Day day = d.climate().forecast().get(i);
            if (!day.date().isBefore(today)) {
                days.add(new Day(
                        i,
                        day.date().toString(),
                        trimmed(day.day().celsius()) + " degC",
                        trimmed(day.night().celsius()) + " degC",
                        trimmed(day.humidity().percent()) + " %"));
            }
        }
        days.sort(Comparator.comparing(Day::date));
        return new ShopForms(
                refused,
                d.shop().people().stream().map(p -> crew(p, time)).toList(),
                d.lots().stream().map(l -> lot(d, l)).toList(),
                stuffs(d),
                // What the record says is on order stands in no file: it is kept on Orders.
                d.deliveries().stream()
                        .filter(o -> view.record().stock().order(o.id()).isEmpty())
                        .map(o -> order(d, o))
                        .toList(),
                d.facts().milestones().stream().map(ShopForms::goal).toList(),
                days,
                view.told().isPresent(),
                view.moved().stream().map(m -> m.sentence(view.zone())).toList(),
                today.toString());
    }

    private static List<Frame.Choice> stuffs(Definition d) {
        return Stream.concat(
                        d.systems().stream().map(x -> new Frame.Choice(x.id(), x.name(), false)),
                        d.materials().stream().map(x -> new Frame.Choice(x.id(), x.name(), false)))
                .toList();
    }

    private static Crew crew(Person p, TimeWords time) {
        List<Hours> hours = new ArrayList<>();
        for (int i = 0; i < p.hours().size(); i++) {
            Person.Hours h = p.hours().get(i);
            String days = h.days().stream()
                    .sorted()
                    .map(x -> x.name().charAt(0) + x.name().substring(1, 3).toLowerCase(java.util.Locale.ROOT))
                    .reduce((a, b) -> a + ", " + b)
                    .orElse("");
            hours.add(new Hours(i, days, h.from().toString(), h.to().toString()));
        }
        List<Away> away = new ArrayList<>();
        for (int i = 0; i < p.absences().size(); i++) {
            Person.Absence a = p.absences().get(i);
            if (!a.to().isBefore(time.today())) {
                String span =
                        a.from().equals(a.to()) ? time.day(a.from()) : time.day(a.from()) + " to " + time.day(a.to());
                away.add(new Away(i, a.from().toString(), span + (a.why().isEmpty() ? "" : ", " + a.why())));
            }
        }
        return new Crew(p.id(), p.name(), p.volunteer(), hours, away);
    }

    private static StockLot lot(Definition d, Lot l) {
        return new StockLot(
                l.id(),
                name(d, l.of()) + (l.component().isEmpty() ? "" : ", " + l.component()),
                l.quantity().asTyped(),
                text(l.opened()),
                text(l.expires()));
    }

    private static Order order(Definition d, Delivery o) {
        return new Order(
                o.id(),
                name(d, o.what()) + ", " + o.quantity(),
                o.due().toString(),
                text(o.latest()),
                text(o.arrived()));
    }

    private static Goal goal(ProjectFacts.Milestone m) {
        return new Goal(m.id(), m.name(), m.due().toString());
    }

    private static String name(Definition d, String id) {
        return d.materials()
                .find(id)
                .map(m -> m.name())
                .or(() -> d.systems().find(id).map(s -> s.name()))
                .or(() -> d.parts().find(id).map(p -> p.name()))
                .orElse(id);
    }

    private static String text(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse("");
    }

    private static String trimmed(double value) {
        String s = String.format(java.util.Locale.ROOT, "%.1f", value);
        return s.endsWith(".0") ? s.substring(0, s.length() - 2) : s;
    }
}
