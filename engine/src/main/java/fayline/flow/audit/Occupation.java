package fayline.flow.audit;

import fayline.flow.plan.Hold;
import java.time.Instant;

/**
 * A hold on one of its places.
 *
 * @param hold the hold
 * @param place the place's id
 * @param from start of its earliest step
 * @param to end of its latest step; the end of time where a step of it is not planned
 * @param first the step it begins with
 * @param begun whether a step of it has begun in the shop
 */
record Occupation(Hold hold, String place, Instant from, Instant to, String first, boolean begun) {
    boolean overlaps(Occupation other) {
        return from.isBefore(other.to) && other.from.isBefore(to);
    }
}
