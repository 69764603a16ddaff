package fayline.app.usecase.forecast;

import fayline.app.usecase.view.ShopView;
import fayline.flow.record.Slip;
import fayline.flow.record.StepRecord;
import fayline.method.rate.BookedWork;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Why finished steps took longer or came later than planned, as the crew said at the bench. */
public final class Slips {
    private static final double MIN_PER_HOUR = 60;

    private Slips() {}

    /**
     * One reason.
     *
     * @param why the reason
     * @param steps how many finished steps name it
     * @param beyondH person-hours that these steps took beyond the recipes' estimates; those that took less count as nought
     */
    public record Reason(Slip why, int steps, double beyondH) {}

    /** The reasons that were given in the whole shop, the dearest first. */
    public static List<Reason> of(ShopView view) {
        Map<String, BookedWork> booked = view.rates().rates().counted().stream()
                .collect(Collectors.toMap(BookedWork::id, Function.identity(), (a, b) -> a));
        Map<Slip, Reason> reasons = new EnumMap<>(Slip.class);
        for (StepRecord s : view.record().steps().values()) {
            s.slip().ifPresent(why -> {
                BookedWork work = booked.get(s.step());
                double beyond = work == null ? 0 : Math.max(0, work.bookedMin() - work.estimatedMin()) / MIN_PER_HOUR;
                reasons.merge(why, new Reason(why, 1, beyond), Slips::both);
            });
        }
        return reasons.values().stream()
                .sorted(Comparator.comparingDouble(Reason::beyondH)
                        .thenComparingInt(Reason::steps)
                        .reversed())
                .toList();
    }

    private static Reason both(Reason a, Reason b) {
        return new Reason(a.why(), a.steps() + b.steps(), a.beyondH() + b.beyondH());
    }
}
