package fayline.store.file.rule;

import fayline.store.file.yaml.Problems;
import java.time.LocalDate;

/** Everything that this shop can do at all, on a day. */
public final class Feasible {
    private Feasible() {}

    /** Tells what the shop cannot do. */
    public static void check(Draft draft, LocalDate today, Problems problems) {
        new Expiry(draft, today, problems).check();
    }
}
