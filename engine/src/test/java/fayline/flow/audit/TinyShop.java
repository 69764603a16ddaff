package fayline.flow.audit;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.SetChoice;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A shop of three people, two moulds, two stands and two ports over one week from Monday 2 March 2026, and a plan for it,
 * both to be bent at will. Ada works 07:00 to 16:00 with a break at noon, Bo 08:00 to 17:00 likewise, Cy on Monday only, 08:00
 * to 12:00. It is Monday 06:00.
 */
final class TinyShop {
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri");

    Instant now = at("mon 06:00");
    int dustSettlesMin = 120;
    final List<Worker> people = new ArrayList<>(List.of(
            worker("ada", Set.of("laminate", "bag"), "07:00", "16:00", DAYS),
            worker("bo", Set.of("laminate"), "08:00", "17:00", DAYS),
            worker("cy", Set.of("sand"), "08:00", "12:00", List.of("mon"))));
    final List<Place> places = new ArrayList<>(List.of(
            new Place("m-1", "Mould 1", Place.Kind.MOULD, "", false, false),
            new Place("m-2", "Mould 2", Place.Kind.MOULD, "", false, false),
            new Place("bench", "Bench", Place.Kind.STAND, "hall", false, true),
            new Place("saw", "Saw stand", Place.Kind.STAND, "hall", true, false),
            new Place("p-1", "Port 1", Place.Kind.PORT, "", false, false),
            new Place("p-2", "Port 2", Place.Kind.PORT, "", false, false)));
    /** Runs at half speed on Monday until 12:00 and at double speed from then on. */
    final List<CureClock> clocks = new ArrayList<>(
            List.of(new CureClock("slow", at("mon 06:00"), 60, List.of(0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 2.0))));

    final List<Work.Awaited> deliveries = new ArrayList<>(List.of(new Work.Awaited("d-1", "resin", at("tue 10:00"))));
    final List<Step> steps = new ArrayList<>();
    final List<Hold> holds = new ArrayList<>();
    final List<WorkWish> wishes = new ArrayList<>();
    final List<Put> puts = new ArrayList<>();
    final List<Plan.Unplanned> unplanned = new ArrayList<>();
    Optional<Instant> finish = Optional.empty();

    /** A moment of the week, as {@code mon 07:30}. */
    static Instant at(String text) {
        int day = DAYS.indexOf(text.substring(0, 3));
        return LocalDate.of(2026, 3, 2)
                .plusDays(day)
                .atTime(LocalTime.parse(text.substring(4)))
                .toInstant(ZoneOffset.UTC);
    }

    static Stretch stretch(String from, String to) {
        return new Stretch(at(from), at(to));
    }

    static Worker worker(String id, Set<String> skills, String from, String to, List<String> days) {
        List<Stretch> present =
                days.stream().map(d -> stretch(d + " " + from, d + " " + to)).toList();
        List<Stretch> breaks = days.stream()
                .map(d -> stretch(d + " 12:00", d + " 12:30"))
                .filter(b -> present.stream().anyMatch(p -> !p.to().isBefore(b.to())))
                .toList();
        boolean morning = to.equals("12:00");
        return new Worker(id, id, skills, present, morning ? List.of() : breaks);
    }

    Step step(String id) {
        Step step = new Step(id);
        steps.add(step);
        return step;
    }

    void hold(String id, Place.Kind kind, List<String> candidates, int count, String... spanned) {
        holds.add(new Hold(id, kind, candidates, count, List.of(spanned)));
    }

    /** Puts a step into the plan in one stretch of its listed minutes, its unattended minutes after it. */
    Put put(String step, String start, String... crew) {
        Step planned = steps.stream().filter(s -> s.id.equals(step)).findFirst().orElseThrow();
        Put put = new Put(step);
        put.start = at(start);
        int minutes = planned.hands.stream()
                .filter(h -> h.people() == crew.length)
                .mapToInt(CrewTime::minutes)
                .findFirst()
                .orElse(0);
        put.handsEnd = put.start.plusSeconds(60L * minutes);
        put.end = put.handsEnd.plusSeconds(Math.round(60 * planned.alone.minutes()));
        put.people = List.of(crew);
        put.stretches = minutes > 0 ? List.of(new Stretch(put.start, put.handsEnd)) : List.of();
        puts.add(put);
        return put;
    }

