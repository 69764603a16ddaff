package fayline.flow.result.hours;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * The hours of a project.
 *
 * @param booked all time, in the order of days, people and steps
 * @param tasks the builder's share of each task of the local list
 */
public record HoursResult(List<BookedTime> booked, List<TaskShare> tasks) {
    /** Copies the lists. */
    public HoursResult {
        booked = List.copyOf(booked);
        tasks = List.copyOf(tasks);
    }

    /** Minutes of everybody. */
    public double minutes() {
        return booked.stream().mapToDouble(BookedTime::minutes).sum();
    }

    /** Minutes by something, as by person. */
    public SortedMap<String, Double> by(Function<BookedTime, String> key) {
        SortedMap<String, Double> sums = new TreeMap<>();
        booked.forEach(b -> sums.merge(key.apply(b), b.minutes(), Double::sum));
        return sums;
    }

    /** The share over all tasks that were worked on, each by its points, from 0 to 1; empty while there is none. */
    public OptionalDouble share() {
        double points = 0;
        double own = 0;
        for (TaskShare t : tasks) {
            if (t.share().isPresent()) {
                points += t.task().points();
                own += t.task().points() * t.share().getAsDouble();
            }
        }
        return points <= 0 ? OptionalDouble.empty() : OptionalDouble.of(own / points);
    }
}
