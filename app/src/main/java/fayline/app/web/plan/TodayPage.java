package fayline.app.web.plan;

import fayline.app.usecase.view.StandingWishes;
import fayline.app.web.fit.FitLinks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.StateWord;
import fayline.app.web.frame.TimeWords;
import fayline.app.web.frame.Visit;
import fayline.basis.finding.Severity;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import fayline.flow.result.air.AirNow;
import fayline.flow.result.air.ColdDays;
import fayline.flow.result.step.OpenWindow;
import io.javalin.config.RoutesConfig;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Today: who does what now and next, which clocks run, which windows close, what blocks what, what moved. */
public final class TodayPage implements Page {
    private static final Duration AHEAD = Duration.ofDays(3);
    private static final Duration FITS_AHEAD = Duration.ofDays(14);
    private static final int MOST_NEXT = 4;
    private static final int MOST_HOLDING = 8;
    private final Sights sights;

    /** Makes the page. */
    public TodayPage(Sights sights) {
        this.sights = sights;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> {
                Frame frame = sights.frame(visit, sight, "Today", "/");
                sights.show(visit, "today.jte", frame, view(sight, visit.person()));
            });
        });
    }

    /** What the page shows. */
    static TodayView view(Sight sight, String person) {
        TimeWords time = sight.time();
        List<TodayView.Crew> crew = new ArrayList<>();
        Map<String, String> wished = StandingWishes.byStep(sight.view());
        sight.work().people().stream()
                .sorted(Comparator.comparing((Worker w) -> !w.id().equals(person)))
                .forEach(w -> crew.add(crew(sight, w, w.id().equals(person), wished)));
        CuresOnToday cures = CuresOnToday.of(sight);
        return new TodayView(
                java.time.format.DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH)
                        .format(time.today()),
                crew,
                cures.waitedFor(),
                cures.others(),
                cures.reached(),
                sight.result().windows().stream().map(w -> window(sight, w)).toList(),
                due(sight),
                holding(sight),
                sight.view()
                        .told()
                        .map(at -> "The crew was told this plan " + time.at(at) + ".")
                        .orElse(""),
                sight.view().moved().stream().map(m -> m.sentence(time.zone())).toList(),
                air(sight, sight.result().airNow()),
                troubles(sight),
                "/cards.pdf?day=" + time.today(),
                sight.plan().steps().isEmpty());
    }

    private static TodayView.Crew crew(Sight sight, Worker worker, boolean here, Map<String, String> wished) {
        TimeWords time = sight.time();
        Instant now = time.now();
        List<Plan.PlannedStep> own = sight.plan().steps().stream()
                .filter(s -> s.people().contains(worker.id()))
                .filter(s -> sight.work(s.step())
                        .filter(w -> w.state() != WorkStep.State.DONE)
                        .isPresent())
                .filter(s -> !handsOver(sight, s))
                .sorted(Comparator.comparing(Plan.PlannedStep::start))
                .toList();
        List<TodayView.Job> at = own.stream()
                .filter(s -> running(sight, s) || !s.start().isAfter(now))
                .map(s -> job(sight, s, worker.id(), wished.getOrDefault(s.step(), "")))
                .toList();
        List<TodayView.Job> next = own.stream()
                .filter(s -> !running(sight, s) && s.start().isAfter(now))
                .filter(s -> s.start().isBefore(now.plus(AHEAD)))
                .limit(MOST_NEXT)
                .map(s -> job(sight, s, worker.id(), wished.getOrDefault(s.step(), "")))
                .toList();
        String hours = String.join(
                ", ",
                worker.present().stream()
                        .filter(s -> s.from().atZone(time.zone()).toLocalDate().equals(time.today()))
                        .map(s -> time.clock(s.from()) + " to " + time.clock(s.to()))
                        .toList());
        return new TodayView.Crew(worker.name(), here, hours.isEmpty() ? "not in today" : hours, at, next);
    }

    private static boolean running(Sight sight, Plan.PlannedStep s) {
        return sight.work(s.step())
                .filter(w -> w.state() == WorkStep.State.RUNNING)
                .isPresent();
    }

    private static boolean handsOver(Sight sight, Plan.PlannedStep s) {
        return sight.work(s.step()).flatMap(w -> w.actual().handsEnded()).isPresent();
    }

    private static TodayView.Job job(Sight sight, Plan.PlannedStep s, String person, String wished) {
        WorkStep work = sight.work(s.step()).orElseThrow();
        List<String> others = s.people().stream().filter(p -> !p.equals(person)).toList();
        return new TodayView.Job(
                work.title(),
                sight.madeName(work.made()),
                sight.time().range(s.start(), s.handsEnd()),
                others.isEmpty() ? "" : "with " + sight.personNames(others),
                Sight.cardLink(s.step()),
                StateWord.of(work, sight.time().now()),
                wished,
                FitLinks.of(sight, s.step()));
    }

    /** Fits to read or bond within two weeks, so that a dry fit is not left to its last day; the soonest first. */
    private static List<TodayView.Due> due(Sight sight) {
        Instant until = sight.time().now().plus(FITS_AHEAD);
        return sight.plan().steps().stream()
                .filter(s -> s.start().isBefore(until))
                .filter(s -> sight.work(s.step())
                        .filter(w -> w.state() != WorkStep.State.DONE)
                        .isPresent())
                .filter(s -> !FitLinks.of(sight, s.step()).isEmpty())
                .sorted(Comparator.comparing(Plan.PlannedStep::start))
                .map(s -> {
                    WorkStep work = sight.work(s.step()).orElseThrow();
                    return new TodayView.Due(
                            work.title(),
                            sight.madeName(work.made()),
                            sight.time().range(s.start(), s.handsEnd()),
                            Sight.cardLink(s.step()),
                            FitLinks.of(sight, s.step()));
                })
                .toList();
    }

    private static TodayView.Window window(Sight sight, OpenWindow w) {
        String opens = w.opens()
                .map(t -> (t.isAfter(sight.time().now()) ? "opens " : "open since ")
                        + sight.time().at(t))
                .orElse("");
        String shuts = w.shuts()
                .map(t -> (w.missed() ? "shut " : "shuts ") + sight.time().at(t))
                .orElse("");
        String words = String.join(
                ", ", Stream.of(opens, shuts).filter(x -> !x.isEmpty()).toList());
        return new TodayView.Window(
                sight.stepName(w.step()),
                w.shuts().map(Instant::toString).orElse(""),
                words,
                w.missed(),
                w.miss()
                        .map(m -> m.does() + " (" + m.personMinutes() + " person-minutes)")
                        .orElse(""),
                Sight.cardLink(w.step()));
    }

    private static List<TodayView.Holding> holding(Sight sight) {
        Instant now = sight.time().now();
        Map<String, List<String>> waiting = new LinkedHashMap<>();
        sight.plan().steps().stream()
                .filter(s -> s.start().isAfter(now) && s.start().isBefore(now.plus(AHEAD)))
                .sorted(Comparator.comparing(Plan.PlannedStep::start))
                .forEach(s -> sight.work(s.step())
                        .ifPresent(w -> w.after().stream()
                                .filter(l -> sight.work(l.step())
                                        .filter(b -> b.state() == WorkStep.State.RUNNING)
                                        .isPresent())
                                .forEach(l -> waiting.computeIfAbsent(l.step(), k -> new ArrayList<>())
                                        .add(sight.stepName(s.step())))));
        List<TodayView.Holding> all = new ArrayList<>();
        waiting.forEach((step, who) -> all.add(new TodayView.Holding(
                sight.stepName(step),
                sight.planned(step)
                        .map(p -> "until " + sight.time().at(p.end()))
                        .orElse(""),
                Sight.cardLink(step),
                who)));
        sight.work().deliveries().stream()
                .filter(d -> d.expected().isAfter(now))
                .forEach(d -> {
                    List<String> who = sight.work().steps().stream()
                            .filter(s -> s.state() == WorkStep.State.TODO
                                    && s.awaits().contains(d.id()))
                            .map(s -> sight.stepName(s.id()))
                            .toList();
                    if (!who.isEmpty()) {
                        all.add(new TodayView.Holding(
                                "Delivery: " + sight.stuffName(d.what()),
                                "counted on "
                                        + sight.time()
                                                .day(d.expected()
                                                        .atZone(sight.time().zone())
                                                        .toLocalDate()),
                                "/stores",
                                who));
                    }
                });
        return all.stream().limit(MOST_HOLDING).toList();
    }

    private static TodayView.Air air(Sight sight, AirNow air) {
        return new TodayView.Air(
                air.at()
                        .map(t -> "read " + sight.time().at(t) + (air.stale() ? ", too old to begin on" : ""))
                        .orElse("never read; expected values"),
                sight.format().temperature(air.air()),
                sight.format().percent(air.humidity()),
                sight.format().temperature(air.surface()),
                sight.format().temperature(air.dewPoint()),
                sight.format().difference(air.margin()),
                air.fit(),
                sight.say(air.findings()),
                cold(sight));
    }

    private static String cold(Sight sight) {
        return ColdDays.of(sight.definition(), sight.result().air(), sight.work(), sight.plan()).stream()
                .map(d -> sight.time().day(d.date()))
                .collect(Collectors.joining(", "));
    }

    private static List<String> troubles(Sight sight) {
        List<String> all = new ArrayList<>();
        sight.view().audit().stream()
                .filter(b -> !b.admitted())
                .forEach(b -> all.add("The plan breaks a rule: " + sight.named(b.sentence())));
        sight.plan()
                .unplanned()
                .forEach(u -> all.add(sight.stepName(u.step()) + " is not planned: " + sight.named(u.reason())));
        sight.result().findings().stream()
                .filter(f -> f.severity() == Severity.STOP)
                .forEach(f -> all.add(sight.named(sight.say(f.phrase()))));
        return all;
    }
}
