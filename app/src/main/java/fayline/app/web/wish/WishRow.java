package fayline.app.web.wish;

import fayline.app.drawing.Mark;
import java.util.List;

/**
 * What was wished in one act, as it is listed.
 *
 * @param id the wish by which it is withdrawn
 * @param lines what is wished of which step
 * @param by who wishes it, and when
 * @param why the reason; empty where none was given
 * @param state whether plans are bound by it, and can keep it
 * @param note what has become of it, where the plan does not simply keep it
 * @param cost what it costs, in a sentence; empty while nobody asked
 */
public record WishRow(String id, List<Line> lines, String by, String why, State state, String note, String cost) {
    /** Copies the list. */
    public WishRow {
        lines = List.copyOf(lines);
    }

    /** How it stands. */
    public enum State {
        KEPT(Mark.HOLD, "hold"),
        BLOCKS(Mark.TROUBLE, "trouble"),
        PAST(Mark.DONE, "quiet");

        private final Mark mark;
        private final String tone;

        State(Mark mark, String tone) {
            this.mark = mark;
            this.tone = tone;
        }

        /** The mark beside it. */
        public Mark mark() {
            return mark;
        }

        /** The tone of the mark. */
        public String tone() {
            return tone;
        }
    }

    /**
     * What is wished of a step.
     *
     * @param what as {@code Ben on it}; several with semicolons
     * @param step what people call the step
     * @param link where the step is decided about; empty where nothing can be wished of it any more
     */
    public record Line(String what, String step, String link) {}

    /** All that is wished, in one line. */
    public String words() {
        return String.join("; ", lines.stream().map(Line::what).toList());
    }
}
