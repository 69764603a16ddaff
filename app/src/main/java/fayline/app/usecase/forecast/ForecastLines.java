package fayline.app.usecase.forecast;

import fayline.app.usecase.view.ShopView;
import fayline.flow.forecast.PlanForecast;
import fayline.flow.forecast.PlanForecast.End;
import fayline.method.forecast.PaceForecastResult;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A forecast as lines of text, for the command line. */
public final class ForecastLines {
    private static final int MOST_HOLDING = 5;

    private ForecastLines() {}

    /** The lines. */
    public static List<String> of(ShopView view, PlanForecast forecast) {
        List<String> lines = new ArrayList<>();
        lines.add("By the plan, " + forecast.trials() + " trial plans: half of them by, four in five by");
        for (End e : forecast.ends()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  %s  %s  %s%s",
                    day(view, e.at(0.5)),
                    day(view, e.at(0.8)),
                    e.target().name(),
                    e.target().due().map(d -> ", due " + d).orElse("")));
        }
        lines.add("What most often holds the end:");
        forecast.holding().stream()
                .limit(MOST_HOLDING)
                .forEach(h -> lines.add(String.format(Locale.ROOT, "  %3.0f %%  %s", 100 * h.share(), h.step())));
        history(view, lines);
        ForecastQuestion question = ForecastQuestion.of(view);
        question.lateAssumed()
                .forEach(d -> lines.add("Assumed: delivery " + d + " states no latest day; it comes up to "
                        + ForecastQuestion.LATE_DAYS + " days late"));
        if (question.timesAssumed()) {
            lines.add("Assumed: the spread of times, since no step is finished yet");
        }
        return lines;
    }

    private static String day(ShopView view, Optional<Instant> at) {
        return at.map(t -> t.atZone(view.zone()).toLocalDate())
                .map(LocalDate::toString)
                .orElse("   never  ");
    }

    private static void history(ShopView view, List<String> lines) {
        Optional<History> history = History.of(view);
        if (history.isEmpty()) {
            lines.add("By history: nothing yet; it takes a finished step and a whole month of work.");
            return;
        }
        PaceForecastResult r = history.get().answer();
        lines.add(String.format(
                Locale.ROOT,
                "By history: rate factor %.2f, pace %.0f h a month against %.0f planned, %.0f h in all, %.0f to go",
                r.rateFactor(),
                r.paceH(),
                history.get().question().plannedPerMonthH(),
                r.totalH(),
                r.remainingH()));
        r.spread()
                .ifPresentOrElse(
                        s -> lines.add(String.format(
                                Locale.ROOT,
                                "  months in all: %.1f to %.1f, half by %.1f, four in five by %.1f",
                                s.p10(),
                                s.p90(),
                                s.p50(),
                                s.p80())),
                        () -> lines.add("  no spread yet: " + String.join("; ", r.missing())));
        lines.add(String.format(
                Locale.ROOT,
                "  as planned %.1f; with right estimates alone %.1f; with the planned pace alone %.1f",
                r.monthsPlanned(),
                r.monthsIfEstimatesHeld(),
                r.monthsIfPaceHeld()));
    }
}
