package fayline.method.tube;

import java.util.Optional;

/**
 * A round tube.
 *
 * @param outerM outer diameter; positive
 * @param wallM wall; positive, less than half the diameter
 */
public record TubeSection(double outerM, double wallM) {
    private static final double SIXTEENTH_M = 0.0254 / 16;

    /** The least diameter in a bend as a part of the tube's own [faa-h-8083-30]. */
    public static final double LEAST_OVAL = 0.75;

    /**
     * Refuses what is no tube.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public TubeSection {
        if (!(outerM > 0 && wallM > 0 && 2 * wallM < outerM && Double.isFinite(outerM))) {
            throw new IllegalArgumentException("a tube has a wall above nought and less than half its diameter, found "
                    + 1e3 * wallM + " mm in " + 1e3 * outerM + " mm");
        }
    }

    /**
     * The outer diameter of a tube by its number: sixteenths of an inch [faa-h-8083-30].
     *
     * @param number 1 or more
     */
    public static double outerOfNumberM(double number) {
        if (!(number >= 1)) {
            throw new IllegalArgumentException("a tube's number is 1 or more, found " + number);
        }
        return number * SIXTEENTH_M;
    }

    /** Inner diameter in metres. */
    public double boreM() {
        return outerM - 2 * wallM;
    }

    /**
     * Radius at which a tube keeps its length in a bend: R - OD/2 + k OD.
     *
     * @param k where it lies across the tube, 0 inside to 1 outside; 0.5 is the centreline. It comes from a trial bend.
     * @throws IllegalArgumentException if k lies outside 0 to 1
     */
    public static double neutralRadiusM(double radiusM, double outerM, double k) {
        if (!(k >= 0 && k <= 1)) {
            throw new IllegalArgumentException("the neutral line lies within the tube, k from 0 to 1, found " + k);
        }
        return radiusM - outerM / 2 + k * outerM;
    }

    /**
     * The wall at the outside of a bend, in metres, where the tube keeps its length at the centreline and its wall its volume:
     * t R / (R + OD/2) (common practice, no source).
     */
    public double outsideWallM(double radiusM) {
        return wallM * radiusM / (radiusM + outerM / 2);
    }

    /**
     * What stands against a radius: the least that is usual for aluminium tube of this size, as recalled from
     * [faa-h-8083-30]; empty for a size that the table has not.
     */
    public Optional<Double> usualLeastRadiusM() {
        return SupportTable.of(outerM).map(SupportTable::aluminiumRadiusM);
    }
}
