package fayline.flow.audit;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
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
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * Seeded shops at work: some parts, each released, laid up, bagged, cured, perhaps laid up again within its recoat window,
 * taken out and trimmed; a bond of the first two; a part whose first bag is under vacuum now, and one that is being trimmed.
 * Six weeks of weekdays from Monday 2 March 2026.
 */
final class SeededWork {
    static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    private static final int DAYS = 42;

    private final Random random;
    private final List<WorkStep> steps = new ArrayList<>();
    private final List<Hold> holds = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();
    private final List<String> moulds = new ArrayList<>();
    private final List<String> ports = new ArrayList<>();
    private final List<String> wetStands = List.of("bench-1", "bench-2", "bench-3");
    private final List<String> dustStands = List.of("saw-1", "saw-2");

    private SeededWork(long seed) {
        random = new Random(seed);
    }

    static Work of(long seed) {
        return new SeededWork(seed).build();
    }

    static Instant at(int day, int hour, int minute) {
        return MONDAY.plusDays(day).atTime(LocalTime.of(hour, minute)).toInstant(ZoneOffset.UTC);
    }

    private Work build() {
        List<Worker> people = people();
        for (int i = 1; i <= 2 + random.nextInt(2); i++) {
            moulds.add("m-" + i);
            places.add(new Place("m-" + i, "Mould " + i, Place.Kind.MOULD, "", false, false));
        }
        for (int i = 1; i <= 2 + random.nextInt(2); i++) {
            ports.add("p-" + i);
            places.add(new Place("p-" + i, "Port " + i, Place.Kind.PORT, "", false, false));
        }
        wetStands.forEach(s -> places.add(new Place(s, s, Place.Kind.STAND, "hall", false, true)));
        places.add(new Place("saw-1", "saw-1", Place.Kind.STAND, "yard", true, false));
        places.add(new Place("saw-2", "saw-2", Place.Kind.STAND, "hall", true, false));
        int parts = 2 + random.nextInt(4);
        for (int i = 0; i < parts; i++) {
            part(i);
        }
        bond();
        running(people);
        List<Work.Awaited> deliveries = List.of(new Work.Awaited("d-1", "cloth", at(3, 11, 0)));
        double base = 0.6 + random.nextDouble();
        List<Double> rates = new ArrayList<>();
        for (int h = 0; h < 24 * DAYS; h++) {
            rates.add(base * (h % 24 < 12 ? 1.2 : 0.7) * (0.9 + 0.2 * random.nextDouble()));
        }
        List<CureClock> clocks = List.of(new CureClock("resin", at(-1, 7, 0), 60, rates));
        return new Work(
                "1",
                "seeded",
                "A",
                at(0, 9, 0),
                ZoneOffset.UTC,
                at(DAYS, 0, 0),
                60 + 30 * random.nextInt(3),
                people,
                places,
                clocks,
                deliveries,
                steps,
                holds);
    }

    private List<Worker> people() {
        List<Worker> people = new ArrayList<>();
        people.add(worker("ada", Set.of("laminate", "bag", "bond"), 7, 16, -1));
        people.add(worker("bo", Set.of("laminate", "bag"), 7, 16, random.nextInt(DAYS)));
        people.add(worker("cy", Set.of("sand", "laminate"), 8, 17, random.nextInt(DAYS)));
        people.add(worker("dee", Set.of("sand", "bond"), 9, 17, random.nextInt(DAYS)));
        return people;
    }

    private Worker worker(String id, Set<String> skills, int from, int to, int away) {
        List<Stretch> present = new ArrayList<>();
        List<Stretch> breaks = new ArrayList<>();
        for (int day = 0; day < DAYS; day++) {
            DayOfWeek week = MONDAY.plusDays(day).getDayOfWeek();
            boolean absent = away >= 0 && day >= away && day < away + 3;
            if (week.getValue() <= 5 && !absent) {
                present.add(new Stretch(at(day, from, 0), at(day, to, 0)));
                breaks.add(new Stretch(at(day, 12, 0), at(day, 12, 30)));
            }
        }
        return new Worker(id, id, skills, present, breaks);
    }

