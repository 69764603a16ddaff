package fayline.flow.project.stock;

import fayline.basis.units.Entered;
import fayline.basis.units.Quantity;
import fayline.basis.units.TimeSpan;
import fayline.flow.project.catalog.Keyed;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One delivered batch in the stores.
 *
 * @param id the lot's number
 * @param of the material or system
 * @param component {@code resin} or {@code hardener} for a part of a system, else empty
 * @param quantity what there was when it was received: a mass, an area or a length
 * @param received when it came
 * @param expires the date on it, where there is one
 * @param opened when it was opened, where it was
 * @param openedLife how long it keeps once opened
 * @param weighed whether the quantity was weighed or measured as it came; otherwise it is what the label says
 * @param price what it cost, where that is known
 */
public record Lot(
        String id,
        String of,
        String component,
        Entered<? extends Quantity> quantity,
        LocalDate received,
        Optional<LocalDate> expires,
        Optional<LocalDate> opened,
        Optional<TimeSpan> openedLife,
        boolean weighed,
        Optional<Price> price)
        implements Keyed {
    /** The last day on which it may be used: the date on it, or the end of its opened life if that is earlier. */
    public Optional<LocalDate> lastDay() {
        Optional<LocalDate> once =
                opened.flatMap(o -> openedLife.map(TimeSpan::days).map(d -> o.plusDays(Math.round(Math.floor(d)))));
        if (once.isPresent() && expires.isPresent()) {
            return once.get().isBefore(expires.get()) ? once : expires;
        }
        return once.or(() -> expires);
    }

    /** The same, opened on a day. */
    public Lot openedOn(LocalDate day) {
        return new Lot(id, of, component, quantity, received, expires, Optional.of(day), openedLife, weighed, price);
    }

    /** The same with another last day; the date on it and its opened life then count no more. */
    public Lot endingOn(Optional<LocalDate> day) {
        return new Lot(id, of, component, quantity, received, day, opened, Optional.empty(), weighed, price);
    }
}
