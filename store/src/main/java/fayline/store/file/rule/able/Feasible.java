package fayline.store.file.rule.able;

import fayline.store.file.rule.Draft;
import fayline.store.file.yaml.Problems;
import java.time.LocalDate;

/** Everything that this shop can do at all, on a day. */
public final class Feasible {
    private Feasible() {}

    /** Tells what the shop cannot do; what must be computed for it is left out where the definition does not hold together. */
    public static void check(Draft draft, LocalDate today, Problems problems) {
        boolean whole = problems.stops() == 0;
        new Expiry(draft, today, problems).check();
        if (whole) {
            new Possible(draft, problems).check();
        }
    }
}
