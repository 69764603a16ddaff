package fayline.method.rate;

import java.util.List;

/**
 * One finished piece of work against what was reckoned for it.
 *
 * @param id what it was
 * @param kind the kind of work
 * @param people who did it
 * @param repeat how often this very work had been done, this time included; from 1
 * @param estimatedMin person-minutes by the recipe; positive
 * @param bookedMin person-minutes that it took; positive
 */
public record BookedWork(
        String id, String kind, List<String> people, int repeat, double estimatedMin, double bookedMin) {
    /** Copies the list and checks the numbers. */
    public BookedWork {
        people = List.copyOf(people);
        if (repeat < 1 || !(estimatedMin > 0) || !(bookedMin > 0)) {
            throw new IllegalArgumentException(id + ": time " + repeat + ", " + estimatedMin + " min estimated, "
                    + bookedMin + " min booked; expected a count from 1 and positive minutes");
        }
    }

    /** Booked against estimated. */
    public double ratio() {
        return bookedMin / estimatedMin;
    }
}
