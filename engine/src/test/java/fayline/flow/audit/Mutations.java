package fayline.flow.audit;

import fayline.flow.audit.Mutation.Scene;
import fayline.flow.audit.Mutation.Spoilt;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** More than thirty ways to spoil a clean plan, written without a look at how plans are made. */
final class Mutations {
    private Mutations() {}

    static List<Mutation> all() {
        return Stream.of(people(), times(), links(), places(), wholes(), works())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Mutation> people() {
        return List.of(
                new Mutation("put someone without the skill to it", "CrewHasTheSkills", Mutations::unskilled),
                new Mutation(
                        "send one of the least crew away",
                        "CrewIsBigEnough",
                        s -> s.anyTodo(p -> leastCrew(s, p) == p.people().size()
                                        && !p.people().isEmpty())
                                .map(p -> s.with(Mutation.people(
                                        p,
                                        Mutation.without(p.people(), p.people().get(0)))))),
                new Mutation(
                        "count someone twice",
                        "CrewIsBigEnough",
                        s -> s.anyTodo(Mutations::hasHands).map(p -> s.with(Mutation.people(p, doubled(p.people()))))),
                new Mutation(
                        "invent a helper",
                        "OnlyKnownNames",
                        s -> s.anyTodo(Mutations::hasHands)
                                .map(p -> s.with(Mutation.people(
                                        p,
                                        Mutation.replaced(p.people(), p.people().get(0), "zoe"))))),
                new Mutation("call someone away from a step at work", "NobodyIsInTwoPlaces", Mutations::calledAway),
                new Mutation(
                        "move it into the night",
                        "PeopleWorkInTheirHours",
                        s -> s.anyTodo(Mutations::hasHands)
                                .map(p -> s.with(Mutation.movedTo(p, midnightAfter(p.start()))))),
                new Mutation("work through the break", "NobodyWorksInABreak", Mutations::throughBreak));
    }

    private static List<Mutation> times() {
        return List.of(
                new Mutation(
                        "shorten the hands",
                        "StepsLastTheirTime",
                        s -> s.anyTodo(p ->
                                        !p.stretches().isEmpty() && p.missed().isEmpty() && lastMinutes(p) > 1)
                                .map(p -> s.with(Mutation.hands(
                                        p, lastLonger(p, -1 - s.random.nextInt(lastMinutes(p) - 1)))))),
                new Mutation(
                        "dawdle",
                        "StepsLastTheirTime",
                        s -> s.anyTodo(p ->
                                        !p.stretches().isEmpty() && p.missed().isEmpty())
                                .map(p -> s.with(Mutation.hands(p, lastLonger(p, 1 + s.random.nextInt(60)))))),
                new Mutation(
                        "cut the cure short",
                        "CuresLastTheirTime",
                        s -> s.anyTodo(Mutations::cures)
                                .map(p -> s.with(ended(
                                        p,
                                        -60L
                                                * (1
                                                        + s.random.nextInt((int) Duration.between(p.handsEnd(), p.end())
                                                                .toMinutes())))))),
                new Mutation(
                        "let the cure run over",
                        "CuresLastTheirTime",
                        s -> s.anyTodo(Mutations::cures).map(p -> s.with(ended(p, 60L * (1 + s.random.nextInt(100)))))),
                new Mutation(
                        "split wet work",
                        "WetWorkIsNotInterrupted",
                        s -> s.anyTodo(p -> s.step(p).air().equals("wet") && lastMinutes(p) > 1)
                                .map(p -> s.with(Mutation.hands(p, split(s, p))))),
                new Mutation(
                        "split what may not stop",
                        "WorkThatMayNotStopRunsThrough",
                        s -> s.anyTodo(p -> s.step(p).air().equals("quiet")
                                        && !s.step(p).interruptible()
                                        && lastMinutes(p) > 1)
                                .map(p -> s.with(Mutation.hands(p, split(s, p))))),
                new Mutation(
                        "start before now",
                        "NothingStartsInThePast",
                        s -> s.anyTodo(p -> true)
                                .map(p -> s.with(Mutation.movedTo(
                                        p, s.work.now().minusSeconds(60L * (1 + s.random.nextInt(300))))))),
                new Mutation(
                        "start before its day",
                        "NothingStartsBeforeItsDay",
                        s -> s.anyTodo(p -> s.step(p).notBefore().isPresent())
                                .map(p -> s.with(Mutation.movedTo(
                                        p,
                                        s.step(p)
                                                .notBefore()
                                                .orElseThrow()
                                                .minusSeconds(60L * (1 + s.random.nextInt(60))))))),
                new Mutation(
                        "start before the delivery",
                        "DeliveriesHaveCome",
                        s -> s.anyTodo(p -> !s.step(p).awaits().isEmpty())
                                .map(p -> s.with(Mutation.movedTo(
                                        p,
                                        s.work.deliveries()
                                                .get(0)
                                                .expected()
                                                .minusSeconds(60L * (1 + s.random.nextInt(120))))))),
                new Mutation(
                        "slip by seconds",
                        "TimesAreOnWholeMinutes",
                        s -> s.anyTodo(p -> true).map(p -> s.with(ended(p, 1 + s.random.nextInt(59))))),
                new Mutation(
                        "begin the hands after the start",
                        "StretchesFitTheStep",
                        s -> s.anyTodo(Mutations::hasHands)
                                .map(p -> s.with(new PlannedStep(
                                        p.step(),
                                        p.start().minusSeconds(60),
                                        p.handsEnd(),
                                        p.end(),
                                        p.people(),
                                        p.places(),
                                        p.stretches(),
                                        p.missed())))),
                new Mutation("leave the bag when all go home", "BagsAreWatched", Mutations::unwatched));
    }

    private static List<Mutation> links() {
        return List.of(
                new Mutation(
                        "overtake what comes before",
                        "EarlierStepsComeFirst",
                        s -> anyLink(s, l -> true)
                                .map(x -> s.with(Mutation.movedTo(
                                        x.planned(),
                                        moment(s, x.link()).minusSeconds(60L * (1 + s.random.nextInt(200))))))),
                new Mutation(
                        "come before the window opens",
                        "WindowsAreOpen",
                        s -> anyLink(s, l -> l.opens().minutes() >= 20)
                                .map(x -> s.with(Mutation.movedTo(
                                        x.planned(), moment(s, x.link()).plusSeconds(60L * s.random.nextInt(8)))))),
                new Mutation(
                        "miss a hard window",
                        "HardWindowsAreNotMissed",
                        s -> anyLink(s, l -> l.shuts().isPresent() && l.miss().isEmpty())
                                .map(x -> s.with(Mutation.movedTo(
                                        x.planned(),
                                        moment(s, x.link()).plusSeconds(86400L * (1 + s.random.nextInt(3))))))),
                new Mutation(
                        "skip a priced window for nothing",
                        "MissedWindowsArePaid",
                        s -> anyLink(s, l -> l.miss().isPresent())
                                .filter(x -> x.planned().missed().isEmpty())
                                .map(x -> s.with(Mutation.movedTo(
                                        x.planned(),
                                        moment(s, x.link()).plusSeconds(86400L * (10 + s.random.nextInt(3))))))),
                new Mutation(
                        "miss a window and do not pay",
                        "MissedWindowsArePaid",
                        s -> anyLink(s, l -> l.miss().isPresent())
                                .filter(x -> x.planned().missed().isEmpty())
                                .map(x -> {
                                    PlannedStep late = Mutation.movedTo(
                                            x.planned(), moment(s, x.link()).plusSeconds(86400L * 12));
                                    return s.with(missed(late, List.of(x.link().step())));
                                })),
                new Mutation(
                        "list a kept window as missed",
                        "MissedWindowsArePaid",
                        s -> anyLink(s, l -> true)
                                .filter(x -> x.planned().missed().isEmpty())
                                .map(x -> s.with(
                                        missed(x.planned(), List.of(x.link().step()))))));
    }

    private static List<Mutation> places() {
        return List.of(
                new Mutation("drop a port", "HoldsStayInPlace", s -> dropped(s, Place.Kind.PORT)),
                new Mutation("drop a stand", "HoldsStayInPlace", s -> dropped(s, Place.Kind.STAND)),
                new Mutation(
                        "take one place more",
                        "HoldsStayInPlace",
                        s -> s.anyTodo(p -> s.step(p).air().equals("dust"))
                                .map(p -> s.with(Mutation.places(p, added(p.places(), "p-1"))))),
                new Mutation("carry the part to another bench", "HoldsStayInPlace", Mutations::carried),
                new Mutation(
                        "laminate on the saw stand",
                        "StandsSuitTheWork",
                        s -> s.anyTodo(p -> s.step(p).air().equals("wet") && stand(p).isPresent())
                                .map(p -> s.with(Mutation.places(
                                        p, Mutation.replaced(p.places(), stand(p).orElseThrow(), "saw-2"))))),
                new Mutation("fill a full mould", "OneCureInAMouldAtATime", s -> overlapped(s, Place.Kind.MOULD)),
                new Mutation("put it on a taken bench", "OneJobOnAStandAtATime", s -> overlapped(s, Place.Kind.STAND)),
                new Mutation("hang it on a taken port", "OneBagOnAPort", s -> overlapped(s, Place.Kind.PORT)),
                new Mutation("sand just before laminating", "DustStaysAwayFromWetWork", s -> dusty(s, true)),
                new Mutation("sand while laminating", "DustStaysAwayFromWetWork", s -> dusty(s, false)));
    }

    private static List<Mutation> wholes() {
        return List.of(
                new Mutation(
                        "forget a step",
                        "EveryStepIsThere",
                        s -> s.any(s.plan.steps()).map(p -> s.spoilt(Mutation.without(s.plan.steps(), p)))),
                new Mutation(
                        "plan a step twice",
                        "EveryStepIsThere",
                        s -> s.any(s.plan.steps()).map(p -> s.spoilt(added(s.plan.steps(), p)))),
                new Mutation(
                        "rewrite history",
                        "WhatHappenedStays",
                        s -> s.any(s.plan.steps().stream()
                                        .filter(p -> s.step(p).state() != WorkStep.State.TODO)
                                        .toList())
                                .map(p -> s.with(Mutation.shifted(p, 1 + s.random.nextInt(30))))),
                new Mutation(
                        "boast of an early finish",
                        "FinishIsTheLastEnd",
                        s -> Optional.of(new Spoilt(
                                s.work,
                                new Plan(
                                        s.plan.steps(),
                                        s.plan.unplanned(),
                                        s.plan.finish()
                                                .map(f -> f.minusSeconds(60L * (1 + s.random.nextInt(1000)))))))));
    }

    private static List<Mutation> works() {
        return List.of(
                new Mutation(
                        "someone is away that day",
                        "PeopleWorkInTheirHours",
                        s -> s.anyTodo(Mutations::hasHands).map(p -> new Spoilt(awayWhile(s.work, p), s.plan))),
                new Mutation(
                        "a port breaks",
                        "HoldsOfferEnoughPlaces",
                        s -> Optional.of(new Spoilt(
                                withPlaces(
                                        s.work,
                                        s.work.places().stream()
                                                .filter(x -> !x.id().equals("p-2"))
                                                .toList()),
                                s.plan))),
                new Mutation(
                        "it turns cold",
                        "CuresLastTheirTime",
                        s -> s.anyTodo(p -> s.step(p).alone().clock().equals("resin"))
                                .map(p -> new Spoilt(colder(s.work), s.plan))),
                new Mutation(
                        "the delivery is late",
                        "DeliveriesHaveCome",
                        s -> s.anyTodo(p -> !s.step(p).awaits().isEmpty())
                                .map(p -> new Spoilt(lateDelivery(s.work, p.start()), s.plan))),
                new Mutation(
                        "all others go home",
                        "NobodyLaminatesAlone",
                        s -> s.anyTodo(p ->
                                        s.step(p).accompanied() && p.people().size() == 1)
                                .map(p -> new Spoilt(onlyOne(s.work, p.people().get(0)), s.plan))));
    }

    private static Optional<Spoilt> unskilled(Scene s) {
        return s.anyTodo(p -> !s.step(p).skills().isEmpty() && !p.people().isEmpty())
                .flatMap(p -> {
                    String skill = s.step(p).skills().keySet().iterator().next();
                    List<String> unable = s.work.people().stream()
                            .filter(w -> !w.skills().contains(skill))
                            .map(Worker::id)
                            .toList();
                    int size = p.people().size();
                    return unable.size() < size
                            ? Optional.empty()
                            : Optional.of(s.with(Mutation.people(p, unable.subList(0, size))));
                });
    }

    private static Optional<Spoilt> calledAway(Scene s) {
        return s.anyTodo(Mutations::hasHands).flatMap(p -> {
            Optional<PlannedStep> other = s.anyTodo(o -> !o.step().equals(p.step())
                    && o.stretches().stream()
                            .anyMatch(x -> p.stretches().stream()
                                    .anyMatch(y -> x.from().isBefore(y.to())
                                            && y.from().isBefore(x.to()))));
            return other.filter(o -> !o.people().isEmpty())
                    .map(o -> s.with(Mutation.people(
                            p,
                            Mutation.replaced(
                                    p.people(), p.people().get(0), o.people().get(0)))));
        });
    }

    private static Optional<Spoilt> throughBreak(Scene s) {
        return s.anyTodo(p -> s.step(p).interruptible() && !p.people().isEmpty())
                .map(p -> {
                    Stretch pause = s.work.people().stream()
                            .filter(w -> w.id().equals(p.people().get(0)))
                            .flatMap(w -> w.breaks().stream())
                            .filter(b -> b.from().isAfter(s.work.now()))
                            .findFirst()
                            .orElseThrow();
                    return s.with(Mutation.hands(
                            p,
                            List.of(new Stretch(
                                    pause.from().minusSeconds(600), pause.from().plusSeconds(600)))));
                });
    }

    /** Moves a bag so that the last look at it falls on midnight. */
    private static Optional<Spoilt> unwatched(Scene s) {
        return s.anyTodo(p -> !s.step(p).watchMin().isEmpty()).map(p -> {
            long minutes = Duration.between(p.start(), p.handsEnd()).toMinutes()
                    + s.step(p).watchMin().stream().mapToInt(m -> m).max().orElseThrow();
            return s.with(Mutation.movedTo(p, midnightAfter(p.start()).minusSeconds(60 * minutes)));
        });
    }

    private static Optional<Spoilt> carried(Scene s) {
        return s.any(s.work.holds().stream()
                        .filter(h -> h.candidates().size() > 1 && h.steps().size() > 1)
                        .filter(h -> h.steps().stream().allMatch(x -> s.step(x).state() == WorkStep.State.TODO))
                        .filter(h -> h.steps().stream().allMatch(x -> isPlanned(s, x)))
                        .toList())
                .map(h -> {
                    PlannedStep p =
                            s.planned(h.steps().get(s.random.nextInt(h.steps().size())));
                    String here = p.places().stream()
                            .filter(h.candidates()::contains)
                            .findFirst()
                            .orElseThrow();
                    String there = Mutation.without(h.candidates(), here).get(0);
                    return s.with(Mutation.places(p, Mutation.replaced(p.places(), here, there)));
                });
    }

    private static Optional<Spoilt> dropped(Scene s, Place.Kind kind) {
        return s.anyTodo(p -> ofKind(s, p, kind).isPresent())
                .map(p -> s.with(Mutation.places(
                        p, Mutation.without(p.places(), ofKind(s, p, kind).orElseThrow()))));
    }

    /** Moves all steps of a hold so that it begins while another has the place, and puts it there. */
    private static Optional<Spoilt> overlapped(Scene s, Place.Kind kind) {
        List<Hold> holds = s.work.holds().stream()
                .filter(h -> h.kind() == kind && h.steps().stream().allMatch(x -> isPlanned(s, x)))
                .toList();
        Optional<Hold> moved = s.any(holds.stream()
                .filter(h -> h.steps().stream().allMatch(x -> s.step(x).state() == WorkStep.State.TODO))
                .toList());
        return moved.flatMap(h -> {
            String here = ofKindIn(s, h);
            return s.any(holds.stream()
                            .filter(o -> !o.equals(h)
                                    && h.candidates().contains(ofKindIn(s, o))
                                    && o.steps().stream().noneMatch(h.steps()::contains))
                            .toList())
                    .map(o -> {
                        Instant start = first(s, h);
                        Instant wanted = last(s, o).minusSeconds(60);
                        long minutes = Duration.between(start, wanted).toMinutes();
                        String there = ofKindIn(s, o);
                        return s.with(p -> h.steps().contains(p.step())
                                ? Mutation.places(
                                        Mutation.shifted(p, minutes), Mutation.replaced(p.places(), here, there))
                                : p);
                    });
        });
    }

    private static Optional<Spoilt> dusty(Scene s, boolean before) {
        Optional<PlannedStep> dust = s.anyTodo(p -> s.step(p).air().equals("dust"));
        Optional<PlannedStep> wet = s.anyTodo(p -> s.step(p).air().equals("wet") && stand(p).isPresent());
        return dust.flatMap(d -> wet.map(w -> {
            long settlesS = 60L * s.work.dustSettlesMin();
            Instant from = before
                    ? w.start().minusSeconds(settlesS + 60L * s.random.nextInt(5))
                    : w.handsEnd().minusSeconds(60);
            Stretch stretch = new Stretch(from, from.plusSeconds(600));
            PlannedStep moved = Mutation.places(Mutation.hands(d, List.of(stretch)), List.of("saw-2"));
            return s.with(moved);
        }));
    }

    private record Linked(PlannedStep planned, Link link) {}

    private static Optional<Linked> anyLink(Scene s, Predicate<Link> that) {
        return s.any(s.todo().stream()
                .flatMap(p -> s.step(p).after().stream()
                        .filter(that)
                        .filter(l -> isPlanned(s, l.step()))
                        .map(l -> new Linked(p, l)))
                .toList());
    }

    private static Instant moment(Scene s, Link link) {
        PlannedStep p = s.planned(link.step());
        return link.from().equals("start") ? p.start() : link.from().equals("end") ? p.end() : p.handsEnd();
    }

    private static boolean isPlanned(Scene s, String step) {
        return s.plan.steps().stream().anyMatch(p -> p.step().equals(step));
    }

    private static boolean hasHands(PlannedStep p) {
        return !p.people().isEmpty();
    }

    private static boolean cures(PlannedStep p) {
        return p.handsEnd().isBefore(p.end());
    }

    private static int leastCrew(Scene s, PlannedStep p) {
        return s.step(p).hands().stream().mapToInt(CrewTime::people).min().orElse(0);
    }

    private static <T> List<T> doubled(List<T> list) {
        return added(list, list.get(0));
    }

    private static <T> List<T> added(List<T> list, T item) {
        List<T> more = new ArrayList<>(list);
        more.add(item);
        return more;
    }

    private static Instant midnightAfter(Instant moment) {
        return moment.truncatedTo(java.time.temporal.ChronoUnit.DAYS).plusSeconds(86400);
    }

    private static int lastMinutes(PlannedStep p) {
        if (p.stretches().isEmpty()) {
            return 0;
        }
        Stretch last = p.stretches().get(p.stretches().size() - 1);
        return (int) Duration.between(last.from(), last.to()).toMinutes();
    }

    private static List<Stretch> lastLonger(PlannedStep p, int minutes) {
        List<Stretch> stretches = new ArrayList<>(p.stretches());
        Stretch last = stretches.remove(stretches.size() - 1);
        stretches.add(new Stretch(last.from(), last.to().plusSeconds(60L * minutes)));
        return stretches;
    }

    private static List<Stretch> split(Scene s, PlannedStep p) {
        List<Stretch> stretches = new ArrayList<>(p.stretches());
        Stretch last = stretches.remove(stretches.size() - 1);
        Instant middle = last.from().plusSeconds(60L * (1 + s.random.nextInt(lastMinutes(p) - 1)));
        stretches.add(new Stretch(last.from(), middle));
        stretches.add(new Stretch(middle.plusSeconds(300), last.to().plusSeconds(300)));
        return stretches;
    }

    private static PlannedStep ended(PlannedStep p, long seconds) {
        return new PlannedStep(
                p.step(),
                p.start(),
                p.handsEnd(),
                p.end().plusSeconds(seconds),
                p.people(),
                p.places(),
                p.stretches(),
                p.missed());
    }

    private static PlannedStep missed(PlannedStep p, List<String> missed) {
        return new PlannedStep(
                p.step(), p.start(), p.handsEnd(), p.end(), p.people(), p.places(), p.stretches(), missed);
    }

    private static Optional<String> stand(PlannedStep p) {
        return p.places().stream().filter(x -> x.startsWith("bench-")).findFirst();
    }

    private static Optional<String> ofKind(Scene s, PlannedStep p, Place.Kind kind) {
        return p.places().stream()
                .filter(x -> s.work.places().stream().anyMatch(y -> y.id().equals(x) && y.kind() == kind))
                .findFirst();
    }

    private static String ofKindIn(Scene s, Hold h) {
        return s.planned(h.steps().get(0)).places().stream()
                .filter(h.candidates()::contains)
                .findFirst()
                .orElseThrow();
    }

    private static Instant first(Scene s, Hold h) {
        return h.steps().stream()
                .map(x -> s.planned(x).start())
                .min(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Instant last(Scene s, Hold h) {
        return h.steps().stream()
                .map(x -> s.planned(x).end())
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    private static Work awayWhile(Work w, PlannedStep p) {
        String away = p.people().get(0);
        Instant at = p.stretches().get(0).from();
        List<Worker> people = w.people().stream()
                .map(x -> !x.id().equals(away)
                        ? x
                        : new Worker(
                                x.id(),
                                x.name(),
                                x.skills(),
                                x.present().stream()
                                        .filter(y -> y.from().isAfter(at) || !y.to().isAfter(at))
                                        .toList(),
                                x.breaks()))
                .toList();
        return with(w, people, w.places(), w.clocks(), w.deliveries());
    }

    private static Work onlyOne(Work w, String stays) {
        return with(
                w,
                w.people().stream().filter(x -> x.id().equals(stays)).toList(),
                w.places(),
                w.clocks(),
                w.deliveries());
    }

    private static Work withPlaces(Work w, List<Place> places) {
        return with(w, w.people(), places, w.clocks(), w.deliveries());
    }

    private static Work colder(Work w) {
        List<CureClock> clocks = w.clocks().stream()
                .map(c -> new CureClock(
                        c.id(),
                        c.from(),
                        c.stepMin(),
                        c.rates().stream().map(r -> r * 0.9).toList()))
                .toList();
        return with(w, w.people(), w.places(), clocks, w.deliveries());
    }

    private static Work lateDelivery(Work w, Instant start) {
        List<Work.Awaited> late = w.deliveries().stream()
                .map(d -> new Work.Awaited(d.id(), d.what(), start.plusSeconds(60)))
                .toList();
        return with(w, w.people(), w.places(), w.clocks(), late);
    }

    private static Work with(
            Work w, List<Worker> people, List<Place> places, List<CureClock> clocks, List<Work.Awaited> deliveries) {
        return new Work(
                w.version(),
                w.definition(),
                w.revision(),
                w.now(),
                w.zone(),
                w.horizon(),
                w.dustSettlesMin(),
                people,
                places,
                clocks,
                deliveries,
                w.steps(),
                w.holds());
    }
}
