package fayline.solver;

import com.google.ortools.sat.LinearArgument;
import java.util.function.ToLongFunction;

/** Who looks on while CP-SAT runs. Calls come from the solver's threads; they should be short. */
public interface RunWatch {
    /** Nobody looks, nobody stops. */
    RunWatch NOBODY = new RunWatch() {};

    /**
     * A better solution.
     *
     * @param objective its objective
     * @param bound the objective that no solution is better than, so far
     * @param values the value of each variable or expression of the model in this solution; only during the call
     */
    default void improved(double objective, double bound, ToLongFunction<LinearArgument> values) {}

    /** The least objective that is still open: no solution is better. */
    default void bounded(double bound) {}

    /** Whether the run shall stop now and keep its best; asked about 50 times a second. */
    default boolean stop() {
        return false;
    }
}
