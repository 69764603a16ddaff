package fayline.app.web.fit;

import java.util.List;

/**
 * What the list of fits shows.
 *
 * @param fits the fits, in the definition's order
 * @param chains the chains of bonds, each with the fit at which it ends
 */
public record FitsView(List<Row> fits, List<FitView.Fact> chains) {
    /** Copies the lists. */
    public FitsView {
        fits = List.copyOf(fits);
        chains = List.copyOf(chains);
    }

    /**
     * A fit.
     *
     * @param name its name
     * @param link its page
     * @param part the part's name; empty where none is named yet
     * @param partLink the part's page; empty as well then
     * @param read what was read, a state each
     * @param move the best move in a line; empty where there is none
     * @param trouble what is wrong, a sentence each
     * @param toRead where to read it
     */
    public record Row(
            String name,
            String link,
            String part,
            String partLink,
            List<String> read,
            String move,
            List<String> trouble,
            String toRead) {
        /** Copies the lists. */
        public Row {
            read = List.copyOf(read);
            trouble = List.copyOf(trouble);
        }
    }
}
