package fayline.app.bench;

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
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Work of an invented shop from a seed, to measure planners on: six people with absences, ten moulds, three benches, two vacuum
 * ports, skins in two bagged stages with a recoat window between, trims that make dust, and bonds with prepared faces.
 */
public final class InventedShop {
    private static final Instant NOW = Instant.parse("2026-03-02T07:00:00Z"); // a Monday
    private static final int WEEKS = 30;
    private static final List<String> BENCHES = List.of("bench-1", "bench-2", "bench-3");
    private static final List<String> PORTS = List.of("port-1", "port-2");

    private final SplittableRandom random;
    private final List<WorkStep> steps = new ArrayList<>();
    private final List<Hold> holds = new ArrayList<>();

    private InventedShop(long seed) {
        random = new SplittableRandom(seed);
    }

    /**
     * Invents.
     *
     * @param seed equal seeds give equal work
     * @param steps how many steps at least; parts are whole
     */
    public static Work of(long seed, int steps) {
        return new InventedShop(seed).make(steps);
    }

    private Work make(int count) {
        for (int part = 0; steps.size() < count; part++) {
            skin(part);
            if (part % 2 == 1) {
                bond(part - 1, part);
            }
        }
        List<Worker> people = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            people.add(person(i));
        }
        List<Place> places = new ArrayList<>();
        for (int i = 1; i <= 10; i++) {
            places.add(new Place("mould-" + i, "Mould " + i, Place.Kind.MOULD, "", false, false));
        }
        BENCHES.forEach(b -> places.add(new Place(b, b, Place.Kind.STAND, "hall", false, true)));
        places.add(new Place("table", "Trim table", Place.Kind.STAND, "trim room", true, false));
        PORTS.forEach(p -> places.add(new Place(p, p, Place.Kind.PORT, "", false, false)));
        return new Work(
                "invented",
                "invented",
                "A",
                NOW,
                ZoneOffset.UTC,
                NOW.plus(Duration.ofDays(7L * WEEKS)),
                120,
                people,
                places,
                List.of(new CureClock("slow", NOW, 60, rates())),
                List.of(),
                steps,
                holds);
    }

    private Worker person(int i) {
        Set<String> skills = switch (i) {
            case 0 -> Set.of("laminate", "bag", "bond", "sand", "sign");
            case 1, 2 -> Set.of("laminate", "bag", "sand");
            case 3 -> Set.of("laminate", "bond", "sand");
            case 4 -> Set.of("bag", "sand");
            default -> Set.of("laminate", "bag");
        };
        int away = 7 * random.nextInt(6) + random.nextInt(5);
        int days = i % 2 == 0 ? 2 + random.nextInt(6) : 0;
        List<Stretch> present = new ArrayList<>();
        List<Stretch> breaks = new ArrayList<>();
        for (int d = 0; d < 7 * WEEKS; d++) {
            if (d % 7 < 5 && (d < away || d >= away + days)) {
                LocalDate day = LocalDate.ofInstant(NOW, ZoneOffset.UTC).plusDays(d);
                present.add(stretch(day, LocalTime.of(7, 30), LocalTime.of(i < 3 ? 16 : 17, 30)));
                breaks.add(stretch(day, LocalTime.of(12, 0), LocalTime.of(12, 30)));
            }
        }
        return new Worker("p" + i, "Person " + (i + 1), skills, present, breaks);
    }

    private static Stretch stretch(LocalDate day, LocalTime from, LocalTime to) {
        return new Stretch(
                day.atTime(from).toInstant(ZoneOffset.UTC), day.atTime(to).toInstant(ZoneOffset.UTC));
    }

    private static List<Double> rates() {
        List<Double> rates = new ArrayList<>();
        for (int h = 0; h < 24 * 7 * WEEKS; h++) {
            int hour = (h + 7) % 24;
            rates.add(hour >= 7 && hour < 18 ? 0.85 : 0.6);
        }
        return rates;
    }

    private int minutes(int least, int more) {
        return least + 5 * random.nextInt(more / 5 + 1);
    }

    private void skin(int part) {
        String made = "skin-" + part;
        String id = "x/" + made + "/1/";
        List<Link> none = List.of();
        add(made, "cut", 1, minutes(30, 90), "quiet", true, "", Span.NONE, none);
        add(made, "release", 1, minutes(30, 40), "quiet", false, "", new Span(60, ""), after(id + "cut"));
        lay(made, 1, List.of(link(id + "release", Span.NONE, new Span(3 * 1440, ""), new Miss("Coat again.", 30))));
        Link recoat = link(
                id + "bag-1",
                new Span(minutes(400, 200), "slow"),
                new Span(minutes(1500, 500), "slow"),
                new Miss("Abrade, clean and dry.", minutes(90, 150)));
        lay(made, 2, List.of(recoat));
        Link cured = new Link(id + "bag-2", "end", new Span(400, "slow"), Optional.empty(), Optional.empty());
        add(made, "demould", 2, minutes(30, 45), "quiet", false, "", Span.NONE, List.of(cured));
        add(made, "trim", 1, minutes(60, 240), "dust", true, "sand", Span.NONE, after(id + "demould"));
        List<String> inMould = new ArrayList<>();
        for (String s : List.of("release", "lay-up-1", "bag-1", "lay-up-2", "bag-2", "demould")) {
            inMould.add(id + s);
        }
        hold(made, Place.Kind.MOULD, List.of("mould-" + (1 + random.nextInt(10))), inMould);
        hold(made, Place.Kind.STAND, BENCHES, inMould.subList(1, 6));
        hold(made + "-trim", Place.Kind.STAND, List.of("table"), List.of(id + "trim"));
    }

    private void lay(String made, int stage, List<Link> after) {
        String id = "x/" + made + "/1/";
        add(made, "lay-up-" + stage, 2, minutes(60, 150), "wet", false, "laminate", Span.NONE, after);
        Link atOnce = new Link(
                id + "lay-up-" + stage, "hands-end", Span.NONE, Optional.of(new Span(30, "")), Optional.empty());
        Span cure = new Span(minutes(500, 200), "slow");
        add(made, "bag-" + stage, 2, minutes(40, 40), "wet", false, "bag", cure, List.of(atOnce));
        hold(made + "-" + stage, Place.Kind.PORT, PORTS, List.of(id + "bag-" + stage));
    }

    private void bond(int a, int b) {
        String made = "joint-" + a;
        String id = "x/" + made + "/1/";
        add(made, "prepare-a", 1, minutes(40, 60), "quiet", false, "bond", Span.NONE, after("x/skin-" + a + "/1/trim"));
        add(made, "prepare-b", 1, minutes(40, 60), "quiet", false, "bond", Span.NONE, after("x/skin-" + b + "/1/trim"));
        Miss again = new Miss("Prepare again.", 60);
        List<Link> prepared = List.of(
                link(id + "prepare-a", Span.NONE, new Span(480, ""), again),
                link(id + "prepare-b", Span.NONE, new Span(480, ""), again));
        add(made, "bond", 2, minutes(45, 60), "wet", false, "bond", new Span(700, "slow"), prepared);
        add(made, "inspect", 1, 30, "quiet", false, "sign", Span.NONE, after(id + "bond"));
        hold(made, Place.Kind.STAND, BENCHES, List.of(id + "bond"));
    }

    private static Link link(String step, Span opens, Span shuts, Miss miss) {
        return new Link(step, "end", opens, Optional.of(shuts), Optional.of(miss));
    }

    private static List<Link> after(String step) {
        return List.of(new Link(step, "end", Span.NONE, Optional.empty(), Optional.empty()));
    }

    private void hold(String id, Place.Kind kind, List<String> candidates, List<String> of) {
        holds.add(new Hold("h-" + id + "-" + kind, kind, candidates, 1, of));
    }

    private void add(
            String made,
            String key,
            int people,
            int minutes,
            String air,
            boolean stops,
            String skill,
            Span alone,
            List<Link> after) {
        int faster = (int) Math.ceil(minutes * 0.65 / 5) * 5;
        steps.add(new WorkStep(
                "x/" + made + "/1/" + key,
                "x",
                made,
                key,
                key,
                List.of(new CrewTime(people, minutes), new CrewTime(people + 1, faster)),
                skill.isEmpty() ? Map.of() : Map.of(skill, 1),
                air,
                stops,
                alone,
                after,
                Optional.empty(),
                List.of(),
                key.startsWith("bag") ? List.of(15) : List.of(),
                false,
                State.TODO,
                Actual.NONE));
    }
}
