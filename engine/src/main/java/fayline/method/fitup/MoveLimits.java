package fayline.method.fitup;

/**
 * How far the part may be moved: what the flange's width or a pin allows.
 *
 * @param dxLowMm least shift along x
 * @param dxHighMm most
 * @param dyLowMm least shift up
 * @param dyHighMm most
 * @param turnLowRad least turn
 * @param turnHighRad most
 */
public record MoveLimits(
        double dxLowMm, double dxHighMm, double dyLowMm, double dyHighMm, double turnLowRad, double turnHighRad) {
    /** Within 10 mm and 2 degrees, beyond which the part is in the wrong place and should be read again. */
    public static final MoveLimits WIDEST = of(10, 10, Math.toRadians(2));

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if a least is above its most
     */
    public MoveLimits {
        if (!(dxLowMm <= dxHighMm) || !(dyLowMm <= dyHighMm) || !(turnLowRad <= turnHighRad)) {
            throw new IllegalArgumentException("move limits stand the wrong way round: x " + dxLowMm + " to " + dxHighMm
                    + ", y " + dyLowMm + " to " + dyHighMm + ", turn " + turnLowRad + " to " + turnHighRad);
        }
    }

    /** The same way in both directions. */
    public static MoveLimits of(double dxMm, double dyMm, double turnRad) {
        return new MoveLimits(-dxMm, dxMm, -dyMm, dyMm, -turnRad, turnRad);
    }
}
