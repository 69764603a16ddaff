package fayline.app.web.whatif;

import fayline.app.usecase.view.WhatIf.Goal;
import fayline.app.usecase.view.WhatIf.Outcome;
import fayline.app.web.frame.Sight;
import fayline.app.web.whatif.WhatIfView.Cell;
import fayline.app.web.whatif.WhatIfView.Row;
import fayline.flow.planner.goal.PlanScore;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Outcomes side by side, in the lead's words. */
final class Comparison {
    private static final double NOTHING = 0.05;

    private final Sight sight;
    private final List<Outcome> outcomes;
    private final Set<String> steps;

    /** Compares outcomes; the steps are those that were asked about. */
    Comparison(Sight sight, List<Outcome> outcomes, Set<String> steps) {
        this.sight = sight;
        this.outcomes = outcomes;
        this.steps = new TreeSet<>(steps);
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(dates("All planned work ends", Outcome::finish));
        for (String step : steps) {
            rows.add(dates(
                    "Hands leave " + sight.stepName(step),
                    o -> Optional.ofNullable(o.done().get(step))));
        }
        for (int i = 0; i < outcomes.get(0).goals().size(); i++) {
            int n = i;
            Goal g = outcomes.get(0).goals().get(i);
            if (g.end().filter(e -> e.isAfter(sight.time().now())).isPresent()) {
                rows.add(dates(
                        g.name() + ", due "
                                + sight.time()
                                        .day(g.due()
                                                .minusSeconds(1)
                                                .atZone(sight.time().zone())
                                                .toLocalDate()),
                        o -> o.goals().get(n).end()));
            }
        }
        rows.add(counts("Hands on all that is planned", Outcome::handsHours, " h", 1));
        rows.add(counts("Windows missed", Outcome::missed, "", 0));
        rows.add(counts("Extra work for missed windows", o -> o.score().amount(PlanScore.Kind.WINDOWS), " h", 1));
        rows.add(counts("Nothing to do, coming fortnight", o -> o.score().amount(PlanScore.Kind.IDLE), " h", 0));
        rows.add(counts("Late-evening work", o -> o.score().amount(PlanScore.Kind.EVENING), " h", 1));
        rows.add(counts("Steps without a place in the plan", o -> o.score().amount(PlanScore.Kind.UNPLANNED), "", 0));
        rows.add(new Row(
                "Steps that begin at another time",
                outcomes.stream()
                        .map(o -> new Cell(Long.toString(o.moved(outcomes.get(0))), "", false))
                        .toList()));
        if (outcomes.stream().anyMatch(o -> o.broken() > 0)) {
            rows.add(counts("Rules broken", Outcome::broken, "", 0));
        }
        return rows;
    }

    private Row dates(String name, Function<Outcome, Optional<Instant>> of) {
        Optional<Instant> base = of.apply(outcomes.get(0));
        List<Cell> cells = new ArrayList<>();
        for (Outcome o : outcomes) {
            Optional<Instant> at = of.apply(o);
            String difference = "";
            boolean worse = at.isEmpty() && base.isPresent();
            if (at.isPresent() && base.isPresent()) {
                long min = Duration.between(base.get(), at.get()).toMinutes();
                difference = min == 0 ? "" : span(Math.abs(min)) + (min > 0 ? " later" : " sooner");
                worse = min > 0;
            }
            cells.add(new Cell(at.map(sight.time()::at).orElse("not planned to its end"), difference, worse));
        }
        return new Row(name, cells);
    }

    private static String span(long minutes) {
        long days = minutes / 1440;
        long hours = minutes % 1440 / 60;
        if (days > 0) {
            return days + (days == 1 ? " day" : " days") + (hours > 0 && days < 3 ? " " + hours + " h" : "");
        }
        return hours > 0 ? hours + " h" : minutes + " min";
    }

    private Row counts(String name, ToDoubleFunction<Outcome> of, String unit, int decimals) {
        double base = of.applyAsDouble(outcomes.get(0));
        List<Cell> cells = new ArrayList<>();
        for (Outcome o : outcomes) {
            double v = of.applyAsDouble(o);
            double off = v - base;
            String difference = Math.abs(off) < NOTHING
                    ? ""
                    : number(Math.abs(off), decimals) + unit + (off > 0 ? " more" : " less");
            cells.add(new Cell(number(v, decimals) + unit, difference, off > NOTHING));
        }
        return new Row(name, cells);
    }

    private static String number(double v, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", v);
    }
}
