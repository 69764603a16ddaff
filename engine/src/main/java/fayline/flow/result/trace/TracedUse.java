package fayline.flow.result.trace;

import java.time.Instant;

/**
 * One use of a lot.
 *
 * @param lot the lot
 * @param component which part of a system it was, {@code resin} or {@code hardener}; empty otherwise
 * @param step the step, {@code project/made/make-number/key}
 * @param at when
 * @param by who told it
 * @param seq its entry
 * @param sort how it was told
 * @param what which batch or ply, as typed; may be empty
 * @param amount how much, as typed; empty where nobody said
 * @param with the lot of the other part of the mix; empty otherwise
 */
public record TracedUse(
        String lot,
        String component,
        String step,
        Instant at,
        String by,
        long seq,
        Sort sort,
        String what,
        String amount,
        String with) {
    /** How a use was told. */
    public enum Sort {
        /** A mix. */
        MIX("mix"),
        /** A ply. */
        PLY("ply"),
        /** Fetched for the step. */
        DRAWN("drawn"),
        /** Named beside a reading. */
        READING("reading");

        private final String words;

        Sort(String words) {
            this.words = words;
        }

        /** In a word for pages and tables. */
        public String words() {
            return words;
        }
    }

    /** The part or joint, {@code project/made}. */
    public String made() {
        String[] bits = step.split("/", -1);
        return bits.length < 2 ? step : bits[0] + "/" + bits[1];
    }
}
