package fayline.method.fitup.chain.correct;

import fayline.method.fitup.MoveLimits;
import java.util.Map;
import java.util.Optional;

/**
 * Something that can still be done after the cure.
 *
 * @param name what it is called
 * @param kind what sort of thing
 * @param cost what it costs, in the shop's measure; not negative
 * @param mostMm how much can be taken off (trim) or put on (build up, fill) at a station, by the station's mark; a station that
 *     is not named cannot be worked on
 * @param room how far the part can go when it is hung again; empty for other kinds
 * @param expectedOffMm how far the worst gap is to be expected off nominal when it is made again; used for that kind alone
 */
public record Remedy(
        String name,
        Kind kind,
        double cost,
        Map<String, Double> mostMm,
        Optional<MoveLimits> room,
        double expectedOffMm) {
    /** Sorts of remedy. */
    public enum Kind {
        /** Take material off: gaps open. */
        TRIM,
        /** Put structure on: gaps close. */
        BUILD_UP,
        /** Fill a gap with filler or seal: it counts as closed to its nominal. */
        FILL,
        /** Loosen the last bond or hinge and set it anew. */
        REHANG,
        /** Make the part again. */
        REMAKE
    }

    /**
     * Copies the map.
     *
     * @throws IllegalArgumentException if a number is negative, or room and kind do not go together
     */
    public Remedy {
        mostMm = Map.copyOf(mostMm);
        boolean negative = !(cost >= 0)
                || !(expectedOffMm >= 0)
                || mostMm.values().stream().anyMatch(m -> !(m >= 0));
        if (negative || (kind == Kind.REHANG) != room.isPresent()) {
            throw new IllegalArgumentException(
                    "remedy " + name + " cannot be: " + kind + ", cost " + cost + ", " + mostMm + ", " + room);
        }
    }
}
