package fayline.method.bag;

import fayline.basis.units.Length;

/**
 * The question what the whole bag of one part uses up.
 *
 * @param shape the part in plan
 * @param surfaceFactor true surface over plan area
 * @param margins the margins
 * @param pleats pleats round the whole edge
 * @param pleatHeight height of a pleat
 * @param tapeRoll tape on one roll
 * @param tapeSpare more tape, as a fraction
 */
public record BagStack(
        Cover.Shape shape,
        double surfaceFactor,
        Margins margins,
        int pleats,
        Length pleatHeight,
        Length tapeRoll,
        double tapeSpare) {
    /** A part with the defaults of this program. */
    public static BagStack of(Cover.Shape shape, double surfaceFactor, int pleats, Length pleatHeight) {
        return new BagStack(shape, surfaceFactor, Margins.assumed(), pleats, pleatHeight, Length.ofMetres(7.6), 0.05);
    }

    /**
     * Margins beyond the part, each counted from its edge but for the last two.
     *
     * @param peelPly margin of the peel ply
     * @param perforatedFilm margin of the perforated film, which must not reach the tape
     * @param breather margin of the breather, tails under the ports included
     * @param tapeBeyondBreather distance of the tape line outside the breather
     * @param handEdge film beyond the tape, to hold on to
     */
    public record Margins(
            Length peelPly, Length perforatedFilm, Length breather, Length tapeBeyondBreather, Length handEdge) {
        /** Defaults of this program: 50, 30, 120, 60 and 50 mm (common practice, no source; shown as assumed). */
        public static Margins assumed() {
            return new Margins(
                    Length.ofMillimetres(50),
                    Length.ofMillimetres(30),
                    Length.ofMillimetres(120),
                    Length.ofMillimetres(60),
                    Length.ofMillimetres(50));
        }
    }
}
