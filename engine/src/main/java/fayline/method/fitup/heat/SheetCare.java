package fayline.method.fitup.heat;

/**
 * The question what to mind with an acrylic sheet besides its expansion.
 *
 * @param shopDegC temperature of the sheet when it is cut, drilled or fitted
 * @param reachMm distance from the place where it is tied to its farthest edge; not negative
 */
public record SheetCare(double shopDegC, double reachMm) {
    /** Checks the range. */
    public SheetCare {
        Heat.requireTemperature(shopDegC);
        if (!(reachMm >= 0) || Double.isInfinite(reachMm)) {
            throw new IllegalArgumentException("a sheet reaches " + reachMm + " mm");
        }
    }
}
