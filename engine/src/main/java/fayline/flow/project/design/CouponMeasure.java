package fayline.flow.project.design;

/** How a witness piece is tested. */
public enum CouponMeasure {
    /** Hardness by an indentor, a number from 0 to 100 without unit [astm-d2583]. */
    BARCOL("Barcol hardness", "ASTM D2583"),
    /** Strength in tension, a stress [astm-d3039]. */
    TENSILE("tensile strength", "ASTM D3039"),
    /** Strength of a single lap in shear, a stress [astm-d1002]. */
    LAP_SHEAR("lap shear strength", "ASTM D1002"),
    /** Fibre content by mass after the resin is burnt off, a share [astm-d3171]. */
    BURN_OFF("fibre content by burn-off, by mass", "ASTM D3171 or D2584");

    private final String words;
    private final String standard;

    CouponMeasure(String words, String standard) {
        this.words = words;
        this.standard = standard;
    }

    /** What is measured, in words. */
    public String words() {
        return words;
    }

    /** The standard that says how. */
    public String standard() {
        return standard;
    }
}
