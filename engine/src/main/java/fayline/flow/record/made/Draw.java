package fayline.flow.record.made;

import java.time.Instant;
import java.util.Optional;

/**
 * Material taken from a lot for a step.
 *
 * @param seq its entry
 * @param step the step: {@code project/made/make-number/key}
 * @param at when
 * @param by who entered it
 * @param told when it was entered, where that was later
 * @param lot the lot's number
 * @param component which part of a system, {@code resin} or {@code hardener}; empty for a material of one part
 * @param amount how much, as typed with its unit; empty where nobody said
 * @param override whether it was taken though its date was past
 * @param why why that was allowed; empty where it was in date
 */
public record Draw(
        long seq,
        String step,
        Instant at,
        String by,
        Optional<Instant> told,
        String lot,
        String component,
        String amount,
        boolean override,
        String why) {}