    Work work() {
        return new Work(
                "1",
                "hash",
                "A",
                now,
                ZoneOffset.UTC,
                at("fri 23:00"),
                dustSettlesMin,
                people,
                places,
                clocks,
                deliveries,
                steps.stream().map(Step::built).toList(),
                holds,
                wishes,
                OppositeHands.NONE,
                SetChoice.NONE);
    }

    Plan plan() {
        Optional<Instant> last = puts.stream().map(p -> p.end).max(Instant::compareTo);
        return new Plan(puts.stream().map(Put::built).toList(), unplanned, finish.or(() -> last));
    }

    List<BrokenRule> audit() {
        return new PlanAuditor().audit(work(), plan());
    }

    /** A step to be. */
    static final class Step {
        final String id;
        List<CrewTime> hands = List.of(new CrewTime(1, 60));
        Map<String, Integer> skills = Map.of();
        String air = "quiet";
        boolean interruptible;
        Span alone = Span.NONE;
        final List<Link> after = new ArrayList<>();
        Optional<Instant> notBefore = Optional.empty();
        List<String> awaits = List.of();
        List<Integer> watch = List.of();
        boolean accompanied;
        WorkStep.State state = WorkStep.State.TODO;
        WorkStep.Actual actual = WorkStep.Actual.NONE;

        Step(String id) {
            this.id = id;
        }

        Step hands(int... peopleAndMinutes) {
            List<CrewTime> times = new ArrayList<>();
            for (int i = 0; i < peopleAndMinutes.length; i += 2) {
                times.add(new CrewTime(peopleAndMinutes[i], peopleAndMinutes[i + 1]));
            }
            hands = times;
            return this;
        }

        Step alone(double minutes) {
            alone = new Span(minutes, "");
            return this;
        }

        Step after(String step) {
            return after(step, "end", 0, Optional.empty(), Optional.empty());
        }

        Step shuts(String step, double opens, double shuts) {
            return after(step, "end", opens, Optional.of(shuts), Optional.empty());
        }

        Step priced(String step, double shuts, int personMinutes) {
            return after(step, "end", 0, Optional.of(shuts), Optional.of(new Miss("Abrade.", personMinutes)));
        }

        Step after(String step, String from, double opens, Optional<Double> shuts, Optional<Miss> miss) {
            after.add(new Link(step, from, new Span(opens, ""), shuts.map(s -> new Span(s, "")), miss));
            return this;
        }

        WorkStep built() {
            return new WorkStep(
                    id,
                    "tiny",
                    "part",
                    id,
                    "other",
                    hands,
                    skills,
                    air,
                    interruptible,
                    alone,
                    after,
                    notBefore,
                    awaits,
                    watch,
                    accompanied,
                    state,
                    actual);
        }
    }

    /** A planned step to be. */
    static final class Put {
        final String step;
        Instant start = Instant.EPOCH;
        Instant handsEnd = Instant.EPOCH;
        Instant end = Instant.EPOCH;
        List<String> people = List.of();
        List<String> places = List.of();
        List<Stretch> stretches = List.of();
        List<String> missed = List.of();

        Put(String step) {
            this.step = step;
        }

        Put in(String... where) {
            places = List.of(where);
            return this;
        }

        /** Moves the whole by so many minutes. */
        void shift(int minutes) {
            long s = 60L * minutes;
            start = start.plusSeconds(s);
            handsEnd = handsEnd.plusSeconds(s);
            end = end.plusSeconds(s);
            stretches = stretches.stream()
                    .map(x -> new Stretch(x.from().plusSeconds(s), x.to().plusSeconds(s)))
                    .toList();
        }

        /** Works in these stretches and then ends at once. */
        void stretches(Stretch... given) {
            stretches = List.of(given);
            start = given[0].from();
            handsEnd = given[given.length - 1].to();
            end = handsEnd;
        }

        PlannedStep built() {
            return new PlannedStep(step, start, handsEnd, end, people, places, stretches, missed);
        }
    }
}
