package fayline.flow.record.made;

import java.time.Instant;
import java.util.Optional;

/**
 * One cup mixed for a step.
 *
 * @param seq its entry
 * @param step the step: {@code project/made/make-number/key}
 * @param at when the parts met
 * @param by who entered it
 * @param told when it was entered, where that was later
 * @param batch which batch of the card, as typed
 * @param system the resin or adhesive system
 * @param resinLot lot of the resin; empty where nobody said
 * @param hardenerLot lot of the hardener; empty where nobody said
 * @param resin what the scale showed for the resin, as typed with its unit; empty where there was no scale reading
 * @param hardener the same for the hardener
 * @param weighed whether both were read off a scale
 * @param why why there was no scale reading, or why the cup was used out of tolerance; may be empty
 */
public record Mix(
        long seq,
        String step,
        Instant at,
        String by,
        Optional<Instant> told,
        String batch,
        String system,
        String resinLot,
        String hardenerLot,
        String resin,
        String hardener,
        boolean weighed,
        String why) {}
