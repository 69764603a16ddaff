package fayline.app.web.plan;

import fayline.app.web.fit.FitLinks;
import fayline.app.web.frame.StateWord;
import java.util.List;

/**
 * What Today shows.
 *
 * @param day the day in words
 * @param crew each person with what is now and next
 * @param clocks cures that run, each with its next state that a step waits for
 * @param others states on their way that nothing waits for
 * @param reached states that were reached since yesterday
 * @param windows windows that count
 * @param due fits to read or bond within two weeks
 * @param holding what holds other work up
 * @param told that the crew was told a plan today, in a sentence; empty where it was not
 * @param moved what moved since then or since this morning, in sentences
 * @param air the shop's air
 * @param troubles what needs a decision, in sentences
 * @param cards the address of the day's printed cards
 * @param empty whether there is nothing planned at all
 */
public record TodayView(
        String day,
        List<Crew> crew,
        List<Clock> clocks,
        List<Clock> others,
        List<Clock> reached,
        List<Window> windows,
        List<Due> due,
        List<Holding> holding,
        String told,
        List<String> moved,
        Air air,
        List<String> troubles,
        String cards,
        boolean empty) {
    /** How long before a window shuts its clock rings, in minutes. Common practice, no source. */
    public static final int RINGS_BEFORE_MIN = 10;

    private static final int MOST_MOVED = 6;

    /** Copies the lists. */
    public TodayView {
        crew = List.copyOf(crew);
        clocks = List.copyOf(clocks);
        others = List.copyOf(others);
        reached = List.copyOf(reached);
        windows = List.copyOf(windows);
        due = List.copyOf(due);
        holding = List.copyOf(holding);
        moved = List.copyOf(moved);
        troubles = List.copyOf(troubles);
    }

    /** The moves that are shown at once. */
    public List<String> movedFirst() {
        return moved.subList(0, Math.min(MOST_MOVED, moved.size()));
    }

    /** The other moves. */
    public List<String> movedRest() {
        return moved.subList(Math.min(MOST_MOVED, moved.size()), moved.size());
    }

    /** Whether someone of the crew is known to be at the screen. */
    public boolean known() {
        return crew.stream().anyMatch(Crew::here);
    }

    /**
     * A person.
     *
     * @param name the name
     * @param here whether this is who is at the screen
     * @param hours when in the shop today, in words
     * @param now what is at hand
     * @param next what follows
     */
    public record Crew(String name, boolean here, String hours, List<Job> now, List<Job> next) {
        /** Copies the lists. */
        public Crew {
            now = List.copyOf(now);
            next = List.copyOf(next);
        }
    }

    /**
     * A step of a person.
     *
     * @param title what is done
     * @param on on what
     * @param when when, in words
     * @param with with whom; empty for alone
     * @param link its card
     * @param state how far it is
     * @param wished what the lead wants of it, in words; empty for nothing
     * @param fits what of a fit is read or seen at it
     */
    public record Job(
            String title,
            String on,
            String when,
            String with,
            String link,
            StateWord state,
            String wished,
            List<FitLinks.Link> fits) {
        /** Copies the list. */
        public Job {
            fits = List.copyOf(fits);
        }
    }

    /**
     * A fit that is due: a step at which it is read dry or bonded, within sight.
     *
     * @param title the step
     * @param on on what
     * @param when when, in words
     * @param link its card
     * @param fits what of the fit is read or seen there
     */
    public record Due(String title, String on, String when, String link, List<FitLinks.Link> fits) {
        /** Copies the list. */
        public Due {
            fits = List.copyOf(fits);
        }
    }

    /**
     * A cure that runs.
     *
     * @param what the state, of what
     * @param on on what
     * @param untilIso when it is reached, for the clock; empty if not within sight
     * @param until the same in words
     * @param reached whether it is reached by computation
     * @param measured which air it rests on
     * @param link the step's card
     * @param why how the moment came about
     * @param key by which a device knows the same clock again, on whatever page it stands
     */
    public record Clock(
            String what,
            String on,
            String untilIso,
            String until,
            boolean reached,
            String measured,
            String link,
            String why,
            String key) {}

    /**
     * A window.
     *
     * @param what the step that must begin
     * @param shutsIso when it shuts, for the clock; empty if it does not
     * @param words when it opens and shuts, in words
     * @param missed whether it is missed
     * @param miss what missing costs
     * @param link the card of the step
     */
    public record Window(String what, String shutsIso, String words, boolean missed, String miss, String link) {}

    /**
     * Something that others wait for.
     *
     * @param what what it is
     * @param until until when, in words
     * @param link where to look; empty for nowhere
     * @param waiting what waits
     */
    public record Holding(String what, String until, String link, List<String> waiting) {
        /** Copies the list. */
        public Holding {
            waiting = List.copyOf(waiting);
        }
    }

    /**
     * The shop's air.
     *
     * @param read when it was read, in words
     * @param air temperature
     * @param humidity humidity
     * @param surface the coldest surface
     * @param dewPoint dew point
     * @param margin coldest surface above the dew point
     * @param fit whether wet work may begin
     * @param says what is outside a limit
     * @param cold working days to come that are expected too cold or damp, in words; empty for none
     */
    public record Air(
            String read,
            String air,
            String humidity,
            String surface,
            String dewPoint,
            String margin,
            boolean fit,
            List<String> says,
            String cold) {
        /** Copies the list. */
        public Air {
            says = List.copyOf(says);
        }
    }
}
