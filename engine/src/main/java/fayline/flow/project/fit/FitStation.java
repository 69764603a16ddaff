package fayline.flow.project.fit;

import fayline.basis.units.Entered;
import fayline.basis.units.Length;
import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.Spot;
import java.util.Optional;

/**
 * A marked place.
 *
 * @param id its mark
 * @param where where it is, in words
 * @param at its place on the part's edge, where it is known; the nearest point of the outline counts where there is one
 * @param normal direction of the gap from part to neighbour, where it does not follow from the outline
 * @param edge the edge it lies on in the builder's words or the outline's, empty where it follows from the outline
 * @param against the neighbour there, empty for the only or first one
 * @param gap gap wanted here, where it differs
 * @param gapTolerance its tolerance here, where it differs
 * @param weight how much a millimetre here counts; 1 where nothing is said
 * @param bulge how the part stands out of its plane here
 */
public record FitStation(
        String id,
        String where,
        Optional<Spot> at,
        Optional<Normal> normal,
        String edge,
        String against,
        Optional<Entered<Length>> gap,
        Optional<Entered<Length>> gapTolerance,
        double weight,
        FitBulge bulge)
        implements Keyed {
    /** A station of a flat part. */
    public FitStation(
            String id,
            String where,
            Optional<Spot> at,
            Optional<Normal> normal,
            String edge,
            String against,
            Optional<Entered<Length>> gap,
            Optional<Entered<Length>> gapTolerance,
            double weight) {
        this(id, where, at, normal, edge, against, gap, gapTolerance, weight, FitBulge.NONE);
    }

    /** A station of which only the mark and the words are known. */
    public static FitStation of(String id, String where) {
        return new FitStation(
                id, where, Optional.empty(), Optional.empty(), "", "", Optional.empty(), Optional.empty(), 1);
    }

    /**
     * A direction of any length above nothing.
     *
     * @param nx along x
     * @param ny up
     */
    public record Normal(double nx, double ny) {}
}
