package fayline.flow.plan;

import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * A person who may work.
 *
 * @param id the person
 * @param name the name
 * @param skills keys of skills
 * @param present when the person is in the shop, in order, not overlapping; breaks lie inside
 * @param breaks when the person rests, in order, not overlapping; work that may not be interrupted runs through
 *     them, interruptible work stops
 */
public record Worker(String id, String name, Set<String> skills, List<Stretch> present, List<Stretch> breaks) {
    /** Copies the collections. */
    public Worker {
        skills = Set.copyOf(skills);
        present = List.copyOf(present);
        breaks = List.copyOf(breaks);
    }

    /**
     * A stretch of time, the end not included.
     *
     * @param from start
     * @param to end, after the start
     */
    public record Stretch(Instant from, Instant to) {}
}
