package fayline.flow.whatif;

import fayline.flow.plan.Work;
import java.util.Set;

/**
 * Some of the lead's wishes did not stand.
 *
 * @param ids which
 */
public record WithoutWishes(Set<String> ids) implements Change {
    /** Copies the set. */
    public WithoutWishes {
        ids = Set.copyOf(ids);
    }

    @Override
    public Work in(Work w) {
        return w.withWishes(
                w.wishes().stream().filter(x -> !ids.contains(x.id())).toList());
    }
}
