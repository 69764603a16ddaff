package fayline.flow.record.made;

import java.time.Instant;
import java.util.Optional;

/**
 * A ply or core layer laid in a step, or left out of it.
 *
 * @param seq its entry
 * @param step the step: {@code project/made/make-number/key}
 * @param at when
 * @param by who entered it
 * @param told when it was entered, where that was later
 * @param ply its place in the step, from 1, as typed
 * @param name what the card called it then: zone, material, direction
 * @param lot the lot it was cut from; empty where nobody said
 * @param skipped whether it was left out
 * @param why why it was left out or laid out of order; empty otherwise
 */
public record Laid(
        long seq,
        String step,
        Instant at,
        String by,
        Optional<Instant> told,
        String ply,
        String name,
        String lot,
        boolean skipped,
        String why) {}
