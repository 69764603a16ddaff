package fayline.flow.record;

import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.NotCanonicalException;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** Whether what was emptied is named by a later entry, and whether what says so names something that was emptied. */
final class ErasureCheck {
    /** Entries of kinds that can be erased. */
    private final BitSet erasable = new BitSet();
    /** Emptied entries that no later one has named so far, each with the head before it. */
    private final NavigableMap<Long, Head> unnamed = new TreeMap<>();
    /** The entry that erased another one. */
    private final Map<Long, Long> erasedBy = new HashMap<>();

    /** Why an entry may not stand after those taken; empty where it may. */
    Optional<String> wrong(Entry e) {
        if (e.erases().isEmpty()) {
            return Optional.empty();
        }
        long named = e.erases().get();
        String what = "it erases entry " + named + ", ";
        if (named < 1 || named >= e.seq()) {
            return Optional.of(what + "which does not stand before it");
        }
        if (erasedBy.containsKey(named)) {
            return Optional.of(what + "which entry " + erasedBy.get(named) + " erased before");
        }
        if (!erasable.get((int) named)) {
            return Optional.of(what + "which is of a kind that is never erased");
        }
        return unnamed.containsKey(named) ? Optional.empty() : Optional.of(what + "whose payload still stands there");
    }

    /** Takes an entry that is sound by itself. */
    void take(Entry e, Head before) {
        if (Erasable.isKind(e.kind())) {
            erasable.set((int) e.seq());
        }
        if (e.isEmptied()) {
            unnamed.put(e.seq(), before);
        }
        e.erases().ifPresent(named -> {
            erasedBy.put(named, e.seq());
            unnamed.remove(named);
        });
    }

    /** Takes an entry from the first bad one on: what it says was erased is not named as emptied in silence. */
    void lookAhead(Entry e) {
        try {
            e.erases().ifPresent(unnamed::remove);
        } catch (NotCanonicalException damaged) {
            // It says nothing that can be read.
            return;
        }
    }

    /** The first emptied entry that no later one names. */
    Optional<Chain.Fault> unnamed() {
        return unnamed.isEmpty()
                ? Optional.empty()
                : Optional.of(new Chain.Fault(
                        unnamed.firstKey(), "its payload was emptied, and no later entry says that it was erased"));
    }

    /** The head before the first of them. */
    Optional<Head> soundBefore() {
        return unnamed.isEmpty()
                ? Optional.empty()
                : Optional.of(unnamed.firstEntry().getValue());
    }
}
