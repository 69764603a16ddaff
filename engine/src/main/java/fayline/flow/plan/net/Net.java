package fayline.flow.plan.net;

import java.util.List;

/**
 * Activities that must keep lags between their starts and share renewable resources; sought is the least makespan. The problem
 * and its notation PS|temp|Cmax are those of Brucker, Drexl, Möhring, Neumann and Pesch (1999). Activities are called by their
 * place in the list, from 0.
 *
 * @param activities what is to be done, each once and without interruption, none before 0
 * @param lags least distances between starts
 * @param capacities how much of each renewable resource there is at any time, each at least 0
 */
public record Net(List<Activity> activities, List<Lag> lags, List<Integer> capacities) {
    /** Longest duration and largest lag or demand, so that sums stay whole numbers of 32 bits. */
    public static final int MOST = 1_000_000;

    /**
     * One activity.
     *
     * @param name for messages
     * @param duration in the net's units of time, from 0
     * @param demands how much of each resource it takes while it lasts, one per capacity, each at least 0
     */
    public record Activity(String name, int duration, List<Integer> demands) {
        /** Copies, and checks the ranges. */
        public Activity {
            demands = List.copyOf(demands);
            if (duration < 0 || duration > MOST || demands.stream().anyMatch(d -> d < 0 || d > MOST)) {
                throw new IllegalArgumentException(name + ": duration " + duration + ", demands " + demands);
            }
        }
    }

    /**
     * {@code start(to) >= start(from) + least}. A negative {@code least} is a maximum lag the other way round: {@code start(from)
     * <= start(to) - least}.
     *
     * @param from the activity that is counted from
     * @param to the activity that is held
     * @param least units of time between the starts
     */
    public record Lag(int from, int to, int least) {}

    /** Copies, and checks that every lag and demand names something. */
    public Net {
        activities = List.copyOf(activities);
        lags = List.copyOf(lags);
        capacities = List.copyOf(capacities);
        for (Activity a : activities) {
            if (a.demands().size() != capacities.size()) {
                throw new IllegalArgumentException(
                        a.name() + ": " + a.demands().size() + " demands for " + capacities.size() + " resources");
            }
        }
        for (Lag l : lags) {
            boolean known = l.from() >= 0 && l.from() < activities.size() && l.to() >= 0 && l.to() < activities.size();
            if (!known || Math.abs((long) l.least()) > MOST) {
                throw new IllegalArgumentException("no such lag: " + l);
            }
        }
        if (capacities.stream().anyMatch(c -> c < 0)) {
            throw new IllegalArgumentException("capacities " + capacities);
        }
    }

    /** When the last activity of a schedule ends. */
    public int makespan(List<Integer> starts) {
        int end = 0;
        for (int i = 0; i < activities.size(); i++) {
            end = Math.max(end, starts.get(i) + activities.get(i).duration());
        }
        return end;
    }
}
