package fayline.app.usecase.hours;

import fayline.app.usecase.view.ShopView;
import fayline.flow.result.hours.BookedTime;
import fayline.flow.result.hours.HoursCalculator;
import fayline.flow.result.hours.HoursResult;
import java.time.LocalDate;
import java.util.Optional;

/** Looks at who worked how long on what, over all or between two days. */
public final class LookAtHours {
    private LookAtHours() {}

    /** All hours of the chosen project. */
    public static HoursResult of(ShopView view) {
        return HoursCalculator.calculate(
                view.definition(), view.state(), view.result().steps());
    }

    /**
     * The same between two days, both included; the shares stay those of all hours, since a list asks for the whole.
     *
     * @param all all hours
     * @param from the first day; empty for from the beginning
     * @param to the last day; empty for up to now
     */
    public static HoursResult between(HoursResult all, Optional<LocalDate> from, Optional<LocalDate> to) {
        return new HoursResult(
                all.booked().stream().filter(b -> isWithin(b, from, to)).toList(), all.tasks());
    }

    private static boolean isWithin(BookedTime b, Optional<LocalDate> from, Optional<LocalDate> to) {
        return from.filter(f -> b.day().isBefore(f)).isEmpty()
                && to.filter(t -> b.day().isAfter(t)).isEmpty();
    }
}
