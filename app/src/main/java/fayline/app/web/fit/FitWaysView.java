package fayline.app.web.fit;

import java.util.List;
import java.util.Optional;

/**
 * The ways to judge a move, side by side.
 *
 * @param rows one for each way, the recommended one first
 * @param chosen the one that a reader looks at instead of the recommended one; empty for none
 * @param recommended where the recommended one is shown
 */
public record FitWaysView(List<Row> rows, Optional<Chosen> chosen, String recommended) {
    /** Copies the list. */
    public FitWaysView {
        rows = List.copyOf(rows);
    }

    /**
     * A way.
     *
     * @param name what the move is best at
     * @param link where it is shown; empty where there is no move to show
     * @param here whether it is the one shown
     * @param recommended whether it is the recommended one
     * @param move the move in words, or why there is none
     * @param worst the worst gap it leaves and where; empty without a move
     * @param room the least room to a limit, or how far one is passed; empty without a move
     * @param out how many readings end outside; empty without a move
     * @param cut what would have to come off; empty without a move
     */
    public record Row(
            String name,
            String link,
            boolean here,
            boolean recommended,
            String move,
            String worst,
            String room,
            String out,
            String cut) {}

    /**
     * The way that is looked at.
     *
     * @param name what the move is best at
     * @param move the move in words
     * @param marks where marked places go
     * @param outside what ends outside, a sentence each
     */
    public record Chosen(String name, String move, List<String> marks, List<String> outside) {
        /** Copies the lists. */
        public Chosen {
            marks = List.copyOf(marks);
            outside = List.copyOf(outside);
        }
    }
}
