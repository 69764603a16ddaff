package fayline.app.web.forecast;

import java.util.List;

/**
 * What the forecast shows.
 *
 * @param progress how far the trial plans are, in words; empty once all are made
 * @param ends the drawing of the ends; empty while it is not there
 * @param rows the same in words
 * @param holding which steps most often hold the end
 * @param history what history says; empty lines where it says nothing yet
 * @param historyDrawing hours against months; empty where no spread is known
 * @param slips why finished steps slipped, the dearest reason first
 * @param joined both together, in sentences
 * @param assumed what is assumed, in sentences
 * @param paces changes of pace that count, in sentences
 */
public record ForecastView(
        String progress,
        String ends,
        List<Row> rows,
        List<Holding> holding,
        List<Fact> history,
        String historyDrawing,
        List<Slipped> slips,
        List<String> joined,
        List<String> assumed,
        List<String> paces) {
    /** Copies the lists. */
    public ForecastView {
        rows = List.copyOf(rows);
        holding = List.copyOf(holding);
        history = List.copyOf(history);
        slips = List.copyOf(slips);
        joined = List.copyOf(joined);
        assumed = List.copyOf(assumed);
        paces = List.copyOf(paces);
    }

    /**
     * A reason.
     *
     * @param why the reason in words
     * @param steps how many steps name it
     * @param beyond hours beyond the estimates
     */
    public record Slipped(String why, int steps, String beyond) {}

    /**
     * An end.
     *
     * @param name what ends
     * @param p50 the day that half of the trials pass
     * @param p80 the day that one of five passes
     * @param due the day it is due, empty for none
     * @param inTime the share of trials in time, empty for none
     * @param late whether half of the trials are late
     */
    public record Row(String name, String p50, String p80, String due, String inTime, boolean late) {}

    /**
     * A step that holds the end.
     *
     * @param name the step
     * @param share how often
     * @param link its card
     */
    public record Holding(String name, String share, String link) {}

    /**
     * A figure from history.
     *
     * @param name what it is
     * @param value the value
     * @param why how it came about
     */
    public record Fact(String name, String value, String why) {}
}
