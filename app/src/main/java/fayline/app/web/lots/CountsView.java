package fayline.app.web.lots;

import java.util.List;

/**
 * What stock-takes said.
 *
 * @param takes the latest first
 */
public record CountsView(List<Take> takes) {
    /** Copies the list. */
    public CountsView {
        takes = List.copyOf(takes);
    }

    /**
     * A stock-take.
     *
     * @param when when and by whom
     * @param entry its entry's page
     * @param counts lots counted with what was left
     * @param audits what it says of mixing ratios
     */
    public record Take(String when, String entry, List<Count> counts, List<Audit> audits) {
        /** Copies the lists. */
        public Take {
            counts = List.copyOf(counts);
            audits = List.copyOf(audits);
        }
    }

    /** A lot and what was left of it. */
    public record Count(LotView.Link lot, String left) {}

    /**
     * What is said of a ratio.
     *
     * @param system the system
     * @param verdict in words
     * @param bad whether it was not kept
     * @param good whether it was kept
     * @param lots its lots
     * @param says sentences
     * @param assumed what was assumed
     * @param figures used, expected, found
     * @param mixes mixes in doubt
     * @param parts parts in doubt
     */
    public record Audit(
            String system,
            String verdict,
            boolean bad,
            boolean good,
            List<LotView.Link> lots,
            List<String> says,
            List<String> assumed,
            List<LotView.Fact> figures,
            List<Mix> mixes,
            List<LotView.Link> parts) {
        /** Copies the lists. */
        public Audit {
            lots = List.copyOf(lots);
            says = List.copyOf(says);
            assumed = List.copyOf(assumed);
            figures = List.copyOf(figures);
            mixes = List.copyOf(mixes);
            parts = List.copyOf(parts);
        }
    }

    /** A mix in doubt: when, which batch, its step, its entry. */
    public record Mix(String when, String batch, LotView.Link step, String entry) {}
}
