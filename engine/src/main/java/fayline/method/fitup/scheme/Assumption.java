package fayline.method.fitup.scheme;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;

/**
 * What may be assumed where nobody has given an uncertainty. Every one is common practice without a source; it is taken only
 * where the caller says so, and is shown as assumed.
 */
public enum Assumption {
    /** Half-width of a tape mark, anything within it as likely. */
    TAPE_MARK("a tape mark is within", 0.5, " of its line"),
    /** Standard deviation of looking at a mark on a slant. */
    TAPE_PARALLAX("reading a tape mark on a slant adds a standard deviation of", 0.1, ""),
    /** Standard deviation of a spacer: stock thickness, seating, tape film. */
    SPACER("a spacer holds with a standard deviation of", 0.06, ""),
    /** Standard deviation of the place of a drilled hole. */
    PIN_POSITION("a drilled hole sits with a standard deviation of", 0.05, ""),
    /** Standard deviation of each face of a fixture block. */
    BLOCK_FACE("each face of a fixture block holds with a standard deviation of", 0.03, ""),
    /** Standard deviation of where the whole block sits. */
    BLOCK_PLACE("the whole fixture block sits with a standard deviation of", 0.08, ""),
    /** Standard uncertainty of a reading by taper gauge. */
    READING("a gap is read with a standard uncertainty of", 0.06, ""),
    /** Standard uncertainty that all readings of one hand share. */
    READING_COMMON("readings of one hand share a standard uncertainty of", 0.05, "");

    private static final double TENTH_MM = 0.1;
    private final String before;
    private final double valueMm;
    private final String after;

    Assumption(String before, double valueMm, String after) {
        this.before = before;
        this.valueMm = valueMm;
        this.after = after;
    }

    /** The number, in mm. */
    public double valueMm() {
        return valueMm;
    }

    /** The assumption in words. */
    public Phrase words() {
        return Phrase.of("%s %s%s", before, Amount.mm(valueMm, valueMm < TENTH_MM ? 2 : 1), after);
    }
}
