package fayline.app.usecase.forecast;

import fayline.app.usecase.view.ShopView;
import fayline.flow.forecast.JoinedEnd;
import fayline.flow.forecast.PlanForecast.End;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.project.ProjectFacts.Pace;
import fayline.method.forecast.PaceForecast;
import fayline.method.forecast.PaceForecast.Finished;
import fayline.method.forecast.PaceForecastCalculator;
import fayline.method.forecast.PaceForecastResult;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the shop's own history says about the end.
 *
 * @param question what was asked: hours, months, changes of pace
 * @param answer the answer
 * @param first the first month that counts
 * @param changed changes of pace that count, in words
 */
public record History(PaceForecast question, PaceForecastResult answer, YearMonth first, List<Pace> changed) {
    /** A project begun later in a month than this makes that month no whole one. */
    private static final int LATE_START = 7;

    private static final double DAYS_PER_MONTH = 365.25 / 12;
    private static final int MONTHS_AHEAD = 120;
    private static final long SEED = 1;

    /** Copies the list. */
    public History {
        changed = List.copyOf(changed);
    }

    /**
     * Looks back.
     *
     * @return empty while no step is finished, no whole month is worked, or nothing is planned
     */
    public static Optional<History> of(ShopView view) {
        List<Finished> finished = view.rates().rates().counted().stream()
                .map(w -> new Finished(w.estimatedMin() / 60, w.bookedMin() / 60))
                .toList();
        YearMonth now = YearMonth.from(view.now().atZone(view.zone()));
        LocalDate start = view.definition().facts().start();
        YearMonth first = YearMonth.from(start).plusMonths(start.getDayOfMonth() > LATE_START ? 1 : 0);
        List<Double> months = new ArrayList<>();
        for (YearMonth m = first; m.isBefore(now); m = m.plusMonths(1)) {
            months.add(view.rates().months().getOrDefault(m, 0.0));
        }
        double planned = plannedPerMonthH(view);
        double worked = months.stream().mapToDouble(h -> h).sum();
        if (finished.isEmpty()
                || !(worked > 0)
                || !(planned > 0)
                || !(view.rates().estimatedMin() > 0)) {
            return Optional.empty();
        }
        List<Pace> paces = view.definition().facts().paces();
        PaceForecast question = new PaceForecast(
                view.rates().estimatedMin() / 60, finished, months, planned, changes(paces, now), SEED);
        return Optional.of(new History(question, PaceForecastCalculator.calculate(question), first, paces));
    }

    private static List<Double> changes(List<Pace> paces, YearMonth now) {
        List<Double> changes = new ArrayList<>();
        for (int i = 0; !paces.isEmpty() && i < MONTHS_AHEAD; i++) {
            LocalDate middle = now.plusMonths(i).atDay(15);
            double share = 1;
            for (Pace p : paces) {
                share = p.from().isAfter(middle) ? share : p.share();
            }
            changes.add(share);
        }
        return changes;
    }

    /** Hours a month that the plan books from now to its end. */
    private static double plannedPerMonthH(ShopView view) {
        double minutes = 0;
        Instant last = view.now();
        for (PlannedStep p : view.plan().steps()) {
            for (Stretch s : p.stretches()) {
                Instant from = s.from().isAfter(view.now()) ? s.from() : view.now();
                if (s.to().isAfter(from)) {
                    minutes += Duration.between(from, s.to()).toMinutes()
                            * (double) p.people().size();
                    last = s.to().isAfter(last) ? s.to() : last;
                }
            }
        }
        double days = Duration.between(view.now(), last).toMinutes() / 1440.0;
        return days > 0 ? minutes / 60 / days * DAYS_PER_MONTH : 0;
    }

    /**
     * An end by the plan at the shop's own pace.
     *
     * @return empty where the spread of the pace is not known
     */
    public Optional<End> joined(End end, Instant now) {
        return answer.paceDeviationH()
                .map(s -> JoinedEnd.of(
                        end,
                        now,
                        question.plannedPerMonthH(),
                        answer.paceH(),
                        s / Math.sqrt(question.monthsH().size()),
                        SEED));
    }

    /** The month in which a number of months from the first is over. */
    public YearMonth month(double months) {
        return first.plusMonths((long) Math.ceil(months) - 1);
    }
}
