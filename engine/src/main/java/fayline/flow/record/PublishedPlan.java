package fayline.flow.record;

import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * A plan that the crew was told.
 *
 * @param seq the entry
 * @param at when it was published
 * @param by who published it
 * @param definition hash of the definition it was made from
 * @param hash hash of the plan
 * @param steps its steps
 */
public record PublishedPlan(long seq, Instant at, String by, String definition, String hash, List<Step> steps) {
    /** Copies the list. */
    public PublishedPlan {
        steps = List.copyOf(steps);
    }

    /** The plan that an entry tells. */
    static PublishedPlan of(Entry entry) {
        Value.Fields f = entry.fields();
        List<Step> planned = new ArrayList<>();
        for (Value item : f.items("steps")) {
            if (item instanceof Value.Fields s) {
                planned.add(new Step(
                        s.text("step"),
                        Entry.time(s.text("start"), entry.at()),
                        Entry.time(s.text("hands-end"), entry.at()),
                        Entry.time(s.text("end"), entry.at()),
                        s.texts("people"),
                        s.texts("places")));
            }
        }
        return new PublishedPlan(entry.seq(), entry.taken(), entry.by(), f.text("definition"), f.text("hash"), planned);
    }

    /**
     * One step of it.
     *
     * @param step the step
     * @param start when the hands begin
     * @param handsEnd when the hands leave
     * @param end when its unattended time is over
     * @param people who
     * @param places where
     */
    public record Step(
            String step, Instant start, Instant handsEnd, Instant end, List<String> people, List<String> places) {
        /** Copies the lists. */
        public Step {
            people = List.copyOf(people);
            places = List.copyOf(places);
        }
    }
}
