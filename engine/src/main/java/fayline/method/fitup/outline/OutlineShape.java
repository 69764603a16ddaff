package fayline.method.fitup.outline;

/** How the part's edge is given: as a polygon with rounded corners, or as a line of points traced from the part. */
public sealed interface OutlineShape permits RoundedPolygon, TracedLine {
    /** The edge drawn, or why it cannot be. */
    default OutlineResult drawn() {
        return OutlineCalculator.calculate(this);
    }
}