    private void part(int number) {
        String made = "part-" + number;
        String release = made + "/release";
        String layUp = made + "/lay-up";
        String bag = made + "/bag";
        String out = made + "/out";
        String trim = made + "/trim";
        boolean late = number == 1;
        steps.add(step(
                release,
                made,
                List.of(new CrewTime(1, 60 + 5 * random.nextInt(10)), new CrewTime(2, 35 + 5 * random.nextInt(4))),
                Map.of(),
                "quiet",
                new Span(45, ""),
                List.of(),
                number == 0 ? Optional.of(at(1, 8, 0)) : Optional.empty(),
                late ? List.of("d-1") : List.of(),
                List.of()));
        steps.add(step(
                layUp,
                made,
                List.of(new CrewTime(2, 90 + 5 * random.nextInt(15)), new CrewTime(3, 80)),
                Map.of("laminate", 1),
                "wet",
                Span.NONE,
                List.of(new Link(
                        release,
                        "end",
                        new Span(30, ""),
                        Optional.of(new Span(2 * 1440, "")),
                        Optional.of(new Miss("Redo the last release coat.", 25)))),
                Optional.empty(),
                List.of(),
                List.of()));
        steps.add(bag(bag, made, layUp));
        String last = bag;
        List<String> spanned = new ArrayList<>(List.of(release, layUp, bag));
        if (random.nextBoolean()) {
            String second = made + "/lay-up-2";
            String bag2 = made + "/bag-2";
            steps.add(step(
                    second,
                    made,
                    List.of(new CrewTime(2, 60 + 5 * random.nextInt(10)), new CrewTime(3, 55)),
                    Map.of("laminate", 2),
                    "wet",
                    Span.NONE,
                    List.of(new Link(
                            bag,
                            "hands-end",
                            new Span(360, "resin"),
                            Optional.of(new Span(1800, "resin")),
                            Optional.of(new Miss("Abrade, clean, dry.", 70)))),
                    Optional.empty(),
                    List.of(),
                    List.of()));
            steps.add(bag(bag2, made, second));
            spanned.addAll(List.of(second, bag2));
            hold(bag2 + "-port", Place.Kind.PORT, ports, List.of(bag2));
            last = bag2;
        }
        steps.add(step(
                out,
                made,
                List.of(new CrewTime(1, 45), new CrewTime(2, 25)),
                Map.of(),
                "quiet",
                Span.NONE,
                List.of(after(last)),
                Optional.empty(),
                List.of(),
                List.of()));
        spanned.add(out);
        WorkStep trimming = step(
                trim,
                made,
                List.of(new CrewTime(1, 60 + 5 * random.nextInt(100))),
                Map.of("sand", 1),
                "dust",
                Span.NONE,
                List.of(after(out)),
                Optional.empty(),
                List.of(),
                List.of());
        steps.add(trimming);
        hold(made + "-mould", Place.Kind.MOULD, List.of(moulds.get(random.nextInt(moulds.size()))), spanned);
        hold(made + "-stand", Place.Kind.STAND, wetStands, spanned);
        hold(bag + "-port", Place.Kind.PORT, ports, List.of(bag));
        hold(trim + "-stand", Place.Kind.STAND, dustStands, List.of(trim));
    }

    private WorkStep bag(String id, String made, String layUp) {
        return step(
                id,
                made,
                List.of(new CrewTime(1, 60), new CrewTime(2, 35)),
                Map.of("bag", 1),
                "quiet",
                new Span(420 + random.nextInt(300), "resin"),
                List.of(new Link(layUp, "hands-end", Span.NONE, Optional.of(new Span(60, "resin")), Optional.empty())),
                Optional.empty(),
                List.of(),
                List.of(15, 45));
    }

    private void bond() {
        steps.add(step(
                "joint/bond",
                "joint",
                random.nextBoolean() ? List.of(new CrewTime(1, 50)) : List.of(new CrewTime(1, 50), new CrewTime(2, 30)),
                Map.of("bond", 1),
                "wet",
                new Span(16 * 60, ""),
                List.of(after("part-0/trim"), after("part-1/trim")),
                Optional.empty(),
                List.of(),
                List.of()));
        hold("joint-stand", Place.Kind.STAND, wetStands, List.of("joint/bond"));
    }

    /** A part under vacuum since yesterday evening, and one that dee and cy are trimming since eight. */
    private void running(List<Worker> people) {
        steps.add(begun(
                bag("old/bag", "old", "old/lay-up"),
                State.RUNNING,
                new Actual(
                        Optional.of(at(0, 7, 0)),
                        Optional.of(at(0, 8, 0)),
                        Optional.empty(),
                        List.of("ada"),
                        List.of(ports.get(0), "bench-1"))));
        WorkStep layUp = step(
                "old/lay-up",
                "old",
                List.of(new CrewTime(2, 60)),
                Map.of("laminate", 1),
                "wet",
                Span.NONE,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
        steps.add(begun(
                layUp,
                State.DONE,
                new Actual(
                        Optional.of(at(0, 6, 0)),
                        Optional.of(at(0, 7, 0)),
                        Optional.of(at(0, 7, 0)),
                        List.of("ada", "bo"),
                        List.of("bench-1"))));
        hold("old-port", Place.Kind.PORT, ports, List.of("old/bag"));
        hold("old-stand", Place.Kind.STAND, wetStands, List.of("old/lay-up", "old/bag"));
        WorkStep trim = step(
                "older/trim",
                "older",
                List.of(new CrewTime(1, 120)),
                Map.of("sand", 1),
                "dust",
                Span.NONE,
                List.of(),
                Optional.empty(),
                List.of(),
                List.of());
        if (people.get(2).present().get(0).from().equals(at(0, 8, 0))) {
            steps.add(begun(
                    trim,
                    State.RUNNING,
                    new Actual(
                            Optional.of(at(0, 8, 0)),
                            Optional.empty(),
                            Optional.empty(),
                            List.of("cy"),
                            List.of("saw-1"))));
            hold("older-stand", Place.Kind.STAND, dustStands, List.of("older/trim"));
        }
    }

    private void hold(String id, Place.Kind kind, List<String> candidates, List<String> spanned) {
        holds.add(new Hold(id, kind, candidates, 1, spanned));
    }

    private static Link after(String step) {
        return new Link(step, "end", Span.NONE, Optional.empty(), Optional.empty());
    }

    private static WorkStep begun(WorkStep s, State state, Actual actual) {
        return new WorkStep(
                s.id(),
                s.project(),
                s.made(),
                s.title(),
                s.kind(),
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.alone(),
                s.after(),
                s.notBefore(),
                s.awaits(),
                s.watchMin(),
                s.accompanied(),
                state,
                actual);
    }

    private static WorkStep step(
            String id,
            String made,
            List<CrewTime> hands,
            Map<String, Integer> skills,
            String air,
            Span alone,
            List<Link> after,
            Optional<Instant> notBefore,
            List<String> awaits,
            List<Integer> watches) {
        return new WorkStep(
                id,
                "seeded",
                made,
                id,
                "other",
                hands,
                skills,
                air,
                air.equals("dust"),
                alone,
                after,
                notBefore,
                awaits,
                watches,
                air.equals("wet"),
                State.TODO,
                Actual.NONE);
    }
}
