package fayline.app.web.fit;

import fayline.app.pdf.CardSheet;
import fayline.app.pdf.fitcard.SprungSheet;
import fayline.app.pdf.fitcard.WidthSheet;
import fayline.app.web.frame.Frame;
import java.util.List;
import java.util.Optional;

/**
 * What the page of a fit shows.
 *
 * @param id its id
 * @param name its name
 * @param facts what it is, as pairs
 * @param parts the parts it can belong to, its own chosen
 * @param drawing before and after, drawn; empty where no place is known
 * @param answer what to do now; empty where too little is known
 * @param ways the ways to judge the move, side by side; empty where there is none
 * @param first what is needed before there is an answer, a sentence each
 * @param schemesBefore ways to locate it where nothing is read yet
 * @param missing what nobody has given, so that no chance is told
 * @param assumed what is assumed instead
 * @param strip every state in its order, read or to come
 * @param over the gaps over the states; empty for a single state with nothing to come
 * @param sure how sure the chosen way to locate it is, in a line; empty where no chance is told
 * @param wanted the gap wanted, in a line
 * @param states what was read, the state read last first
 * @param cast the bond line as test castings show it; empty where none was taken
 * @param later states to come that disturb the gap
 * @param heat what heat does, empty where it is not asked
 * @param after the bonded part against what was foretold
 * @param opposite what the opposite hand teaches
 * @param findings what must be said
 * @param widths the widths of its frame that springs; none where none is named
 * @param sprung the frame clamped and let go, where it is told as beams
 * @param assuming whether the usual values are taken
 */
public record FitView(
        String id,
        String name,
        List<Fact> facts,
        List<Frame.Choice> parts,
        String drawing,
        Optional<FitAnswer> answer,
        Optional<FitWaysView> ways,
        List<String> first,
        List<FitAnswer.Scheme> schemesBefore,
        List<String> missing,
        List<String> assumed,
        List<Strip> strip,
        Optional<Over> over,
        String sure,
        String wanted,
        List<State> states,
        List<CardSheet.Pair> cast,
        List<Later> later,
        Optional<Heat> heat,
        Optional<After> after,
        Optional<Opposite> opposite,
        List<String> findings,
        List<WidthSheet> widths,
        Optional<Sprung> sprung,
        boolean assuming) {
    /** Copies the lists. */
    public FitView {
        facts = List.copyOf(facts);
        parts = List.copyOf(parts);
        first = List.copyOf(first);
        schemesBefore = List.copyOf(schemesBefore);
        missing = List.copyOf(missing);
        assumed = List.copyOf(assumed);
        strip = List.copyOf(strip);
        states = List.copyOf(states);
        cast = List.copyOf(cast);
        later = List.copyOf(later);
        findings = List.copyOf(findings);
        widths = List.copyOf(widths);
    }

    /** Whether it belongs to a part. */
    public boolean attached() {
        return parts.stream().anyMatch(Frame.Choice::chosen);
    }

    /**
     * How the gaps went through the states.
     *
     * @param drawing drawn, states to come foretold
     * @param words the move into each state, a sentence each
     */
    public record Over(String drawing, List<String> words) {
        /** Copies the list. */
        public Over {
            words = List.copyOf(words);
        }
    }

    /**
     * The frame clamped and let go.
     *
     * @param sheet in words
     * @param drawing drawn; empty where there is no answer
     */
    public record Sprung(SprungSheet sheet, String drawing) {}

    /**
     * A fact.
     *
     * @param name what
     * @param value how much
     * @param link a page about it; empty for none
     */
    public record Fact(String name, String value, String link) {}

    /**
     * A state in the strip.
     *
     * @param name the state
     * @param said how far it is read
     * @param link its readings, or where to read them
     * @param now whether it is the state read last
     */
    public record Strip(String name, String said, String link, boolean now) {}

    /**
     * What was read in a state.
     *
     * @param id its id
     * @param name the state
     * @param temperature the temperature noted; empty for none
     * @param rows the stations
     * @param since how the part moved since the state read before; empty for the first
     * @param last whether it is the state read last
     */
    public record State(String id, String name, String temperature, List<Row> rows, List<String> since, boolean last) {
        /** Copies the lists. */
        public State {
            rows = List.copyOf(rows);
            since = List.copyOf(since);
        }
    }

    /**
     * A station in a state.
     *
     * @param mark its mark
     * @param where where it is
     * @param gap its gap and casting readings as typed
     * @param mean their mean where there are several, with spread; empty for one
     * @param flush its flush readings as typed
     * @param former what was read here and corrected or withdrawn since
     * @param wanted what is wanted
     * @param again why it should be read again, a sentence each
     * @param readAgain where to read it again
     */
    public record Row(
            String mark,
            String where,
            List<Typed> gap,
            String mean,
            List<Typed> flush,
            List<Former> former,
            String wanted,
            List<String> again,
            String readAgain) {
        /** Copies the lists. */
        public Row {
            gap = List.copyOf(gap);
            flush = List.copyOf(flush);
            former = List.copyOf(former);
            again = List.copyOf(again);
        }
    }

    /**
     * A reading.
     *
     * @param text as typed
     * @param link where it is corrected
     */
    public record Typed(String text, String link) {}

    /**
     * A reading as it was before it was corrected or withdrawn.
     *
     * @param text as typed
     * @param what what became of it, by whom and why
     * @param link where it is corrected
     */
    public record Former(String text, String what, String link) {}

    /**
     * A state to come.
     *
     * @param name the state
     * @param change what it will do
     * @param sure how well that is known; empty where it is not
     * @param origin who says so
     */
    public record Later(String name, String change, String sure, String origin) {}

    /**
     * What heat does.
     *
     * @param rows one for each temperature, or one line for a bonded part
     * @param stations what to set at each station
     * @param findings what must be said
     */
    public record Heat(List<String> rows, List<HeatStation> stations, List<String> findings) {
        /** Copies the lists. */
        public Heat {
            rows = List.copyOf(rows);
            stations = List.copyOf(stations);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Heat at a station.
     *
     * @param mark its mark
     * @param setNow the gap to set now
     * @param least the least gap to set now
     * @param touches the temperature at which it touches; empty where it never does
     */
    public record HeatStation(String mark, String setNow, String least, String touches) {}

    /**
     * The bonded part.
     *
     * @param from the state that foretold it
     * @param rows station by station
     * @param words what it means
     * @param lesson what is learned; empty for nothing
     */
    public record After(String from, List<AfterRow> rows, String words, String lesson) {
        /** Copies the list. */
        public After {
            rows = List.copyOf(rows);
        }
    }

    /**
     * A station of it.
     *
     * @param mark its mark
     * @param foretold the gap foretold
     * @param read the gap read
     * @param off the difference
     * @param z the difference in its uncertainty; empty where that is not known
     * @param flagged whether it is more than twice its uncertainty
     */
    public record AfterRow(String mark, String foretold, String read, String off, String z, boolean flagged) {}

    /**
     * The opposite hand.
     *
     * @param name its fit
     * @param link its page
     * @param lessons what it teaches, a sentence each
     */
    public record Opposite(String name, String link, List<String> lessons) {
        /** Copies the list. */
        public Opposite {
            lessons = List.copyOf(lessons);
        }
    }

    /**
     * How a figure comes about.
     *
     * @param figure what it is
     * @param lines formula, inputs, source
     */
    public record Why(String figure, List<String> lines) {
        /** Copies the list. */
        public Why {
            lines = List.copyOf(lines);
        }
    }
}
