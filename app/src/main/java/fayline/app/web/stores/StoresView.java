package fayline.app.web.stores;

import java.util.List;

/**
 * What Stores shows.
 *
 * @param shortages what runs out, soonest first
 * @param items everything that is needed or held
 * @param lots lots with their dates
 * @param deliveries what is on order
 * @param weeks what each planned week draws
 * @param findings sentences to act on
 */
public record StoresView(
        List<Shortage> shortages,
        List<Item> items,
        List<Lot> lots,
        List<Delivery> deliveries,
        List<Week> weeks,
        List<String> findings) {
    /** Copies the lists. */
    public StoresView {
        shortages = List.copyOf(shortages);
        items = List.copyOf(items);
        lots = List.copyOf(lots);
        deliveries = List.copyOf(deliveries);
        weeks = List.copyOf(weeks);
        findings = List.copyOf(findings);
    }

    /**
     * A planned week.
     *
     * @param name the week, by its first day
     * @param says steps, hands and cost in words
     * @param needs what it draws, each with its amount
     */
    public record Week(String name, String says, List<Drawn> needs) {
        /** Copies the list. */
        public Week {
            needs = List.copyOf(needs);
        }
    }

    /**
     * Something that a week draws.
     *
     * @param what the thing
     * @param amount how much, waste included
     */
    public record Drawn(String what, String amount) {}

    /**
     * Something that runs out.
     *
     * @param what the thing
     * @param by how much is missing
     * @param step the first step without it
     * @param link that step's card
     * @param when when it starts
     * @param orderBy by when to order, in words
     * @param late whether that day has passed
     */
    public record Shortage(
            String what, String by, String step, String link, String when, String orderBy, boolean late) {}

    /**
     * A thing.
     *
     * @param what the thing
     * @param needed what the steps to do draw
     * @param held what is here and in date
     * @param expired what is here and out of date
     * @param coming what is on order
     * @param enough whether held and coming cover the need
     */
    public record Item(String what, String needed, String held, String expired, String coming, boolean enough) {}

    /**
     * A lot.
     *
     * @param id its number
     * @param link its page
     * @param what of what
     * @param left what is left now
     * @param lastDay the last day of its use
     * @param opened when it was opened
     * @param over whether that day has passed
     * @param cold how it stands with the cold; empty where that does not count
     */
    public record Lot(
            String id,
            String link,
            String what,
            String left,
            String lastDay,
            String opened,
            boolean over,
            String cold) {}

    /**
     * A delivery.
     *
     * @param what what comes
     * @param quantity how much
     * @param due when
     * @param needed what waits for it
     */
    public record Delivery(String what, String quantity, String due, String needed) {}
}
