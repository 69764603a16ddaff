package fayline.walks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What clients saw of a record, judged against the record as it is afterwards, in linear time but for one sorting. The record is one
 * sequence, so entries that carry their own ids need no search: each acknowledged one stands where it was said to, none twice, and
 * whatever was acknowledged or seen before something else was sent stands before it. (Linearizability as Herlihy and Wing define
 * it, ACM TOPLAS 12 (1990); that unique appends make the check linear: Kingsbury and Alvaro, Elle, VLDB 14 (2020). From memory.)
 */
final class History {
    /** The moment of an answer that never came. */
    static final long NEVER = Long.MAX_VALUE;

    private final List<Sent> sent = new ArrayList<>();
    private final List<Seen> seen = new ArrayList<>();

    /**
     * One sending of one entry.
     *
     * @param id the entry's own id
     * @param invoked when it was sent
     * @param answered when the answer came; {@link #NEVER} where none did, so that nobody knows
     * @param seq the place that the answer named; 0 for none
     */
    record Sent(String id, long invoked, long answered, long seq) {}

    /**
     * One look at how far the record is.
     *
     * @param client who looked
     * @param invoked when it was asked
     * @param answered when the answer came
     * @param head the last entry that the answer named
     */
    record Seen(int client, long invoked, long answered, long head) {}

    synchronized void add(Sent one) {
        sent.add(one);
    }

    synchronized void add(Seen one) {
        seen.add(one);
    }

    /** How many sendings there were. */
    synchronized int size() {
        return sent.size();
    }

    /**
     * The first thing that cannot have happened with one record to which entries are added one by one; empty where all can.
     *
     * @param record the ids of all entries in their order, those of before the history included
     */
    synchronized Optional<String> fault(List<String> record) {
        Map<String, Long> places = new HashMap<>();
        for (int i = 0; i < record.size(); i++) {
            Long before = places.put(record.get(i), i + 1L);
            if (before != null) {
                return Optional.of(record.get(i) + " stands twice, at " + before + " and " + (i + 1));
            }
        }
        return wrongPlace(places).or(() -> vanished(record.size())).or(() -> outOfOrder(places));
    }

    private Optional<String> wrongPlace(Map<String, Long> places) {
        return sent.stream()
                .filter(s -> s.seq() > 0 && places.getOrDefault(s.id(), 0L) != s.seq())
                .map(s -> s.id() + " was acknowledged at " + s.seq() + " and stands at "
                        + places.getOrDefault(s.id(), 0L))
                .findFirst();
    }

    private Optional<String> vanished(int size) {
        return seen.stream()
                .filter(s -> s.head() > size)
                .map(s -> "client " + s.client() + " saw entry " + s.head() + " of " + size)
                .findFirst();
    }

    /** Something that happens at a moment: the answer at which a place is known, or the asking that must come after it. */
    private record Event(long at, boolean asking, long place, String what) {}

    private Optional<String> outOfOrder(Map<String, Long> places) {
        List<Event> events = new ArrayList<>();
        Map<String, Long> firstSent = new HashMap<>();
        sent.forEach(s -> firstSent.merge(s.id(), s.invoked(), Math::min));
        firstSent.forEach((id, at) -> {
            if (places.containsKey(id)) {
                events.add(new Event(at, true, places.getOrDefault(id, 0L), "the sending of " + id));
            }
        });
        for (Sent s : sent) {
            if (s.answered() != NEVER && s.seq() > 0) {
                events.add(new Event(s.answered(), false, s.seq(), "the answer for " + s.id()));
            }
        }
        for (Seen s : seen) {
            events.add(new Event(s.answered(), false, s.head(), "what client " + s.client() + " saw"));
        }
        for (Seen s : seen) {
            // a look may see the same as the one before it, an entry may not stand where another does
            events.add(new Event(s.invoked(), true, s.head() + 1, "the look of client " + s.client()));
        }
        // at one and the same moment nothing is before the other
        events.sort(Comparator.comparingLong(Event::at).thenComparing(e -> !e.asking()));
        Event furthest = new Event(0, false, 0, "the beginning");
        for (Event e : events) {
            if (!e.asking() && e.place() > furthest.place()) {
                furthest = e;
            } else if (e.asking() && e.place() <= furthest.place()) {
                return Optional.of(e.what() + " leads to " + e.place() + " although " + furthest.what() + " had told "
                        + furthest.place() + " before it was asked");
            }
        }
        return Optional.empty();
    }
}
