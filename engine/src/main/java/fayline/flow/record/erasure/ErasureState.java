package fayline.flow.record.erasure;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Every erasure.
 *
 * @param all erasures by the entry that was erased
 */
public record ErasureState(SortedMap<Long, Erasure> all) {
    /** Copies the map. */
    public ErasureState {
        all = Collections.unmodifiableSortedMap(new TreeMap<>(all));
    }

    /** How an entry was erased; empty where it was not. */
    public Optional<Erasure> of(long entry) {
        return Optional.ofNullable(all.get(entry));
    }
}
