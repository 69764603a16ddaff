package fayline.flow.whatif;

import fayline.basis.units.Temperature;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Work;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.project.Climate;
import fayline.flow.project.Definition;
import fayline.flow.project.shop.Person;
import fayline.flow.project.shop.Person.Absence;
import fayline.flow.project.shop.Shop;
import fayline.flow.project.stock.Delivery;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Something that might be otherwise. It makes another definition or other work and leaves the given one as it is. */
public sealed interface Change
        permits Change.Away,
                Change.MoreMoulds,
                Change.ShopAir,
                Change.LateDelivery,
                Change.WorkingDay,
                Change.OneMore,
                StepInParts,
                MoreHands,
                LongerDay,
                WithoutWishes {
    /** The definition with the change in it. */
    default Definition in(Definition definition) {
        return definition;
    }

    /** The work with the change in it, where it is none of the definition. */
    default Work in(Work work) {
        return work;
    }

    /**
     * Somebody is away.
     *
     * @param person who
     * @param from first day
     * @param to last day
     */
    record Away(String person, LocalDate from, LocalDate to) implements Change {
        @Override
        public Definition in(Definition d) {
            return d.withShop(
                    people(d.shop(), p -> p.id().equals(person) ? p.withAbsence(new Absence(from, to, "what if")) : p));
        }
    }

    /**
     * One more of a mould.
     *
     * @param mould which
     */
    record MoreMoulds(String mould) implements Change {
        @Override
        public Work in(Work w) {
            return w.inEach(this::more);
        }

        private Work more(Work w) {
            String twin = mould + "-more";
            Optional<Place> known =
                    w.places().stream().filter(p -> p.id().equals(mould)).findFirst();
            if (known.isEmpty()) {
                return w;
            }
            List<Place> places = new ArrayList<>(w.places());
            Place p = known.get();
            places.add(new Place(twin, p.name() + ", one more", p.kind(), p.room(), p.dust(), p.wet()));
            List<Hold> holds = w.holds().stream()
                    .map(h -> h.candidates().contains(mould) ? with(h, twin) : h)
                    .toList();
            return w.withPlaces(places, holds);
        }

        private static Hold with(Hold h, String twin) {
            List<String> candidates = new ArrayList<>(h.candidates());
            candidates.add(twin);
            return new Hold(h.id(), h.kind(), candidates, h.count(), h.steps());
        }
    }

    /**
     * The shop at one temperature, day and night.
     *
     * @param air the temperature
     * @param from first day
     * @param days how many days
     */
    record ShopAir(Temperature air, LocalDate from, int days) implements Change {
        @Override
        public Definition in(Definition d) {
            Climate c = d.climate();
            List<Climate.Day> forecast = new ArrayList<>();
            for (Climate.Day day : c.forecast()) {
                if (day.date().isBefore(from) || !day.date().isBefore(from.plusDays(days))) {
                    forecast.add(day);
                }
            }
            for (int i = 0; i < days; i++) {
                LocalDate date = from.plusDays(i);
                forecast.add(new Climate.Day(
                        date,
                        air,
                        air,
                        c.forecast().stream()
                                .filter(x -> x.date().equals(date))
                                .map(Climate.Day::humidity)
                                .findFirst()
                                .orElse(c.usual().humidity())));
            }
            return d.withClimate(new Climate(c.readings(), forecast, c.usual()));
        }
    }

    /**
     * A delivery comes later.
     *
     * @param delivery which
     * @param days how many days after the day that is planned with
     */
    record LateDelivery(String delivery, int days) implements Change {
        @Override
        public Definition in(Definition d) {
            return d.withDeliveries(d.deliveries().stream()
                    .map(x -> x.id().equals(delivery) && x.arrived().isEmpty()
                            ? new Delivery(
                                    x.id(),
                                    x.what(),
                                    x.quantity(),
                                    x.due(),
                                    Optional.of(x.planned().plusDays(days)),
                                    x.arrived(),
                                    x.needed())
                            : x)
                    .toList());
        }
    }

    /**
     * One more working day for everybody in the plan who is not in on it anyway, each at the hours of the next day that is usual.
     *
     * @param date the day
     */
    record WorkingDay(LocalDate date) implements Change {
        @Override
        public Work in(Work w) {
            return w.withPeople(
                    w.people().stream().map(p -> moreOf(p, w.zone())).toList());
        }

        private Worker moreOf(Worker p, ZoneId zone) {
            boolean in = p.present().stream().anyMatch(s -> on(s, zone));
            if (in || p.present().isEmpty()) {
                return p;
            }
            Stretch usual = p.present().get(0);
            List<Stretch> breaks = p.breaks().stream()
                    .filter(b -> !b.from().isBefore(usual.from()) && !b.to().isAfter(usual.to()))
                    .map(b -> moved(b, zone))
                    .toList();
            return new Worker(
                    p.id(),
                    p.name(),
                    p.skills(),
                    joined(p.present(), List.of(moved(usual, zone))),
                    joined(p.breaks(), breaks));
        }

        private boolean on(Stretch s, ZoneId zone) {
            return s.from().atZone(zone).toLocalDate().equals(date);
        }

        private Stretch moved(Stretch s, ZoneId zone) {
            return new Stretch(
                    date.atTime(s.from().atZone(zone).toLocalTime())
                            .atZone(zone)
                            .toInstant(),
                    date.atTime(s.to().atZone(zone).toLocalTime()).atZone(zone).toInstant());
        }

        private static List<Stretch> joined(List<Stretch> a, List<Stretch> b) {
            List<Stretch> all = new ArrayList<>(a);
            all.addAll(b);
            all.sort(Comparator.comparing(Stretch::from));
            return all;
        }
    }

    /**
     * One more in the crew, with the skills and hours of somebody.
     *
     * @param like whose
     */
    record OneMore(String like) implements Change {
        @Override
        public Definition in(Definition d) {
            List<Person> people = new ArrayList<>(d.shop().people().items());
            d.shop()
                    .people()
                    .find(like)
                    .ifPresent(p ->
                            people.add(new Person("one-more", "One more", p.skills(), false, p.hours(), List.of())));
            return d.withShop(d.shop().withPeople(people));
        }
    }

    private static Shop people(Shop shop, UnaryOperator<Person> change) {
        return shop.withPeople(shop.people().stream().map(change).toList());
    }
}
