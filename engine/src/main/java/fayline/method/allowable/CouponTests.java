package fayline.method.allowable;

import java.util.List;

/**
 * Results of pieces of one sort, tested alike.
 *
 * @param strengthsPa the strength of each; positive
 * @param atBondFace how many parted between adhesive and surface
 * @param inAdherend how many broke in the adherend, so that the bond bore more
 * @param proportion of all pieces that bear more than the bound; above 0.5, below 1; 0.9 for a B value
 * @param confidence above 0.5, below 1; 0.95 for a B value
 */
public record CouponTests(
        List<Double> strengthsPa, int atBondFace, int inAdherend, double proportion, double confidence) {
    /** Five pieces of a sort are what the test methods ask for at least ([astm-d3039], 8.1). */
    public static final int LEAST = 5;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException for a strength that is not positive, or more failures of a sort than pieces
     */
    public CouponTests {
        strengthsPa = List.copyOf(strengthsPa);
        for (double s : strengthsPa) {
            if (!(s > 0) || !Double.isFinite(s)) {
                throw new IllegalArgumentException("a strength is positive, found " + s + " Pa");
            }
        }
        if (atBondFace < 0 || inAdherend < 0 || atBondFace + inAdherend > strengthsPa.size()) {
            throw new IllegalArgumentException("there are " + strengthsPa.size() + " pieces, found " + atBondFace
                    + " parted at the surface and " + inAdherend + " broken in the adherend");
        }
    }
}
