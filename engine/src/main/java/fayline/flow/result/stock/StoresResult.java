package fayline.flow.result.stock;

import fayline.basis.finding.Finding;
import fayline.basis.units.Quantity;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The stores against the work that is still to do.
 *
 * @param items each thing that is needed or held
 * @param lots every lot of them with what moved it, in the order in which they are written
 * @param shortages what runs out, soonest first
 * @param findings the shortages as sentences, and all notices
 * @param notices what else is to be said: lots out of date, amounts that cannot be compared
 */
public record StoresResult(
        List<Item> items,
        List<LotStanding> lots,
        List<Shortage> shortages,
        List<Finding> findings,
        List<Finding> notices) {
    /** Copies the lists. */
    public StoresResult {
        items = List.copyOf(items);
        lots = List.copyOf(lots);
        shortages = List.copyOf(shortages);
        findings = List.copyOf(findings);
        notices = List.copyOf(notices);
    }

    /**
     * One thing, or one component of a mixed system.
     *
     * @param of the material or system
     * @param component {@code resin} or {@code hardener} of a system; empty otherwise
     * @param needed what the steps to do will draw
     * @param held what is in the stores and in date now
     * @param expired what is in the stores and out of date now
     * @param coming what is on order and not arrived
     * @param lots lots in the order in which to take them
     */
    public record Item(
            String of,
            String component,
            Quantity needed,
            Quantity held,
            Quantity expired,
            Quantity coming,
            List<String> lots) {
        /** Copies the list. */
        public Item {
            lots = List.copyOf(lots);
        }
    }

    /**
     * Something that runs out.
     *
     * @param of the material or system
     * @param component {@code resin} or {@code hardener} of a system; empty otherwise
     * @param shortBy how much is missing over all
     * @param step the first step that cannot be supplied
     * @param by when that step starts, where it is planned
     * @param orderBy the last day on which an order arrives in time, where the step is planned and the lead time known
     * @param late whether that day has passed
     */
    public record Shortage(
            String of,
            String component,
            Quantity shortBy,
            String step,
            Optional<Instant> by,
            Optional<LocalDate> orderBy,
            boolean late) {}
}
