package fayline.flow.card;

import fayline.flow.card.Card.WindowLine;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.air.ClockReader;
import fayline.flow.result.step.StepResult;
import fayline.flow.result.step.StepWindow;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The windows in which a step must begin and those that it opens, with their moments as far as the plan tells them. */
final class CardWindows {
    private final ProjectResult result;
    private final ClockReader clocks;
    private final Map<String, PlannedStep> planned = new HashMap<>();

    CardWindows(ProjectResult result, Plan plan) {
        this.result = result;
        this.clocks = new ClockReader(result.work().clocks());
        plan.steps().forEach(p -> planned.put(p.step(), p));
    }

    List<WindowLine> lines(StepResult step) {
        List<WindowLine> lines = new ArrayList<>();
        for (StepWindow w : step.windows()) {
            if (says(w)) {
                lines.add(line(w, w.fromTitle(), true));
            }
        }
        for (StepResult later : result.steps()) {
            for (StepWindow w : later.windows()) {
                if (w.link().step().equals(step.id()) && says(w)) {
                    lines.add(line(w, later.title(), false));
                }
            }
        }
        return lines;
    }

    private static boolean says(StepWindow w) {
        return !w.opens().isEmpty() || !w.shuts().isEmpty();
    }

    private WindowLine line(StepWindow w, String what, boolean before) {
        Link link = w.link();
        Optional<Instant> from = moment(link);
        Optional<Instant> opens = from.flatMap(f -> clocks.over(link.opens(), f));
        Optional<Instant> shuts = from.flatMap(f -> link.shuts().flatMap(s -> clocks.lastMinute(s, f)));
        String moment = switch (link.from()) {
            case "start" -> "from its start";
            case "hands-end" -> "from when the hands leave";
            default -> "from its end";
        };
        StringBuilder says = new StringBuilder(moment);
        if (!w.opens().isEmpty()) {
            says.append(", not before ").append(w.opens());
        }
        if (!w.shuts().isEmpty()) {
            says.append(", not after ").append(w.shuts());
        }
        if (!w.why().isEmpty()) {
            says.append(" (").append(w.why()).append(')');
        }
        return new WindowLine(what, before, opens, shuts, says.toString(), miss(w));
    }

    private static String miss(StepWindow w) {
        if (w.shuts().isEmpty()) {
            return "";
        }
        return w.miss()
                .map(m -> "Missed: " + m.does() + " " + m.personMinutes() + " person-minutes more.")
                .orElse("It may not be missed: the work would be lost.");
    }

    private Optional<Instant> moment(Link link) {
        PlannedStep p = planned.get(link.step());
        if (p != null) {
            return Optional.of(
                    switch (link.from()) {
                        case "start" -> p.start();
                        case "hands-end" -> p.handsEnd();
                        default -> p.end();
                    });
        }
        var actual = result.step(link.step()).map(s -> s.work().actual());
        return switch (link.from()) {
            case "start" -> actual.flatMap(a -> a.started());
            case "hands-end" -> actual.flatMap(a -> a.handsEnded());
            default -> actual.flatMap(a -> a.ended());
        };
    }
}
