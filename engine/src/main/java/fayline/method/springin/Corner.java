package fayline.method.springin;

/**
 * A corner as it cures.
 *
 * @param arcDeg how far it turns: 180 less the included angle, degrees; above 0, below 180
 * @param alphaInPlanePerK expansion along the arc, 1/K
 * @param alphaThroughPerK expansion through the thickness, 1/K
 * @param changeK room temperature less that at which the resin set, K; negative when it cools
 * @param shrinkInPlane strain of cure along the arc after the resin gelled; negative when it shrinks
 * @param shrinkThrough the same through the thickness
 */
public record Corner(
        double arcDeg,
        double alphaInPlanePerK,
        double alphaThroughPerK,
        double changeK,
        double shrinkInPlane,
        double shrinkThrough) {
    private static final double HALF_TURN = 180;
    private static final double SMALL = 0.1;

    /**
     * Refuses what no corner can be.
     *
     * @throws IllegalArgumentException if the arc is outside 0 to 180 degrees or a strain is not small
     */
    public Corner {
        if (!(arcDeg > 0 && arcDeg < HALF_TURN)) {
            throw new IllegalArgumentException("arc angle: found " + arcDeg + " deg, expected above 0 and below 180");
        }
        small("expansion in plane times the temperature change", alphaInPlanePerK * changeK);
        small("expansion through the thickness times the temperature change", alphaThroughPerK * changeK);
        small("cure shrinkage in plane", shrinkInPlane);
        small("cure shrinkage through the thickness", shrinkThrough);
    }

    private static void small(String what, double strain) {
        if (!(Math.abs(strain) < SMALL)) {
            throw new IllegalArgumentException(what + ": found " + strain + ", expected a strain below 0.1 either way");
        }
    }
}
