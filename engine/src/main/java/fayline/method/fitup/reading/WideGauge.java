package fayline.method.fitup.reading;

/**
 * A flat gauge that bridges a concave neighbour edge and so reads too little.
 *
 * @param radiusMm radius of the neighbour's edge
 * @param widthMm width of the gauge; at most twice the radius
 */
public record WideGauge(double radiusMm, double widthMm) {
    /**
     * Checks that the gauge fits the edge.
     *
     * @throws IllegalArgumentException if a number is not positive or the gauge is wider than the edge's diameter
     */
    public WideGauge {
        if (!(radiusMm > 0) || Double.isInfinite(radiusMm) || !(widthMm > 0) || !(widthMm <= 2 * radiusMm)) {
            throw new IllegalArgumentException(
                    "a gauge of " + widthMm + " mm does not bridge an edge of radius " + radiusMm + " mm");
        }
    }

    /** What the gauge leaves out: ρ − √(ρ² − w²/4), in mm. */
    public double missedMm() {
        return radiusMm - Math.sqrt(radiusMm * radiusMm - widthMm * widthMm / 4);
    }
}
