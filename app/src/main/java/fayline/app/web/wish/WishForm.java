package fayline.app.web.wish;

import fayline.app.usecase.act.WishForSteps.Asked;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Visit;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.project.shop.LeadWish;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the form of a step asks for, by the button that was pressed. */
final class WishForm {
    private static final int QUARTER = 15;

    private final Visit visit;
    private final Sight sight;
    private final String step;

    WishForm(Visit visit, Sight sight, String step) {
        this.visit = visit;
        this.sight = sight;
        this.step = step;
    }

    List<Asked> asked() {
        String[] pressed = visit.needed("do", "What is wished").split(" ", 2);
        String on = pressed.length > 1 ? pressed[1] : "";
        return switch (pressed[0]) {
            case "with" -> List.of(Asked.of(step, LeadWish.Kind.WITH, on));
            case "without" -> List.of(Asked.of(step, LeadWish.Kind.WITHOUT, on));
            case "with-other" -> List.of(Asked.of(step, LeadWish.Kind.WITH, visit.needed("person", "Who else")));
            case "without-other" -> List.of(Asked.of(step, LeadWish.Kind.WITHOUT, visit.needed("person", "Who else")));
            case "at" -> List.of(Asked.of(step, LeadWish.Kind.AT, on));
            case "away" -> List.of(Asked.of(step, LeadWish.Kind.AWAY, on));
            case "at-other" -> List.of(Asked.of(step, LeadWish.Kind.AT, visit.needed("place", "Where else")));
            case "away-other" -> List.of(Asked.of(step, LeadWish.Kind.AWAY, visit.needed("place", "Where else")));
            case "start" -> List.of(start());
            case "half-day" -> List.of(halfDay());
            case "not-before" -> List.of(Asked.start(step, Optional.of(typed()), Optional.empty()));
            case "swap" -> swap();
            default -> throw Refusal.input("There is nothing to wish called \"" + pressed[0] + "\".");
        };
    }

    /** The start that the page showed: the plan may have moved since. */
    private LocalDateTime shown() {
        return time(visit.needed("shown", "The start that was shown"));
    }

    private Asked start() {
        LocalDateTime at = shown();
        return Asked.start(step, Optional.of(at), Optional.of(at.plusMinutes(QUARTER)));
    }

    private Asked halfDay() {
        LocalDateTime at = shown();
        LocalDate day = at.toLocalDate();
        LocalDateTime noon = day.atTime(LocalTime.NOON);
        return at.isBefore(noon)
                ? Asked.start(step, Optional.of(day.atStartOfDay()), Optional.of(noon))
                : Asked.start(
                        step, Optional.of(noon), Optional.of(day.plusDays(1).atStartOfDay()));
    }

    private LocalDateTime typed() {
        String text = visit.needed("from", "The day and time");
        LocalDateTime typed = time(text);
        if (!typed.atZone(sight.time().zone()).toInstant().isAfter(sight.time().now())) {
            throw Refusal.input("Not before " + text.replace('T', ' ')
                    + ": that moment is over, so it would bind nobody. Choose a later one.");
        }
        return typed;
    }

    private static LocalDateTime time(String text) {
        try {
            return LocalDateTime.parse(text);
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + text + "\" is no time. Expected one such as 2026-03-02T07:30.");
        }
    }

    /** Each step is wished with those of the other, and without its own as far as they do not belong to both. */
    private List<Asked> swap() {
        String other = visit.needed("swap", "The other step");
        List<String> mine = people(step);
        List<String> theirs = people(other);
        List<Asked> asked = new ArrayList<>();
        change(step, mine, theirs, asked);
        change(other, theirs, mine, asked);
        return asked;
    }

    private static void change(String step, List<String> out, List<String> in, List<Asked> asked) {
        in.forEach(p -> asked.add(Asked.of(step, LeadWish.Kind.WITH, p)));
        out.stream().filter(p -> !in.contains(p)).forEach(p -> asked.add(Asked.of(step, LeadWish.Kind.WITHOUT, p)));
    }

    private List<String> people(String of) {
        List<String> people = sight.planned(of).map(PlannedStep::people).orElse(List.of());
        if (people.isEmpty()) {
            throw Refusal.input("Nobody is planned for " + sight.stepName(of) + ", so there is nobody to swap.");
        }
        return people;
    }
}
