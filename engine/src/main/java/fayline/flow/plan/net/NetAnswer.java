package fayline.flow.plan.net;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What a search knows of a net when it ends.
 *
 * @param starts the start of each activity in the best schedule found; empty where none was found
 * @param makespan its makespan; empty where none was found
 * @param bound a makespan that no schedule is shorter than, from 0
 * @param infeasible whether it is proven that there is no schedule
 */
public record NetAnswer(Optional<List<Integer>> starts, OptionalInt makespan, int bound, boolean infeasible) {
    /** Copies. */
    public NetAnswer {
        starts = starts.map(List::copyOf);
        if (starts.isPresent() != makespan.isPresent() || (infeasible && starts.isPresent())) {
            throw new IllegalArgumentException("makespan " + makespan + ", infeasible " + infeasible);
        }
    }

    /** A schedule of a net. */
    public static NetAnswer of(Net net, List<Integer> starts, int bound) {
        return new NetAnswer(Optional.of(starts), OptionalInt.of(net.makespan(starts)), bound, false);
    }

    /** There is no schedule. */
    public static NetAnswer none(int bound) {
        return new NetAnswer(Optional.empty(), OptionalInt.empty(), bound, true);
    }

    /** Nothing was found and nothing shown but a bound. */
    public static NetAnswer unknown(int bound) {
        return new NetAnswer(Optional.empty(), OptionalInt.empty(), bound, false);
    }

    /** Whether there is nothing left to find: the schedule is the shortest, or there is none. */
    public boolean proven() {
        return infeasible || (makespan.isPresent() && makespan.getAsInt() <= bound);
    }
}
