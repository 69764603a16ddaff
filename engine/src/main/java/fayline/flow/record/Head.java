package fayline.flow.record;

import fayline.flow.record.proof.Digest;

/**
 * Where a chain ends.
 *
 * @param seq sequence of the last entry; 0 where there is none
 * @param hash its hash
 */
public record Head(long seq, String hash) implements KeptHead {
    /** The head of an empty chain. */
    public static final Head EMPTY = new Head(0, Entry.NO_PREVIOUS);

    /** As printed and typed: {@code 128-3f2a...}. */
    @Override
    public String toString() {
        return seq + "-" + hash;
    }

    @Override
    public boolean fits(Entry last, Digest root) {
        return last.hash().startsWith(hash);
    }

    /**
     * Reads a head as {@link #toString()} writes it; the hash may be cut to its first digits.
     *
     * @throws IllegalArgumentException with what was expected
     */
    public static Head parse(String text) {
        if (!text.matches("[0-9]{1,15}-[0-9a-f]{8,64}")) {
            throw new IllegalArgumentException("found \"" + text
                    + "\", expected a sequence number, a hyphen and the 26 letters and digits of a record sheet, or at least 8 digits"
                    + " of the last entry's hash, as 128-3f2a90bc");
        }
        int hyphen = text.indexOf('-');
        return new Head(Long.parseLong(text.substring(0, hyphen)), text.substring(hyphen + 1));
    }
}
