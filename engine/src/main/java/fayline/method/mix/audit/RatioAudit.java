package fayline.method.mix.audit;

import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;

/**
 * The question whether two parts were used in their ratio.
 *
 * @param partsResin parts of resin by mass; positive
 * @param partsHardener parts of hardener by mass; positive
 * @param tolerance how far the hardener may be off, of the nominal; not negative
 * @param resin the resin counted
 * @param hardener the hardener counted
 * @param read what the mixes with scale readings took of both
 * @param unread how many mixes have no scale reading; not negative
 * @param coverage probability at which the verdict is to hold, between 0 and 1, as 0.95
 */
public record RatioAudit(
        double partsResin,
        double partsHardener,
        Fraction tolerance,
        Counted resin,
        Counted hardener,
        Read read,
        int unread,
        double coverage) {
    /**
     * Refuses what cannot be.
     *
     * @throws IllegalArgumentException if parts are not positive, the tolerance or a number negative, the coverage outside 0
     *     to 1
     */
    public RatioAudit {
        if (!(partsResin > 0 && partsHardener > 0) || !Double.isFinite(partsHardener / partsResin)) {
            throw new IllegalArgumentException("no ratio: " + partsResin + " to " + partsHardener);
        }
        if (tolerance.ratio() < 0 || unread < 0) {
            throw new IllegalArgumentException("tolerance " + tolerance.ratio() + ", " + unread + " mixes unread");
        }
        if (!(coverage > 0 && coverage < 1)) {
            throw new IllegalArgumentException("a coverage of " + coverage);
        }
    }

    /**
     * What mixes with scale readings took.
     *
     * @param mixes how many
     * @param resin their resin together
     * @param hardener their hardener together
     * @param resinUncertainty standard uncertainty of the resin together; not negative
     * @param hardenerUncertainty standard uncertainty of the hardener together; not negative
     */
    public record Read(int mixes, Mass resin, Mass hardener, Mass resinUncertainty, Mass hardenerUncertainty) {
        /** No mix has a reading. */
        public static final Read NONE = new Read(0, new Mass(0), new Mass(0), new Mass(0), new Mass(0));
    }
}
