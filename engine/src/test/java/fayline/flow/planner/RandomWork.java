package fayline.flow.planner;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Invented shops with invented work, from a seed: people with absences, moulds, stands in rooms, ports, clocks with day and
 * night rates, staged skins, bonds with windows that open and shut, dust and wet, deliveries, and steps done and running.
 */
public final class RandomWork {
    public static final Instant NOW = Instant.parse("2026-03-02T07:10:00Z");
    private static final ZoneId ZONE = ZoneOffset.UTC;

    private final Random random;
    private final List<Worker> people = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final List<WorkStep> steps = new ArrayList<>();
    private final List<Hold> holds = new ArrayList<>();
    private final List<Work.Awaited> deliveries = new ArrayList<>();
    private final Map<String, String> lastOf = new HashMap<>();
    private final int days;

    private RandomWork(long seed, int days) {
        random = new Random(seed);
        this.days = days;
    }

    /** A shop of one to six people with so many parts, planned over so many days. */
    public static Work of(long seed, int parts, int days) {
        return new RandomWork(seed, days).make(parts);
    }

    private Work make(int parts) {
        int crew = 3 + random.nextInt(4);
        for (int i = 0; i < crew; i++) {
            people.add(person(i));
        }
        int moulds = 2 + random.nextInt(4);
        for (int i = 0; i < moulds; i++) {
            places.add(new Place("mould-" + i, "Mould " + i, Place.Kind.MOULD, "", false, false));
        }
        places.add(new Place("bay", "Bay", Place.Kind.STAND, "hall", false, true));
        places.add(new Place("bench", "Bench", Place.Kind.STAND, "hall", true, true));
        places.add(new Place("table", "Table", Place.Kind.STAND, "hall", true, true));
        places.add(new Place("booth", "Dust booth", Place.Kind.STAND, "booth", true, false));
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            places.add(new Place("port-" + i, "Port " + i, Place.Kind.PORT, "", false, false));
        }
        deliveries.add(new Work.Awaited("core", "Core", NOW.plus(Duration.ofDays(random.nextInt(9)))));
        for (int i = 0; i < parts; i++) {
            skin(i, "mould-" + random.nextInt(moulds));
        }
        for (int i = 0; i + 1 < parts; i += 2) {
            bond(i, i + 1);
        }
        return new Work(
                "test",
                "hash",
                "A",
                NOW,
                ZONE,
                NOW.plus(Duration.ofDays(days)),
                random.nextInt(3) * 60,
                people,
                places,
                clocks(),
                deliveries,
                steps,
                holds);
    }

    private Worker person(int i) {
        Set<String> skills = new HashSet<>();
        for (String skill : List.of("laminate", "bag", "sand", "bond")) {
            if (i < 2 || random.nextInt(3) > 0) {
                skills.add(skill);
            }
        }
        if (i == 0) {
            skills.add("sign");
        }
        List<Stretch> present = new ArrayList<>();
        List<Stretch> breaks = new ArrayList<>();
        LocalTime from = LocalTime.of(7 + random.nextInt(2), random.nextInt(5) == 0 ? 33 : random.nextInt(2) * 30);
        LocalTime to = from.plusHours(8 + random.nextInt(2)).plusMinutes(30);
        int away = random.nextInt(days);
        // Who is at a running step comes back within the days that are planned.
        int awayDays = random.nextInt(i == 0 ? 3 : 8);
        boolean weekends = i > 2 && random.nextInt(5) == 0;
        for (int d = 0; d < days; d++) {
            LocalDate day = LocalDate.ofInstant(NOW, ZONE).plusDays(d);
            boolean free = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
            if (free == weekends && (d < away || d >= away + awayDays)) {
                present.add(stretch(day, from, to));
                breaks.add(stretch(day, LocalTime.of(12, 0), LocalTime.of(12, 30 + random.nextInt(2) * 15)));
            }
        }
        return new Worker("p" + i, "Person " + i, skills, present, breaks);
    }

    private static Stretch stretch(LocalDate day, LocalTime from, LocalTime to) {
        return new Stretch(
                day.atTime(from).atZone(ZONE).toInstant(),
                day.atTime(to).atZone(ZONE).toInstant());
    }

    private List<CureClock> clocks() {
        List<CureClock> clocks = new ArrayList<>();
        for (String id : List.of("slow", "fast")) {
            List<Double> rates = new ArrayList<>();
            double day = 0.6 + random.nextDouble();
            double night = day * (0.4 + 0.5 * random.nextDouble());
            for (int h = 0; h < days * 24; h++) {
                int hour = (h + 7) % 24;
                rates.add(hour >= 7 && hour < 19 ? day : night);
            }
            clocks.add(new CureClock(id, NOW, 60, rates));
        }
        return clocks;
    }

    private void skin(int part, String mould) {
        String made = "skin-" + part;
        int stages = 1 + random.nextInt(2);
        boolean two = places.stream().anyMatch(p -> p.id().equals("port-1")) && random.nextInt(4) == 0;
        int ports = two ? 2 : 1;
        List<String> whole = new ArrayList<>();
        whole.add(add(step(made, "release", 1, 30 + random.nextInt(60), "quiet")
                .alone(new Span(60, ""))
                .awaiting(random.nextInt(4) == 0 ? "core" : "")));
        for (int s = 1; s <= stages; s++) {
            Optional<Span> recoat =
                    Optional.of(s == 1 ? new Span(3 * 1440, "") : new Span(900 + random.nextInt(900), "slow"));
            Miss miss = new Miss("Abrade, clean and dry.", 45 + random.nextInt(120));
            whole.add(add(step(made, "lay-up-" + s, 2, 90 + random.nextInt(150), "wet")
                    .skill("laminate", 1)
                    .link(
                            whole.get(whole.size() - 1),
                            "end",
                            s == 1 ? Span.NONE : new Span(60, "slow"),
                            recoat,
                            miss)));
            String layUp = whole.get(whole.size() - 1);
            boolean fromStart = random.nextInt(4) == 0;
            double least = fromStart ? 240 : 120;
            Span life = random.nextBoolean()
                    ? new Span((least + random.nextInt(120)) * (fromStart ? 2 : 1), "slow")
                    : new Span(least + 30, "");
            whole.add(add(step(made, "bag-" + s, 2, 45 + random.nextInt(45), "quiet")
                    .skill("bag", 1)
                    .watch(15, 60)
                    .link(layUp, fromStart ? "start" : "hands-end", Span.NONE, Optional.of(life), null)));
            String bag = whole.get(whole.size() - 1);
            whole.add(add(step(made, "cure-" + s, 0, 0, "quiet").alone(new Span(500 + random.nextInt(500), "slow"))));
            holds.add(new Hold(
                    "h-port-" + made + s,
                    Place.Kind.PORT,
                    places.stream()
                            .filter(p -> p.kind() == Place.Kind.PORT)
                            .map(Place::id)
                            .toList(),
                    ports,
                    List.of(bag, whole.get(whole.size() - 1))));
        }
        whole.add(add(step(made, "demould", 1, 30 + random.nextInt(60), "quiet").accompanied()));
        holds.add(new Hold("h-mould-" + made, Place.Kind.MOULD, List.of(mould), 1, whole));
        holds.add(new Hold("h-stand-" + made, Place.Kind.STAND, List.of("bay", "bench", "table"), 1, whole));
        String trim = add(step(made, "trim", 1, 60 + random.nextInt(400), "dust")
                .skill("sand", 1)
                .stops());
        holds.add(new Hold("h-trim-" + made, Place.Kind.STAND, List.of("bench", "table", "booth"), 1, List.of(trim)));
        lastOf.put(made, trim);
        happen(whole, trim, mould, two);
    }

    /** Lets some parts have been begun before now: the first steps are done, one may be running. */
    private void happen(List<String> whole, String trim, String mould, boolean two) {
        boolean taken = steps.stream().anyMatch(s -> s.actual().places().contains(mould));
        boolean bayTaken = steps.stream().anyMatch(s -> s.actual().places().contains("bay"));
        if (taken || bayTaken || random.nextInt(3) > 0) {
            return;
        }
        List<String> all = two ? List.of(mould, "bay", "port-0", "port-1") : List.of(mould, "bay", "port-0");
        int how = random.nextInt(3);
        if (how == 0) {
            for (int i = 0; i < whole.size(); i++) {
                done(whole.get(i), NOW.minus(Duration.ofHours(5L * (whole.size() - i))), all, null);
            }
            replace(trim, s -> running(s, NOW.minus(Duration.ofMinutes(25)), "p0", "bench"));
        } else if (how == 1) {
            Instant at = NOW.minus(Duration.ofHours(24));
            for (int i = 0; i < 3; i++) {
                List<String> where = i == 2 ? all : List.of(mould, "bay");
                done(
                        whole.get(i),
                        at.plus(Duration.ofHours(3L * i)),
                        where,
                        i == 2 ? at.plus(Duration.ofHours(7)) : null);
            }
            replace(
                    whole.get(3),
                    s -> s.as(
                            State.RUNNING,
                            new Actual(
                                    Optional.of(at.plus(Duration.ofHours(7))),
                                    Optional.of(at.plus(Duration.ofHours(7))),
                                    Optional.empty(),
                                    List.of(),
                                    all)));
        } else {
            replace(whole.get(0), s -> running(s, NOW.minus(Duration.ofMinutes(10)), "p0", mould, "bay"));
        }
    }

    private static StepDraft running(StepDraft draft, Instant since, String who, String... where) {
        return draft.as(
                State.RUNNING,
                new Actual(Optional.of(since), Optional.empty(), Optional.empty(), List.of(who), List.of(where)));
    }

    private void done(String id, Instant at, List<String> where, @Nullable Instant end) {
        Instant ended = end != null ? end : at.plus(Duration.ofHours(2));
        replace(
                id,
                s -> s.as(
                        State.DONE,
                        new Actual(
                                Optional.of(at), Optional.of(ended), Optional.of(ended), List.of("p0", "p1"), where)));
    }

    private void replace(String id, UnaryOperator<StepDraft> change) {
        steps.replaceAll(s -> s.id().equals(id) ? change.apply(StepDraft.of(s)).step() : s);
    }

    private void bond(int a, int b) {
        String made = "joint-" + a;
        List<String> prepared = new ArrayList<>();
        for (int part : List.of(a, b)) {
            String prepare = add(step(made, "prepare-" + part, 1, 40 + random.nextInt(60), "quiet")
                    .only(lastOf.getOrDefault("skin-" + part, ""))
                    .skill("bond", 1));
            prepared.add(prepare);
        }
        Miss again = new Miss("Prepare again.", 60);
        StepDraft bond = step(made, "bond", 2, 45 + random.nextInt(60), "wet")
                .skill("bond", 1)
                .only("");
        for (String p : prepared) {
            bond.link(p, "hands-end", Span.NONE, Optional.of(new Span(8 * 60, "")), again);
        }
        String bonded = add(bond.alone(new Span(600, "fast")));
        String inspect = add(step(made, "inspect", 1, 30, "quiet").skill("sign", 1));
        List<String> held = new ArrayList<>(prepared);
        held.add(bonded);
        held.add(inspect);
        holds.add(new Hold("h-" + made, Place.Kind.STAND, List.of("bench", "table"), 1, held));
    }

    private String last = "";

    private StepDraft step(String made, String key, int people, int minutes, String air) {
        List<CrewTime> hands = new ArrayList<>();
        if (people > 0) {
            hands.add(new CrewTime(people, round(minutes)));
            hands.add(new CrewTime(people + 1, round(minutes * 0.75)));
        }
        WorkStep s = new WorkStep(
                "x/" + made + "/1/" + key,
                "x",
                made,
                key,
                key,
                hands,
                Map.of(),
                air,
                false,
                Span.NONE,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                false,
                State.TODO,
                Actual.NONE);
        StepDraft draft = StepDraft.of(s);
        return key.equals("release") ? draft : draft.only(last);
    }

    private static int round(double minutes) {
        return (int) Math.ceil(minutes / 5) * 5 - (minutes > 130 ? 3 : 0);
    }

    private String add(StepDraft draft) {
        WorkStep step = draft.step();
        steps.add(step);
        last = step.id();
        return last;
    }
}
