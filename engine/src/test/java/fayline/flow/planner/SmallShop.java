package fayline.flow.planner;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A shop small enough to plan by hand: 08:00 to 16:30 on weekdays, break at 12:00 to 12:30, in universal time. */
public final class SmallShop {
    public static final String MONDAY = "2026-03-02T";

    private final Instant now;
    private final List<Worker> people = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final List<CureClock> clocks = new ArrayList<>();
    final List<WorkStep> steps = new ArrayList<>();
    private final List<Hold> holds = new ArrayList<>();
    private int settles;

    public SmallShop(String now) {
        this.now = Instant.parse(now + ":00Z");
    }

    public static Instant at(String dateTime) {
        return Instant.parse(dateTime + ":00Z");
    }

    public SmallShop person(String id, String... skills) {
        List<Stretch> present = new ArrayList<>();
        List<Stretch> breaks = new ArrayList<>();
        LocalDate first = LocalDate.ofInstant(now, ZoneOffset.UTC);
        for (int d = 0; d < 28; d++) {
            LocalDate day = first.plusDays(d);
            if (day.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) < 0) {
                present.add(new Stretch(at(day + "T08:00"), at(day + "T16:30")));
                breaks.add(new Stretch(at(day + "T12:00"), at(day + "T12:30")));
            }
        }
        people.add(new Worker(id, id, Set.of(skills), present, breaks));
        return this;
    }

    public SmallShop mould(String id) {
        places.add(new Place(id, id, Place.Kind.MOULD, "", false, false));
        return this;
    }

    public SmallShop port(String id) {
        places.add(new Place(id, id, Place.Kind.PORT, "", false, false));
        return this;
    }

    public SmallShop stand(String id, String room, boolean dust, boolean wet) {
        places.add(new Place(id, id, Place.Kind.STAND, room, dust, wet));
        return this;
    }

    public SmallShop settles(int minutes) {
        settles = minutes;
        return this;
    }

    /** A clock that runs at one rate from 07:00 to 19:00 and at another else. */
    public SmallShop clock(String id, double day, double night) {
        List<Double> rates = new ArrayList<>();
        Instant from = now.minus(Duration.ofDays(1));
        for (int h = 0; h < 24 * 30; h++) {
            int hour = from.plus(Duration.ofHours(h)).atZone(ZoneOffset.UTC).getHour();
            rates.add(hour >= 7 && hour < 19 ? day : night);
        }
        clocks.add(new CureClock(id, from, 60, rates));
        return this;
    }

    public SmallShop hold(Place.Kind kind, List<String> candidates, String... of) {
        holds.add(new Hold("h" + holds.size(), kind, candidates, 1, List.of(of)));
        return this;
    }

    public SmallShop step(Step step) {
        steps.add(step.make());
        return this;
    }

    public Work work() {
        return new Work(
                "v",
                "d",
                "A",
                now,
                ZoneOffset.UTC,
                now.plus(Duration.ofDays(28)),
                settles,
                people,
                places,
                clocks,
                List.of(),
                steps,
                holds);
    }

    public Plan plan() {
        return new SerialPlanner().plan(work());
    }

    /** A step by what is unusual about it. */
    public static final class Step {
        private final String id;
        private final List<CrewTime> hands = new ArrayList<>();
        private final List<Link> after = new ArrayList<>();
        private Map<String, Integer> skills = Map.of();
        private String air = "quiet";
        private boolean stops;
        private Span alone = Span.NONE;
        private boolean accompanied;
        private State state = State.TODO;
        private Actual actual = Actual.NONE;
        private List<Integer> watch = List.of();

        public Step(String id, int people, int minutes) {
            this.id = id;
            if (people > 0) {
                hands.add(new CrewTime(people, minutes));
            }
        }

        public Step or(int people, int minutes) {
            hands.add(new CrewTime(people, minutes));
            return this;
        }

        public Step after(String earlier) {
            after.add(new Link(earlier, "end", Span.NONE, Optional.empty(), Optional.empty()));
            return this;
        }

        public Step within(int minutes, String from, String earlier) {
            after.add(new Link(earlier, from, Span.NONE, Optional.of(new Span(minutes, "")), Optional.empty()));
            return this;
        }

        public Step window(int opens, int shuts, int price, String earlier) {
            after.add(new Link(
                    earlier,
                    "end",
                    new Span(opens, ""),
                    Optional.of(new Span(shuts, "")),
                    Optional.of(new Miss("Abrade.", price))));
            return this;
        }

        public Step skill(String skill, int n) {
            skills = Map.of(skill, n);
            return this;
        }

        public Step air(String kind) {
            air = kind;
            return this;
        }

        public Step stops() {
            stops = true;
            return this;
        }

        public Step alone(double minutes, String clock) {
            alone = new Span(minutes, clock);
            return this;
        }

        public Step accompanied() {
            accompanied = true;
            return this;
        }

        public Step watch(int minutes) {
            watch = List.of(minutes);
            return this;
        }

        public Step done(String from, String to) {
            state = State.DONE;
            actual = new Actual(
                    Optional.of(at(from)), Optional.of(at(to)), Optional.of(at(to)), List.of("ada"), List.of());
            return this;
        }

        public Step running(String from, String... places) {
            state = State.RUNNING;
            actual = new Actual(
                    Optional.of(at(from)), Optional.empty(), Optional.empty(), List.of("ada"), List.of(places));
            return this;
        }

        public WorkStep make() {
            return new WorkStep(
                    id,
                    "x",
                    "part",
                    id,
                    "other",
                    hands,
                    skills,
                    air,
                    stops,
                    alone,
                    after,
                    Optional.empty(),
                    List.of(),
                    watch,
                    accompanied,
                    state,
                    actual);
        }
    }
}
