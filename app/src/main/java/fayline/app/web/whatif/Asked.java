package fayline.app.web.whatif;

import fayline.app.web.frame.Sight;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.Temperature;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.whatif.Change;
import fayline.flow.whatif.LongerDay;
import fayline.flow.whatif.MoreHands;
import fayline.flow.whatif.StepInParts;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * One question as it stands in the address, {@code away/bram/2026-03-09/2026-03-13}.
 *
 * @param text as in the address
 * @param change what might be otherwise
 * @param words the same in words
 */
record Asked(String text, Change change, String words) {
    private static final int MOST_DAYS = 60;
    private static final int MOST_PARTS = 6;
    private static final int MOST_REST_H = 72;
    private static final int MOST_JOIN_MIN = 999;
    private static final int MOST_PEOPLE = 20;

    /** A question that cannot be read, with what was found and expected. */
    static final class UnreadableQuestionException extends Exception {
        private static final long serialVersionUID = 1;

        UnreadableQuestionException(String sentence) {
            super(sentence);
        }
    }

    /**
     * Reads a question.
     *
     * @throws UnreadableQuestionException with what was found and what was expected
     */
    static Asked read(Sight sight, String text) throws UnreadableQuestionException {
        String[] p = text.split("/", -1);
        Definition d = sight.definition();
        switch (p[0] + p.length) {
            case "away4" -> {
                known(d.shop().people().find(p[1]).isPresent(), p[1], "one of the crew");
                LocalDate from = day(p[2], "first day away");
                LocalDate to = day(p[3], "last day away");
                known(!to.isBefore(from), p[3], "a last day not before the first");
                return new Asked(
                        text,
                        new Change.Away(p[1], from, to),
                        sight.personName(p[1]) + " away " + sight.time().day(from)
                                + (to.equals(from) ? "" : " to " + sight.time().day(to)));
            }
            case "mould2" -> {
                known(d.shop().moulds().find(p[1]).isPresent(), p[1], "a mould of the shop");
                return new Asked(text, new Change.MoreMoulds(p[1]), "One more of " + sight.placeName(p[1]));
            }
            case "air4" -> {
                Temperature t = temperature(p[1]);
                LocalDate from = day(p[2], "first day");
                int days = whole(p[3], 1, MOST_DAYS, "days");
                return new Asked(
                        text,
                        new Change.ShopAir(t, from, days),
                        "Shop at " + sight.format().temperature(t) + " from "
                                + sight.time().day(from) + " for " + days + (days == 1 ? " day" : " days"));
            }
            case "late3" -> {
                known(d.deliveries().find(p[1]).isPresent(), p[1], "something on order");
                int days = whole(p[2], 1, MOST_DAYS, "days late");
                return new Asked(
                        text,
                        new Change.LateDelivery(p[1], days),
                        sight.stuffName(d.deliveries().get(p[1]).what()) + " " + days + (days == 1 ? " day" : " days")
                                + " later");
            }
            case "day2" -> {
                LocalDate date = day(p[1], "working day");
                return new Asked(
                        text,
                        new Change.WorkingDay(date),
                        "Work on " + sight.time().day(date));
            }
            case "more2" -> {
                known(d.shop().people().find(p[1]).isPresent(), p[1], "one of the crew");
                return new Asked(
                        text,
                        new Change.OneMore(p[1]),
                        "One more in the crew, with the skills and hours of " + sight.personName(p[1]));
            }
            case "parts5" -> {
                String step = step(sight, p[4]);
                int parts = whole(p[1], 2, MOST_PARTS, "parts");
                int rest = whole(p[2], 0, MOST_REST_H, "hours between the parts");
                int join = whole(p[3], 0, MOST_JOIN_MIN, "person-minutes to join them");
                return new Asked(
                        text,
                        new StepInParts(step, parts, rest * 60, join),
                        sight.stepName(step) + " in " + parts + " parts, " + rest + " h between, " + join
                                + " person-min to join");
            }
            case "hands3" -> {
                String step = step(sight, p[2]);
                int people = whole(p[1], 1, MOST_PEOPLE, "people");
                return new Asked(
                        text, new MoreHands(step, people), sight.stepName(step) + " by " + people + " at once");
            }
            case "long3" -> {
                LocalDate date = day(p[1], "longer day");
                LocalTime until = hour(p[2]);
                return new Asked(
                        text,
                        new LongerDay(date, until),
                        "All who are in stay until " + until + ", "
                                + sight.time().day(date));
            }
            default ->
                throw new UnreadableQuestionException(
                        "A question in the address: found \"" + text + "\", expected one that this page's forms make.");
        }
    }

    /** A way out as it stands in the address. */
    static String text(Change way) {
        if (way instanceof StepInParts s) {
            return "parts/" + s.parts() + "/" + s.restMin() / 60 + "/" + s.joinPersonMin() + "/" + plain(s.step());
        }
        if (way instanceof MoreHands h) {
            return "hands/" + h.people() + "/" + plain(h.step());
        }
        if (way instanceof LongerDay d) {
            return "long/" + d.date() + "/" + d.until();
        }
        throw new IllegalArgumentException("no way out: " + way);
    }

    /** A step's name without the sign that parts a question. */
    static String plain(String step) {
        return step.replace('/', ':');
    }

    /** The step that is asked about, where it is one. */
    Optional<String> step() {
        if (change instanceof StepInParts s) {
            return Optional.of(s.step());
        }
        return change instanceof MoreHands h ? Optional.of(h.step()) : Optional.empty();
    }

    /** The step that {@link #plain} made a text of. */
    static String stepId(String text) {
        return text.replace(':', '/');
    }

    private static String step(Sight sight, String text) throws UnreadableQuestionException {
        String id = stepId(text);
        known(sight.work(id).isPresent(), id, "a step of the plan");
        return id;
    }

    private static LocalTime hour(String text) throws UnreadableQuestionException {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeParseException e) {
            throw new UnreadableQuestionException("The hour: found \"" + text + "\", expected one such as 20:00.");
        }
    }

    private static void known(boolean is, String found, String expected) throws UnreadableQuestionException {
        if (!is) {
            throw new UnreadableQuestionException("Found \"" + found + "\", expected " + expected + ".");
        }
    }

    private static LocalDate day(String text, String what) throws UnreadableQuestionException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException e) {
            throw new UnreadableQuestionException(
                    "The " + what + ": found \"" + text + "\", expected a day such as 2026-03-09.");
        }
    }

    private static int whole(String text, int least, int most, String what) throws UnreadableQuestionException {
        if (!text.matches("[0-9]{1,3}") || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            throw new UnreadableQuestionException(
                    "The " + what + ": found \"" + text + "\", expected a number from " + least + " to " + most + ".");
        }
        return Integer.parseInt(text);
    }

    private static Temperature temperature(String text) throws UnreadableQuestionException {
        try {
            return QuantityParser.parse(text, QuantityKind.TEMPERATURE).value();
        } catch (UnreadableQuantityException e) {
            throw new UnreadableQuestionException(
                    "The temperature: found \"" + text + "\", expected one such as 16 degC or 61 degF.");
        }
    }
}
