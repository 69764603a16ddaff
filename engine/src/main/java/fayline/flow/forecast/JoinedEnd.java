package fayline.flow.forecast;

import fayline.basis.numeric.RandomStream;
import fayline.flow.forecast.PlanForecast.End;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * The plan's spread and the shop's real pace joined: what remains until each trial's end takes as much longer as the shop books
 * fewer hours a month than the plan does. The pace is drawn from a normal distribution about its mean.
 */
public final class JoinedEnd {
    /** A drawn pace is at least this share of the mean. */
    private static final double LEAST_SHARE = 0.05;

    private static final int DRAWS_PER_TRIAL = 20;

    private JoinedEnd() {}

    /**
     * Joins.
     *
     * @param end ends by the plan
     * @param now the moment from which is planned
     * @param plannedPerMonthH hours a month that the plan books; positive
     * @param paceH hours a month really booked so far; positive
     * @param paceErrorH standard error of that mean
     * @param seed of the draws
     * @return the ends, sorted
     */
    public static End of(End end, Instant now, double plannedPerMonthH, double paceH, double paceErrorH, long seed) {
        if (!(plannedPerMonthH > 0) || !(paceH > 0)) {
            throw new IllegalArgumentException(plannedPerMonthH + " h a month planned, " + paceH + " h worked");
        }
        List<Instant> joined = new ArrayList<>();
        for (int i = 0; i < end.sorted().size(); i++) {
            RandomStream chance = new RandomStream(seed, i);
            Duration left = Duration.between(now, end.sorted().get(i));
            for (int k = 0; k < DRAWS_PER_TRIAL; k++) {
                double pace = Math.max(LEAST_SHARE * paceH, paceH + paceErrorH * chance.nextNormal());
                double stretch = plannedPerMonthH / pace;
                joined.add(now.plus(Duration.ofMinutes(Math.round(left.toMinutes() * stretch))));
            }
        }
        return new End(end.target(), joined.stream().sorted().toList(), end.unplanned() * DRAWS_PER_TRIAL);
    }
}
