package fayline.solver.shop;

import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import fayline.solver.shop.ShopCase.Item;
import java.util.BitSet;
import java.util.List;

/**
 * A free step in a model. Times are slots; the sets hold all that their variable may be.
 *
 * @param item the step
 * @param start when its hands begin
 * @param handsEnd when they leave
 * @param end when its unattended time is over
 * @param starts all slots of the start
 * @param handsEnds all of the hands' end
 * @param ends all of the end
 * @param modes the ways in which it may be done
 * @param uses which of them is chosen, in the same order
 */
record StepVars(
        Item item,
        IntVar start,
        LinearArgument handsEnd,
        LinearArgument end,
        BitSet starts,
        BitSet handsEnds,
        BitSet ends,
        List<Mode> modes,
        List<Literal> uses) {
    LinearArgument moment(String from) {
        return switch (from) {
            case "start" -> start;
            case "hands-end" -> handsEnd;
            default -> end;
        };
    }

    BitSet moments(String from) {
        return switch (from) {
            case "start" -> starts;
            case "hands-end" -> handsEnds;
            default -> ends;
        };
    }
}
