package fayline.solver.shop;

import java.util.BitSet;
import java.util.Set;

/**
 * One way in which a step can be done.
 *
 * @param crew how many; 0 for a step without hands
 * @param slots from start to the hands' end, stops included
 * @param missed earlier steps whose windows are missed
 * @param starts slots at which it can begin
 * @param stops whether it goes on over a night, when its crew is away
 */
record Mode(int crew, int slots, Set<String> missed, BitSet starts, boolean stops) {
    Mode {
        missed = Set.copyOf(missed);
    }

    boolean is(int otherCrew, int otherSlots, Set<String> otherMissed, int start) {
        return crew == otherCrew && slots == otherSlots && missed.equals(otherMissed) && starts.get(start);
    }
}
