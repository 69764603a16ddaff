package fayline.flow.record;

import fayline.flow.record.proof.Digest;

/**
 * A head that was kept outside the record, on paper or on a phone: the record as it is now must hold every entry up to it as
 * it stood then.
 */
public sealed interface KeptHead permits Head, TreeHead {
    /** Sequence of the last entry under this head; 0 for that of an empty record. */
    long seq();

    /**
     * Whether the record's beginning is the one that this head was taken of.
     *
     * @param last the entry at {@link #seq()}
     * @param root root of the tree over the entries up to that one
     */
    boolean fits(Entry last, Digest root);

    /**
     * Reads a head in any of its forms: {@link Head#toString()} with its hash perhaps cut short, {@link TreeHead#paper()}, or
     * {@link SignedHead#text()}, whose signature must hold.
     *
     * @throws IllegalArgumentException with what was expected
     */
    static KeptHead parse(String text) {
        String typed = text.strip();
        if (typed.startsWith("{")) {
            return SignedHead.parse(typed).head();
        }
        return TreeHead.isPaper(typed) ? TreeHead.ofPaper(typed) : Head.parse(typed);
    }
}
