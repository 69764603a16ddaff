package fayline.app.web.whatif;

import java.util.List;

/**
 * What the page on cold days shows.
 *
 * @param days the days
 * @param heats what heating would buy
 * @param from the first cold day, in words
 * @param span how many days lie from the first to the last
 */
public record ColdView(List<Day> days, List<Heat> heats, String from, int span) {
    /** Copies the lists. */
    public ColdView {
        days = List.copyOf(days);
        heats = List.copyOf(heats);
    }

    /**
     * A day.
     *
     * @param name the day
     * @param air what air is expected
     * @param assumed whether nobody forecast it and the usual day is taken
     * @param why what is outside the limits
     * @param warm stands where wet work may begin all the same; empty for none
     * @param wet wet steps that the plan has there
     * @param instead what can be done
     * @param more how many more there are
     */
    public record Day(
            String name,
            String air,
            boolean assumed,
            List<String> why,
            String warm,
            List<Step> wet,
            List<Step> instead,
            int more) {
        /** Copies the lists. */
        public Day {
            why = List.copyOf(why);
            wet = List.copyOf(wet);
            instead = List.copyOf(instead);
        }
    }

    /**
     * A step.
     *
     * @param name the step
     * @param when when the plan has it
     * @param hands its hands
     * @param link its card
     */
    public record Step(String name, String when, String hands, String link) {}

    /**
     * What heating buys.
     *
     * @param to the temperature
     * @param ends when all ends then
     * @param difference against the plan as it is
     * @param worse whether later
     * @param link the same among the questions
     */
    public record Heat(String to, String ends, String difference, boolean worse, String link) {}
}
