package fayline.app.web.plan;

import fayline.app.drawing.Drawing;
import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.WeekChart;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.StandingWishes;
import fayline.app.usecase.view.WhyHere;
import fayline.app.usecase.view.WhyNot;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.app.web.whatif.LongWorkViews;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import fayline.flow.planner.PlanReasons.Reason;
import io.javalin.config.RoutesConfig;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The weeks: time with its nights, a row for each person, mould, stand or port, and the same as a list. */
public final class WeeksPage implements Page {
    private static final double MM_PER_WEEK = 462;
    private final Sights sights;
    private final LeastFinish least;
    private final WhyHere why;
    private final WhyNot whyNot = new WhyNot();

    /** Makes the page. */
    public WeeksPage(Sights sights, LeastFinish least, WhyHere why) {
        this.why = why;
        this.sights = sights;
        this.least = least;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/weeks", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "weeks.jte",
                            sights.frame(visit, sight, "Weeks", "/weeks"),
                            view(
                                    sight,
                                    visit.query("from"),
                                    visit.query("by"),
                                    visit.query("weeks"),
                                    visit.query("least").isEmpty() ? "" : least(sight))));
        });
    }

    /** What no plan can beat, in a sentence: computed only when asked for, since it takes seconds. */
    private String least(Sight sight) {
        return least.of(sight.work(), sight.plan())
                .map(at -> "No plan can end before " + sight.time().at(at) + ".")
                .orElse("What no plan can beat cannot be computed on this machine.");
    }

    private WeeksView view(Sight sight, String asked, String by, String span, String least) {
        Grain grain = Grain.of(sight);
        LocalDate first = first(sight, asked);
        int weeks = span.equals("2") ? 2 : span.equals("6") ? 6 : 1;
        String rows = List.of("people", "moulds", "stands", "ports").contains(by) ? by : "people";
        List<WeeksView.Group> groups = new ArrayList<>();
        for (String g : List.of("people", "moulds", "stands", "ports")) {
            groups.add(new WeeksView.Group(
                    "by " + singular(g), "/weeks?by=" + g + "&weeks=" + weeks + "&from=" + first, g.equals(rows)));
        }
        return new WeeksView(
                sight.time().day(first),
                link(rows, weeks, first.minusWeeks(weeks)),
                link(rows, weeks, first.plusWeeks(weeks)),
                "/weeks?by=" + rows + "&weeks=" + weeks,
                groups,
                List.of(
                        new WeeksView.Group("1 week", link(rows, 1, first), weeks == 1),
                        new WeeksView.Group("2 weeks", link(rows, 2, first), weeks == 2),
                        new WeeksView.Group("6 weeks", link(rows, 6, first), weeks == 6)),
                SvgRenderer.forScreen().render(chart(sight, first, weeks, rows, why.chain(sight.view()))),
                days(sight, grain, first, weeks),
                sight.plan().finish().map(sight.time()::at).orElse(""),
                least,
                link(rows, weeks, first) + "&least=yes",
                sight.plan().unplanned().stream()
                        .map(u -> sight.stepName(u.step()) + ": " + sight.named(u.reason()))
                        .toList(),
                sight.plan().unplanned().isEmpty() ? List.of() : LongWorkViews.of(sight),
                whyNot.of(sight.view()).stream()
                        .map(c -> sight.stepName(c.step()) + ". " + sight.named(c.sentence()))
                        .toList(),
                GoalsAgainstPlan.of(sight),
                why.chain(sight.view()).stream().map(r -> link(sight, grain, r)).toList(),
                StandingWishes.acts(sight.view()));
    }

    private static String singular(String group) {
        return switch (group) {
            case "people" -> "person";
            case "moulds" -> "mould";
            case "stands" -> "stand";
            default -> "vacuum port";
        };
    }

    private static String link(String rows, int weeks, LocalDate from) {
        return "/weeks?by=" + rows + "&weeks=" + weeks + "&from=" + from;
    }

    private static LocalDate first(Sight sight, String asked) {
        try {
            return asked.isEmpty() ? sight.time().today() : LocalDate.parse(asked);
        } catch (DateTimeParseException e) {
            return sight.time().today();
        }
    }

    private static WeeksView.Link link(Sight sight, Grain grain, Reason r) {
        return new WeeksView.Link(
                sight.stepName(r.step()),
                Sight.cardLink(r.step()),
                sight.planned(r.step()).map(grain::begins).orElse(""),
                sight.named(r.words()));
    }

    private static Drawing chart(Sight sight, LocalDate first, int weeks, String rows, List<Reason> chain) {
        Instant from = first.atStartOfDay(sight.time().zone()).toInstant();
        Instant to = first.plusWeeks(weeks).atStartOfDay(sight.time().zone()).toInstant();
        List<WeekChart.Lane> lanes = new ArrayList<>();
        if (rows.equals("people")) {
            for (Worker w : sight.work().people()) {
                lanes.add(new WeekChart.Lane(
                        w.name(), bars(sight, from, to, s -> s.people().contains(w.id()), true)));
            }
        } else {
            for (Place p : sight.work().places()) {
                if (group(p).equals(rows)) {
                    lanes.add(new WeekChart.Lane(
                            p.name(), bars(sight, from, to, s -> s.places().contains(p.id()), false)));
                }
            }
        }
        WeekChart.Frame frame = new WeekChart.Frame(
                from,
                to,
                sight.time().zone(),
                MM_PER_WEEK / Math.min(weeks, 3) / 7,
                Optional.of(sight.time().now()),
                open(sight, first),
                lanes,
                chain.stream().map(r -> Sight.cardLink(r.step())).collect(Collectors.toSet()));
        return WeekChart.of(
                frame,
                "Weeks from " + sight.time().day(first) + ", a row for each " + singular(rows)
                        + ". The same stands below as a list.");
    }

    private static String group(Place p) {
        return switch (p.kind()) {
            case MOULD -> "moulds";
            case STAND -> "stands";
            case PORT -> "ports";
        };
    }

    /** When anyone is in the shop, merged; before now by the usual hours, since the plan knows only what lies ahead. */
    static List<WeekChart.Stretch> open(Sight sight, LocalDate first) {
        List<WeekChart.Stretch> all = new ArrayList<>();
        sight.work().people().stream()
                .flatMap(w -> w.present().stream())
                .forEach(s -> all.add(new WeekChart.Stretch(s.from(), s.to())));
        for (LocalDate d = first; !d.isAfter(sight.time().today()); d = d.plusDays(1)) {
            LocalDate day = d;
            sight.definition().shop().people().stream()
                    .flatMap(p -> p.hours().stream())
                    .filter(h -> h.days().contains(day.getDayOfWeek()))
                    .forEach(h -> all.add(new WeekChart.Stretch(
                            day.atTime(h.from()).atZone(sight.time().zone()).toInstant(),
                            day.atTime(h.to()).atZone(sight.time().zone()).toInstant())));
        }
        all.sort(Comparator.comparing(WeekChart.Stretch::from));
        List<WeekChart.Stretch> merged = new ArrayList<>();
        for (WeekChart.Stretch s : all) {
            WeekChart.Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && !s.from().isAfter(last.to())) {
                Instant end = s.to().isAfter(last.to()) ? s.to() : last.to();
                merged.set(merged.size() - 1, new WeekChart.Stretch(last.from(), end));
            } else {
                merged.add(s);
            }
        }
        return merged;
    }

    private static List<WeekChart.Bar> bars(
            Sight sight, Instant from, Instant to, Predicate<Plan.PlannedStep> whose, boolean handsOnly) {
        return sight.plan().steps().stream()
                .filter(whose)
                .filter(s -> s.end().isAfter(from) && s.start().isBefore(to))
                .map(s -> bar(sight, s, handsOnly))
                .toList();
    }

    private static WeekChart.Bar bar(Sight sight, Plan.PlannedStep s, boolean handsOnly) {
        Optional<WorkStep> work = sight.work(s.step());
        List<WeekChart.Stretch> hands = s.stretches().isEmpty()
                ? (s.handsEnd().isAfter(s.start())
                        ? List.of(new WeekChart.Stretch(s.start(), s.handsEnd()))
                        : List.of())
                : s.stretches().stream()
                        .map(x -> new WeekChart.Stretch(x.from(), x.to()))
                        .toList();
        String words = sight.stepName(s.step()) + ", " + sight.time().range(s.start(), s.handsEnd())
                + (s.end().isAfter(s.handsEnd())
                        ? ", then alone until " + sight.time().at(s.end())
                        : "")
                + (s.people().isEmpty() ? "" : ", " + sight.personNames(s.people()))
                + (sight.work().wishes().stream().anyMatch(w -> w.step().equals(s.step())) ? ", as wanted" : "");
        Instant end = handsOnly ? s.handsEnd() : s.end();
        return new WeekChart.Bar(
                work.map(WorkStep::title).orElse(s.step()) + ", "
                        + work.map(w -> sight.madeName(w.made())).orElse(""),
                words,
                Sight.cardLink(s.step()),
                hands,
                end.isBefore(s.start()) ? s.start() : end,
                work.filter(w -> w.air().equals("wet")
                                || w.kind().equals("cure")
                                || w.kind().equals("bag"))
                        .isPresent(),
                work.filter(w -> w.state() == WorkStep.State.DONE).isPresent(),
                shuts(sight, s));
    }

    /** When the window in which a following step must begin shuts, as far as it counts already. */
    private static Optional<Instant> shuts(Sight sight, Plan.PlannedStep s) {
        return sight.result().windows().stream()
                .filter(w -> w.from().equals(s.step()))
                .flatMap(w -> w.shuts().stream())
                .min(Comparator.naturalOrder());
    }

    private List<WeeksView.Day> days(Sight sight, Grain grain, LocalDate first, int weeks) {
        Map<LocalDate, List<WeeksView.Row>> byDay = new TreeMap<>();
        Map<String, String> wished = StandingWishes.byStep(sight.view());
        LocalDate end = first.plusWeeks(weeks);
        sight.plan().steps().stream()
                .sorted(Comparator.comparing(Plan.PlannedStep::start))
                .forEach(s -> {
                    LocalDate day = s.start().atZone(sight.time().zone()).toLocalDate();
                    if (!day.isBefore(first) && day.isBefore(end)) {
                        byDay.computeIfAbsent(day, d -> new ArrayList<>())
                                .add(row(sight, grain, s, wished.getOrDefault(s.step(), "")));
                    }
                });
        return byDay.entrySet().stream()
                .map(e -> new WeeksView.Day(sight.time().day(e.getKey()), e.getValue()))
                .toList();
    }

    private WeeksView.Row row(Sight sight, Grain grain, Plan.PlannedStep s, String wished) {
        return new WeeksView.Row(
                grain.words(s),
                sight.stepName(s.step()),
                sight.personNames(s.people()),
                sight.placeNames(s.places()),
                s.end().isAfter(s.handsEnd()) ? sight.time().at(s.end()) : "",
                Sight.cardLink(s.step()),
                why.of(sight.view(), s.step())
                        .map(r -> ReasonWords.of(sight, r))
                        .orElse(""),
                wished,
                sight.work(s.step())
                        .filter(w -> w.state() == WorkStep.State.TODO)
                        .map(w -> Sight.wishLink(w.id()))
                        .orElse(""));
    }
}
