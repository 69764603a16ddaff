package fayline.solver.net;

import fayline.solver.net.Shifts.Member;
import java.util.Optional;
import java.util.Random;

/**
 * Islands in turn: one breeds until it is stale, then a new one, then the better halves of both together. A population that has
 * lost its variety finds nothing more; two that grew apart still do.
 */
final class Islands {
    private static final int AT_ONCE = 20;
    private static final int LEAST = 40;
    private static final int MOST = 200;

    private final Compact net;
    private final Shifts shifts;
    private final Random random;
    private final int size;
    private Optional<Island> waiting = Optional.empty();
    private Island current;
    private boolean merged;
    private int best;
    private int staleSince;

    Islands(Compact net, long seed) {
        this.net = net;
        shifts = new Shifts(net);
        random = new Random(seed);
        size = Math.max(LEAST, Math.min(MOST, 2 * net.n));
        current = Island.drawn(net, shifts, random, size);
        best = current.best().end;
    }

    Member best() {
        return current.best();
    }

    /** How many islands went stale since one was better than all before. */
    int staleSince() {
        return staleSince;
    }

    /** Some more children. */
    void step() {
        for (int x = 0; x < AT_ONCE; x++) {
            current.breed();
        }
        if (current.best().end < best) {
            best = current.best().end;
            staleSince = 0;
        }
        if (current.stale()) {
            staleSince++;
            next();
        }
    }

    private void next() {
        if (waiting.isPresent() && !merged) {
            current = Island.merged(waiting.get(), current);
            merged = true;
        } else {
            waiting = Optional.of(current);
            current = Island.drawn(net, shifts, random, size);
            merged = false;
        }
    }

    /** Takes in a schedule that somebody else found. */
    void visit(int[] start) {
        current.visit(start);
    }
}
