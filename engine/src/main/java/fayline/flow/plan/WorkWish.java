package fayline.flow.plan;

import java.time.Instant;
import java.util.Collection;
import java.util.Optional;

/**
 * What the lead has decided about one step beforehand. It binds every plan, as {@link fayline.flow.plan} says under <i>Wishes</i>.
 *
 * @param id the id; wishes with one id are one wish, as of the parts of a step that is done in parts
 * @param step the step
 * @param kind what is wished
 * @param on the person or the place; empty for a start
 * @param from earliest start wished; only for a start
 * @param before the start is before this moment; only for a start
 * @param by who wishes it; empty where nobody says
 * @param why the reason given; may be empty
 */
public record WorkWish(
        String id,
        String step,
        Kind kind,
        String on,
        Optional<Instant> from,
        Optional<Instant> before,
        String by,
        String why) {

    /** What can be wished. */
    public enum Kind {
        /** The person is in the crew. */
        WITH,
        /** The person is not in the crew. */
        WITHOUT,
        /** It happens at the place. */
        AT,
        /** It does not happen at the place. */
        AWAY,
        /** It begins within a time. */
        START
    }

    /** Whether the time in which the start was wished is over, so that nobody can keep to it any more. */
    public boolean isPast(Instant now) {
        return before.filter(b -> !b.isAfter(now)).isPresent();
    }

    /**
     * Whether a step that is planned so is as wished.
     *
     * @param people ids of its crew
     * @param places ids of its places
     * @param start when it begins
     */
    public boolean isKept(Collection<String> people, Collection<String> places, Instant start) {
        return switch (kind) {
            case WITH -> people.contains(on);
            case WITHOUT -> !people.contains(on);
            case AT -> places.contains(on);
            case AWAY -> !places.contains(on);
            case START ->
                from.stream().noneMatch(start::isBefore) && before.stream().allMatch(start::isBefore);
        };
    }

    /** The same without an end to the time in which it begins. */
    public WorkWish openEnded() {
        return new WorkWish(id, step, kind, on, from, Optional.empty(), by, why);
    }
}
