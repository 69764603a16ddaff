package fayline.app.web.forecast;

import fayline.app.drawing.SvgRenderer;
import fayline.app.drawing.forecast.EndsDrawing;
import fayline.app.drawing.forecast.HoursDrawing;
import fayline.app.usecase.forecast.ForecastQuestion;
import fayline.app.usecase.forecast.History;
import fayline.app.usecase.forecast.Slips;
import fayline.app.usecase.forecast.Trials;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.forecast.PlanForecast;
import fayline.flow.forecast.PlanForecast.End;
import fayline.method.forecast.PaceForecastResult;
import io.javalin.config.RoutesConfig;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** When the work will be done: by trial plans, by the shop's own history, and by both together. */
public final class ForecastPage implements Page {
    private static final int MOST_HOLDING = 8;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private final Sights sights;
    private final Trials trials;

    /** Makes the page. */
    public ForecastPage(Sights sights, Trials trials) {
        this.sights = sights;
        this.trials = trials;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/forecast", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "forecast/forecast.jte",
                            sights.frame(visit, sight, "When will it be done?", "/weeks"),
                            view(sight, trials.look(sight.view()))));
        });
    }

    static ForecastView view(Sight sight, Trials.Progress progress) {
        Optional<History> history = History.of(sight.view());
        return new ForecastView(
                progress.forecast().isPresent()
                        ? ""
                        : progress.done() + " of " + progress.of() + " trial plans are made.",
                progress.forecast().map(f -> ends(sight, f)).orElse(""),
                progress.forecast().map(f -> rows(sight, f)).orElse(List.of()),
                progress.forecast().map(f -> holding(sight, f)).orElse(List.of()),
                history.map(ForecastPage::facts).orElse(List.of()),
                history.flatMap(ForecastPage::hours).orElse(""),
                Slips.of(sight.view()).stream()
                        .map(s -> new ForecastView.Slipped(s.why().words(), s.steps(), number(s.beyondH(), 1) + " h"))
                        .toList(),
                joined(sight, progress.forecast(), history),
                assumed(sight),
                sight.definition().facts().paces().stream()
                        .map(p -> "From " + sight.time().day(p.from()) + " at " + percent(p.share())
                                + " of the pace so far: " + p.why() + ".")
                        .toList());
    }

    private static List<String> assumed(Sight sight) {
        ForecastQuestion question = ForecastQuestion.of(sight.view());
        List<String> all = new ArrayList<>();
        for (String id : question.lateAssumed()) {
            String what = sight.definition().deliveries().get(id).what();
            all.add("The delivery of " + sight.stuffName(what) + " states no latest day: up to "
                    + ForecastQuestion.LATE_DAYS + " days late.");
        }
        if (question.timesAssumed()) {
            all.add("No step is finished yet: times stray by a third either way.");
        }
        return all;
    }

    private static LocalDate day(Sight sight, Instant at) {
        return at.atZone(sight.time().zone()).toLocalDate();
    }

    private static String ends(Sight sight, PlanForecast f) {
        List<EndsDrawing.Row> rows = f.ends().stream()
                .filter(e -> e.at(0.5).isPresent())
                .map(e -> new EndsDrawing.Row(
                        e.target().name(),
                        day(sight, e.at(0.1).orElseThrow()),
                        day(sight, e.at(0.5).orElseThrow()),
                        e.at(0.8).map(t -> day(sight, t)),
                        e.at(0.9).map(t -> day(sight, t)),
                        e.target().due()))
                .toList();
        return rows.isEmpty()
                ? ""
                : SvgRenderer.forScreen()
                        .render(EndsDrawing.of(
                                sight.time().today(), rows, "Ends as spreads; the same stands below as a table."));
    }

    private static List<ForecastView.Row> rows(Sight sight, PlanForecast f) {
        List<ForecastView.Row> rows = new ArrayList<>();
        for (End e : f.ends()) {
            Optional<LocalDate> half = e.at(0.5).map(t -> day(sight, t));
            rows.add(new ForecastView.Row(
                    e.target().name(),
                    half.map(sight.time()::day).orElse("not in the weeks planned ahead"),
                    e.at(0.8).map(t -> sight.time().day(day(sight, t))).orElse("not in the weeks planned ahead"),
                    e.target().due().map(sight.time()::day).orElse(""),
                    e.inTime(sight.time().zone()).map(ForecastPage::trials).orElse(""),
                    e.target()
                            .due()
                            .filter(d -> half.filter(h -> !h.isAfter(d)).isEmpty())
                            .isPresent()));
        }
        return rows;
    }

    private static List<ForecastView.Holding> holding(Sight sight, PlanForecast f) {
        return f.holding().stream()
                .limit(MOST_HOLDING)
                .map(h -> new ForecastView.Holding(
                        sight.stepName(h.step()), percent(h.share()), Sight.cardLink(h.step())))
                .toList();
    }

    private static String percent(double share) {
        long p = Math.round(100 * share);
        return share > 0 && p == 0 ? "under 1 %" : share < 1 && p == 100 ? "over 99 %" : p + " %";
    }

    /** Of a number of trials never "100 %": the trials know only what they were told. */
    private static String trials(double share) {
        return share >= 1 ? "in every trial" : share <= 0 ? "in no trial" : percent(share);
    }

    private static String months(double months) {
        return number(months, months < 12 ? 1 : 0);
    }

    private static List<ForecastView.Fact> facts(History h) {
        PaceForecastResult r = h.answer();
        List<ForecastView.Fact> facts = new ArrayList<>();
        double booked = h.question().monthsH().stream().mapToDouble(x -> x).sum();
        facts.add(new ForecastView.Fact(
                "Rate factor",
                number(r.rateFactor(), 2)
                        + r.rateDeviation().map(d -> " \u00b1 " + number(d, 2)).orElse(""),
                "Hours booked on " + h.question().finished().size() + " finished steps against the recipes' estimates ["
                        + "cochran1977]. Above 1 the work takes longer than estimated."));
        facts.add(new ForecastView.Fact(
                "Pace",
                number(r.paceH(), 0) + " h a month"
                        + r.paceDeviationH()
                                .map(d -> ", \u00b1 " + number(d, 0) + " from month to month")
                                .orElse(""),
                number(booked, 0) + " h at steps in " + h.question().monthsH().size() + " whole months; the plan books "
                        + number(h.question().plannedPerMonthH(), 0) + " h a month."));
        facts.add(new ForecastView.Fact(
                "Hours in all",
                number(r.totalH(), 0) + " h",
                "Estimated " + number(h.question().totalH(), 0) + " h; what is left is multiplied by the rate factor: "
                        + number(r.remainingH(), 0) + " h to go."));
        facts.add(new ForecastView.Fact(
                "Months in all",
                r.spread()
                        .map(s -> months(s.p10()) + " to " + months(s.p90()) + ", half of the outcomes by "
                                + months(s.p50()) + " (" + month(h, s.p50()) + "), four in five by "
                                + months(s.p80()) + " (" + month(h, s.p80()) + ")")
                        .orElse("no spread can be given yet: " + String.join("; ", r.missing())),
                "At this factor and pace " + months(r.months()) + ". As planned " + months(r.monthsPlanned())
                        + "; with right estimates alone " + months(r.monthsIfEstimatesHeld())
                        + "; with the planned pace alone " + months(r.monthsIfPaceHeld()) + "."));
        return facts;
    }

    private static String month(History h, double months) {
        YearMonth m = h.month(months);
        return MONTH.format(m);
    }

    private static String number(double v, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", v);
    }

    private static Optional<String> hours(History h) {
        return h.answer()
                .spread()
                .map(s -> SvgRenderer.forScreen()
                        .render(HoursDrawing.of(new HoursDrawing.Hours(
                                h.question().monthsH(),
                                h.question().totalH(),
                                h.answer().totalH(),
                                h.question().plannedPerMonthH(),
                                s.p10(),
                                s.p50(),
                                s.p90(),
                                "Hours booked so far, and the fan of outcomes to the end; the figures stand above."))));
    }

    private static List<String> joined(Sight sight, Optional<PlanForecast> forecast, Optional<History> history) {
        if (forecast.isEmpty()) {
            return List.of();
        }
        if (history.isEmpty()) {
            return List.of("The shop has no whole month of work behind it yet; only the plan speaks.");
        }
        List<String> lines = new ArrayList<>();
        for (End e : forecast.get().ends()) {
            Optional<End> joined = history.get().joined(e, sight.time().now());
            if (joined.isEmpty()) {
                return List.of("The spread of the pace is not known yet: "
                        + String.join("; ", history.get().answer().missing()) + ".");
            }
            if (e.target().due().isPresent() || e.target().id().isEmpty()) {
                lines.add(e.target().name() + ": half of the outcomes by "
                        + joined.get()
                                .at(0.5)
                                .map(t -> sight.time().day(day(sight, t)))
                                .orElse("never within the plan")
                        + ", four in five by "
                        + joined.get()
                                .at(0.8)
                                .map(t -> sight.time().day(day(sight, t)))
                                .orElse("never within the plan")
                        + e.target()
                                .due()
                                .map(d -> "; due " + sight.time().day(d))
                                .orElse("") + ".");
            }
        }
        return lines;
    }
}
