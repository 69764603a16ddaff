package fayline.flow.record;

import fayline.flow.record.proof.Digest;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The record up to some entry, as the root of the tree over the hashes of its entries (RFC 9162, section 2.1). From it, a single
 * entry is proved by a few hashes. On paper it is short: the first 128 bits of the root as 26 letters and digits of RFC 4648,
 * section 6, which leaves out 0, 1 and 8 because they pass for O, I and B.
 *
 * @param seq sequence of the last entry; 0 where there is none
 * @param root root of the tree: 64 hexadecimal digits, or its first 32 as read from paper
 */
public record TreeHead(long seq, String root) implements KeptHead {
    private static final String DIGITS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    private static final int PAPER_BYTES = 16;
    private static final int PAPER_DIGITS = 26;
    private static final int GROUP = 5;
    private static final int RADIX = 32;

    /** 26 digits of five bits hold two bits more than 128: the last two are nought. */
    private static final int SPARE_BITS = 2;

    private static final Pattern PAPER = Pattern.compile("([0-9]{1,15})-((?:[A-Za-z0-8][ -]?){26})");
    private static final Pattern HEX = Pattern.compile("(?:[0-9a-f]{32}){1,2}");

    /** Checks the root. */
    public TreeHead {
        if (seq < 0 || !HEX.matcher(root).matches()) {
            throw new IllegalArgumentException("found " + seq + " and \"" + root
                    + "\", expected a sequence number and 32 or 64 hexadecimal digits");
        }
    }

    /** The head of a record with a given tree. */
    public static TreeHead of(long seq, Digest root) {
        return new TreeHead(seq, root.hex());
    }

    /** As printed and typed: {@code 128-MFRGG-ZDFMZ-TWQ2L-KNVWX-ABCDE-A}. */
    public String paper() {
        byte[] first = Arrays.copyOf(HexFormat.of().parseHex(root), PAPER_BYTES);
        BigInteger bits = new BigInteger(1, first).shiftLeft(SPARE_BITS);
        StringBuilder out = new StringBuilder().append(seq);
        for (int i = 0; i < PAPER_DIGITS; i++) {
            if (i % GROUP == 0) {
                out.append('-');
            }
            int shift = (PAPER_DIGITS - 1 - i) * GROUP;
            out.append(DIGITS.charAt(bits.shiftRight(shift).intValue() & (RADIX - 1)));
        }
        return out.toString();
    }

    /** Whether a text has the form of {@link #paper()}, misread digits allowed. */
    static boolean isPaper(String text) {
        return PAPER.matcher(text.strip()).matches() && !text.strip().matches("[0-9]{1,15}-[0-9a-f]{8,64}");
    }

    /**
     * Reads a head from paper: in small or capital letters, with or without hyphens, 0, 1 and 8 taken for O, I and B.
     *
     * @throws IllegalArgumentException with what was expected
     */
    static TreeHead ofPaper(String text) {
        Matcher m = PAPER.matcher(text.strip());
        if (!m.matches()) {
            throw new IllegalArgumentException("found \"" + text
                    + "\", expected a sequence number, a hyphen and 26 letters and digits, as they stand on the sheet");
        }
        BigInteger bits = BigInteger.ZERO;
        String digits = m.group(2).toUpperCase(Locale.ROOT).replaceAll("[ -]", "");
        for (char c :
                digits.replace('0', 'O').replace('1', 'I').replace('8', 'B').toCharArray()) {
            bits = bits.shiftLeft(GROUP).add(BigInteger.valueOf(DIGITS.indexOf(c)));
        }
        String hex = bits.shiftRight(SPARE_BITS).toString(16);
        return new TreeHead(Long.parseLong(m.group(1)), "0".repeat(2 * PAPER_BYTES - hex.length()) + hex);
    }

    @Override
    public boolean fits(Entry last, Digest of) {
        return of.hex().startsWith(root);
    }

    @Override
    public String toString() {
        return paper();
    }
}
