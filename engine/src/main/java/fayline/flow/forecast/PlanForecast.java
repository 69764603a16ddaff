package fayline.flow.forecast;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * Ends of the work over many trials.
 *
 * @param trials how many plans were made
 * @param ends the end of each target, in the order asked
 * @param holding the steps that held the end of everything, the most frequent first
 */
public record PlanForecast(int trials, List<End> ends, List<Holding> holding) {
    /** Copies the lists. */
    public PlanForecast {
        ends = List.copyOf(ends);
        holding = List.copyOf(holding);
    }

    /**
     * A target's end.
     *
     * @param target the target
     * @param sorted its end in each trial in which it could be planned, the soonest first
     * @param unplanned trials in which it could not
     */
    public record End(Target target, List<Instant> sorted, int unplanned) {
        /** Copies the list. */
        public End {
            sorted = List.copyOf(sorted);
        }

        /**
         * The moment that is not exceeded with a probability; trials without a plan count as never.
         *
         * @param share between 0 and 1
         * @return empty where that is never
         */
        public Optional<Instant> at(double share) {
            int n = sorted.size() + unplanned;
            int index = (int) Math.max(0, Math.ceil(share * n - 1e-9) - 1);
            return index < sorted.size() ? Optional.of(sorted.get(index)) : Optional.empty();
        }

        /**
         * The share of trials in which it is done by the end of the day on which it is due.
         *
         * @param zone the shop's zone
         * @return empty where no day is set or no trial was made
         */
        public Optional<Double> inTime(ZoneId zone) {
            int n = sorted.size() + unplanned;
            return n == 0
                    ? Optional.empty()
                    : target.due().map(d -> {
                        Instant over = d.plusDays(1).atStartOfDay(zone).toInstant();
                        return sorted.stream().filter(e -> e.isBefore(over)).count() / (double) n;
                    });
        }
    }

    /**
     * A step that held the end.
     *
     * @param step the step
     * @param share share of the trials in which it stood on the chain that held the end
     */
    public record Holding(String step, double share) {}
}
