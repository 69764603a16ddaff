package fayline.app.pdf;

import fayline.app.drawing.Drawing;
import fayline.flow.plan.WorkStep;
import java.util.List;
import java.util.Optional;

/**
 * A card in words, in a reader's units: what both the screen and the paper show.
 *
 * @param step the step's id
 * @param path the card's address within the program
 * @param title what is done
 * @param kind what sort of work
 * @param made what it is done on
 * @param hand {@code left} or {@code right}; empty for neither
 * @param facts what it belongs to, as pairs
 * @param revision revision and definition, for the foot of the page
 * @param mark the mark by which the print is known again
 * @param whichWay how it lies and the question to answer first; empty where there is nothing to mistake
 * @param when who, where and when, as pairs
 * @param state how far the step is
 * @param unplanned why it is not planned; empty where it is
 * @param stacks the plies drawn, one drawing for each zone
 * @param plies the same as rows
 * @param mixes what goes on the scale
 * @param bag the bag drawn; empty where none is
 * @param bagRows the same as rows
 * @param fetch what to fetch
 * @param say instructions in order
 * @param checks what is checked
 * @param readings what is written down
 * @param signed whether it is a hold point
 * @param windows windows in sentences
 * @param clocks cures that run, with their moments
 * @param cautions dangers and what to do about them
 * @param lessons what earlier parts taught
 * @param findings what the computation says
 */
public record CardSheet(
        String step,
        String path,
        String title,
        String kind,
        String made,
        String hand,
        List<Pair> facts,
        String revision,
        String mark,
        Optional<Pair> whichWay,
        List<Pair> when,
        WorkStep.State state,
        String unplanned,
        List<Drawing> stacks,
        List<Row> plies,
        List<Mix> mixes,
        Optional<Drawing> bag,
        List<Row> bagRows,
        List<Row> fetch,
        List<String> say,
        List<String> checks,
        List<String> readings,
        boolean signed,
        List<Window> windows,
        List<Clock> clocks,
        List<Pair> cautions,
        List<String> lessons,
        List<String> findings) {
    /** Copies the lists. */
    public CardSheet {
        facts = List.copyOf(facts);
        when = List.copyOf(when);
        stacks = List.copyOf(stacks);
        plies = List.copyOf(plies);
        mixes = List.copyOf(mixes);
        bagRows = List.copyOf(bagRows);
        fetch = List.copyOf(fetch);
        say = List.copyOf(say);
        checks = List.copyOf(checks);
        readings = List.copyOf(readings);
        windows = List.copyOf(windows);
        clocks = List.copyOf(clocks);
        cautions = List.copyOf(cautions);
        lessons = List.copyOf(lessons);
        findings = List.copyOf(findings);
    }

    /**
     * Two texts that belong together.
     *
     * @param name what
     * @param value how much, when, or the text
     */
    public record Pair(String name, String value) {}

    /**
     * A row of a list.
     *
     * @param mark its number or nothing
     * @param what the thing
     * @param amount how much
     * @param note what else
     */
    public record Row(String mark, String what, String amount, String note) {}

    /**
     * A window.
     *
     * @param name which one
     * @param times when it opens and shuts, and what missing it costs
     * @param says what rules its ends
     */
    public record Window(String name, String times, String says) {}

    /**
     * A cure that runs.
     *
     * @param what which state of what
     * @param at when it is reached, in words
     * @param iso the same for a countdown; empty where it is reached or not within sight
     * @param key by which a device knows the same clock again, on whatever page it stands
     */
    public record Clock(String what, String at, String iso, String key) {}

    /**
     * A mix on the scale.
     *
     * @param name the system
     * @param purpose what for
     * @param batches the batches in order
     * @param thickened whether a thickener goes in
     * @param total mass over all batches
     * @param facts container, life, temperature, rhythm, lots
     * @param findings what it says about the work, and the ways out
     */
    public record Mix(
            String name,
            String purpose,
            List<Batch> batches,
            boolean thickened,
            String total,
            List<Pair> facts,
            List<String> findings) {
        /** Copies the lists. */
        public Mix {
            batches = List.copyOf(batches);
            facts = List.copyOf(facts);
            findings = List.copyOf(findings);
        }
    }

    /**
     * One batch on the scale.
     *
     * @param number its number
     * @param resin resin
     * @param hardener hardener
     * @param tolerance allowed deviation of the hardener
     * @param thickener thickener; empty for none
     * @param mass the whole
     * @param mixAt when weighing begins, from the first batch on
     * @param usableUntil when it must be used up, from the first batch on
     * @param workMinutes how long it can be worked from its own mixing, in whole minutes
     */
    public record Batch(
            int number,
            String resin,
            String hardener,
            String tolerance,
            String thickener,
            String mass,
            String mixAt,
            String usableUntil,
            long workMinutes) {}
}
