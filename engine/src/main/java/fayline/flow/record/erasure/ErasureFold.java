package fayline.flow.record.erasure;

import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds {@code erased}. Of two that name one entry the first holds. */
public final class ErasureFold {
    private final SortedMap<Long, Erasure> all = new TreeMap<>();

    /** An empty fold. */
    public ErasureFold() {}

    /** Takes an erasure. */
    public void hold(Erasure erasure) {
        all.putIfAbsent(erasure.entry(), erasure);
    }

    /** How an entry was erased; empty where it was not. */
    public Optional<Erasure> of(long entry) {
        return Optional.ofNullable(all.get(entry));
    }

    /** What all of it amounts to now. */
    public ErasureState state() {
        return new ErasureState(all);
    }
}
