package fayline.app.web.hours;

import java.util.List;

/**
 * Hours.
 *
 * @param from the first day asked for, as a form takes it; empty for from the beginning
 * @param to the last day; empty for up to now
 * @param total all of them, in words
 * @param tables by person, by part, by sort of work
 * @param authority who asks for a share; empty where nobody does
 * @param tasks the share of each task
 * @param share the builder's share of all tasks, in words; empty while none was worked on
 * @param enough whether the share asked for is reached; true where none is asked for
 * @param log the address of the printed log
 */
public record HoursView(
        String from,
        String to,
        String total,
        List<Table> tables,
        String authority,
        List<Task> tasks,
        String share,
        boolean enough,
        String log) {
    /** Copies the lists. */
    public HoursView {
        tables = List.copyOf(tables);
        tasks = List.copyOf(tasks);
    }

    /**
     * Hours by one thing.
     *
     * @param by what it is by
     * @param rows one for each, the most hours first
     */
    public record Table(String by, List<Row> rows) {
        /** Copies the list. */
        public Table {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Hours of one.
     *
     * @param name its name
     * @param hours how many
     */
    public record Row(String name, String hours) {}

    /**
     * A task.
     *
     * @param name its name
     * @param points what it counts
     * @param own the builders' hours
     * @param paid hours of paid people
     * @param bought the share that was bought
     * @param share the builder's share
     */
    public record Task(String name, String points, String own, String paid, String bought, String share) {}
}
