package fayline.flow.project.shop;

import fayline.flow.project.catalog.Keyed;
import java.time.LocalDateTime;
import java.util.Optional;

/**
 * What the lead has decided about one step beforehand, to be kept by every later plan.
 *
 * @param id the id
 * @param step the step, as {@code project/made/make-number/step-key}
 * @param kind what is wished
 * @param on the person or place; empty for a start
 * @param from for a start: the earliest, in the shop's time
 * @param before for a start: the moment before which it is, in the shop's time
 * @param together the wish with which it was made in one act and is withdrawn together; empty for none
 * @param by who wishes it, by id; empty where nobody says
 * @param said when, in the shop's time
 * @param why the reason, as the lead put it; may be empty
 */
public record LeadWish(
        String id,
        String step,
        Kind kind,
        String on,
        Optional<LocalDateTime> from,
        Optional<LocalDateTime> before,
        String together,
        String by,
        Optional<LocalDateTime> said,
        String why)
        implements Keyed {

    /** What can be wished. */
    public enum Kind {
        /** The person works on it. */
        WITH,
        /** The person does not. */
        WITHOUT,
        /** It happens at the place. */
        AT,
        /** It does not. */
        AWAY,
        /** It begins within a time. */
        START
    }

    /** The wish that leads the act in which it was made: all of one act are withdrawn together. */
    public String act() {
        return together.isEmpty() ? id : together;
    }

    /** The project of its step. */
    public String project() {
        return step.contains("/") ? step.substring(0, step.indexOf('/')) : step;
    }
}
