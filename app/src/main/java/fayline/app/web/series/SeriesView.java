package fayline.app.web.series;

import java.util.List;

/**
 * What the page of readings over time shows.
 *
 * @param charts one for each series
 */
public record SeriesView(List<Chart> charts) {
    /** Copies the list. */
    public SeriesView {
        charts = List.copyOf(charts);
    }

    /**
     * A series.
     *
     * @param name what it is of
     * @param what how each value comes about
     * @param drawing drawn; empty where nothing was read
     * @param said how it stands, in a sentence
     * @param beyond values beyond a limit
     * @param why how the limits come about, a sentence each; empty where there are none
     * @param lessons what bonds like these taught
     * @param points every value, the latest first
     */
    public record Chart(
            String name,
            String what,
            String drawing,
            String said,
            List<Row> beyond,
            List<String> why,
            List<String> lessons,
            List<Row> points) {
        /** Copies the lists. */
        public Chart {
            beyond = List.copyOf(beyond);
            why = List.copyOf(why);
            lessons = List.copyOf(lessons);
            points = List.copyOf(points);
        }
    }

    /**
     * A value.
     *
     * @param name what was measured
     * @param link where it belongs
     * @param at when
     * @param value the value
     * @param typed the readings it rests on, as typed
     * @param entry the entry of the last of them
     */
    public record Row(String name, String link, String at, String value, String typed, long entry) {}
}
