package fayline.app.pdf.fitcard;

import fayline.app.drawing.Drawing;
import fayline.app.pdf.CardSheet;
import java.util.List;
import java.util.Optional;

/**
 * The card of a fit in words, in a reader's units: what both the screen and the paper show.
 *
 * @param fit the fit's id
 * @param path the card's address within the program
 * @param name the fit's name
 * @param part the part's name; empty where none is named
 * @param hand {@code left} or {@code right}; empty for neither
 * @param facts what it is fitted to and what the card rests on, as pairs
 * @param foot revision and definition, for the foot of the page
 * @param go whether nothing stops the adhesive
 * @param verdict the same in words
 * @param stops what stops it, a sentence each
 * @param notes what else to know, a sentence each
 * @param move the move; empty where none can be told
 * @param atMarks where marked places go
 * @param holds places where it is held and clamped
 * @param widths the widths of its frame
 * @param sprung its frame clamped and let go, where it is told as beams
 * @param located how it is located and how sure that is, as pairs
 * @param adhesive the joint, its adhesive and bond line, as pairs
 * @param working how long the adhesive can be worked, as pairs
 * @param lastChance what to do with the stations below
 * @param drawing how it is set and where it is held, drawn
 * @param readings stations to read under clamps before gel
 * @param cautions dangers and what to do about them
 */
public record FitSheet(
        String fit,
        String path,
        String name,
        String part,
        String hand,
        List<CardSheet.Pair> facts,
        String foot,
        boolean go,
        String verdict,
        List<String> stops,
        List<String> notes,
        String move,
        List<String> atMarks,
        List<Hold> holds,
        List<WidthSheet> widths,
        Optional<SprungSheet> sprung,
        List<CardSheet.Pair> located,
        List<CardSheet.Pair> adhesive,
        List<CardSheet.Pair> working,
        String lastChance,
        Drawing drawing,
        List<Reading> readings,
        List<CardSheet.Pair> cautions) {
    /** Copies the lists. */
    public FitSheet {
        facts = List.copyOf(facts);
        stops = List.copyOf(stops);
        notes = List.copyOf(notes);
        atMarks = List.copyOf(atMarks);
        holds = List.copyOf(holds);
        widths = List.copyOf(widths);
        located = List.copyOf(located);
        adhesive = List.copyOf(adhesive);
        working = List.copyOf(working);
        readings = List.copyOf(readings);
        cautions = List.copyOf(cautions);
    }

    /**
     * A place where the part is held.
     *
     * @param point the index point
     * @param place where it is, in words
     * @param shim the stack of pieces
     * @param force how hard to clamp
     */
    public record Hold(String point, String place, String shim, String force) {}

    /**
     * A station to read under clamps.
     *
     * @param station its mark
     * @param where where it is
     * @param now the gap as read
     * @param target the gap to find
     * @param limits from where to where it may be
     * @param flushTarget the flush to find; empty where none is known
     * @param flushLimits from where to where the flush may be
     * @param flushNow the flush as read; empty where it was not
     * @param decides whether it decides
     */
    public record Reading(
            String station,
            String where,
            String now,
            String target,
            String limits,
            String flushTarget,
            String flushLimits,
            String flushNow,
            boolean decides) {}
}
