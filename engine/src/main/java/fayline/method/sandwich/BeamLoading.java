package fayline.method.sandwich;

/**
 * How a beam on two supports is loaded: total load P, span S. Deflection of the middle is P S^3 / (bending D) + P S / (shear U),
 * the largest moment P S / moment.
 */
public enum BeamLoading {
    /** One load in the middle. */
    THREE_POINT("three point", 48, 4, 4),
    /** Two loads, each a quarter of the span from a support. */
    QUARTER_POINT("quarter point", 768.0 / 11, 8, 8),
    /** Two loads, each a third of the span from a support. */
    THIRD_POINT("third point", 1296.0 / 23, 6, 6);

    private final String words;
    private final double bending;
    private final double shear;
    private final double moment;

    BeamLoading(String words, double bending, double shear, double moment) {
        this.words = words;
        this.bending = bending;
        this.shear = shear;
        this.moment = moment;
    }

    /** As it is written. */
    public String words() {
        return words;
    }

    double bending() {
        return bending;
    }

    double shear() {
        return shear;
    }

    double moment() {
        return moment;
    }
}
