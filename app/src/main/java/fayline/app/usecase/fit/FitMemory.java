package fayline.app.usecase.fit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Keeps the answers asked for last, so that a page looked at again does not work its fit out anew. What an answer rests on is told
 * by the hash that the record's chain ends in: a new entry makes another question of it, and units and clock are no part of it. Safe
 * for several threads; of two that ask the same at once both may work it out.
 */
final class FitMemory {
    private static final float FULL = 0.75f;

    private final int most;
    private final Map<Question, FitSight> kept;

    /**
     * Empty.
     *
     * @param most how many answers are kept; the one not asked for longest goes first
     */
    FitMemory(int most) {
        this.most = most;
        this.kept = new LinkedHashMap<>(16, FULL, true);
    }

    /**
     * A question.
     *
     * @param head the hash the record ends in
     * @param project the project
     * @param fit the fit
     * @param assume whether the usual values may be assumed
     */
    record Question(String head, String project, String fit, boolean assume) {}

    /** The answer kept, else the one worked out now. */
    FitSight answer(Question question, Supplier<FitSight> fresh) {
        synchronized (kept) {
            FitSight known = kept.get(question);
            if (known != null) {
                return known;
            }
        }
        FitSight made = fresh.get();
        synchronized (kept) {
            kept.put(question, made);
            if (kept.size() > most) {
                kept.remove(kept.keySet().iterator().next());
            }
        }
        return made;
    }

    /** How many answers are kept. */
    int size() {
        synchronized (kept) {
            return kept.size();
        }
    }
}
