package fayline.store.file.rule.able;

import fayline.flow.project.shop.Person;
import java.util.List;

/**
 * The usual week of the crew in slots of five minutes from Monday 00:00: how many are in. Volunteers are not counted on; a
 * break does not end work that may not stop.
 */
final class WeekHours {
    static final int SLOT_MIN = 5;
    private static final int DAY = 24 * 60 / SLOT_MIN;
    private static final int WEEK = 7 * DAY;

    private final int[] present = new int[WEEK];

    WeekHours(List<Person> people) {
        for (Person p : people) {
            boolean[] in = new boolean[WEEK];
            for (Person.Hours h : p.hours()) {
                int from = (h.from().toSecondOfDay() / 60 + SLOT_MIN - 1) / SLOT_MIN;
                int to = h.to().toSecondOfDay() / 60 / SLOT_MIN;
                h.days().forEach(day -> {
                    for (int i = from; i < to; i++) {
                        in[(day.getValue() - 1) * DAY + i] = true;
                    }
                });
            }
            for (int i = 0; i < WEEK; i++) {
                present[i] += in[i] ? 1 : 0;
            }
        }
    }

    /** The longest time for which so many are in together, in minutes. */
    int longestMin(int people) {
        int longest = 0;
        int run = 0;
        for (int i = 0; i < 2 * WEEK; i++) {
            run = present[i % WEEK] >= people ? Math.min(WEEK, run + 1) : 0;
            longest = Math.max(longest, run);
        }
        return longest * SLOT_MIN;
    }

    /** The slots at which so many can begin something that takes so long without a stop. */
    boolean[] starts(int people, double minutes) {
        int slots = Math.max(1, (int) Math.ceil(minutes / SLOT_MIN - 1e-9));
        boolean[] can = new boolean[WEEK];
        int run = 0;
        for (int i = 2 * WEEK - 1; i >= 0; i--) {
            run = present[i % WEEK] >= people ? run + 1 : 0;
            if (i < WEEK) {
                can[i] = run >= slots;
            }
        }
        return can;
    }

    /** The slots at whose start so many may just have ended something: those after a slot in which they are in. */
    boolean[] ends(int people) {
        boolean[] can = new boolean[WEEK];
        for (int i = 0; i < WEEK; i++) {
            can[i] = present[(i + WEEK - 1) % WEEK] >= people;
        }
        return can;
    }

    /** Whether some slot of the second set lies from least to most minutes after one of the first. */
    static boolean meet(boolean[] first, boolean[] second, double leastMin, double mostMin) {
        int lo = (int) Math.floor(leastMin / SLOT_MIN);
        double span = Math.ceil(mostMin / SLOT_MIN) - lo;
        if (span < 0) {
            return false;
        }
        int width = (int) Math.min(WEEK - 1, span);
        int[] before = new int[2 * WEEK + 1];
        for (int i = 0; i < 2 * WEEK; i++) {
            before[i + 1] = before[i] + (second[i % WEEK] ? 1 : 0);
        }
        for (int t = 0; t < WEEK; t++) {
            int from = (t + lo) % WEEK;
            if (first[t] && before[Math.min(2 * WEEK, from + width + 1)] > before[from]) {
                return true;
            }
        }
        return false;
    }
}
