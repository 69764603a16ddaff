package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameFitting;
import fayline.flow.project.fit.frame.FramePlace;
import fayline.method.fitup.frame.FramePoint;
import fayline.method.fitup.frame.pin.PinRelief;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Shapes and forces of a frame that is clamped, bonded and let go.
 *
 * @param places how each place goes
 * @param clamps what each clamp takes
 * @param bonds what the bond carries, place by place
 * @param strength what that means against the entered strength
 * @param fittings where latch pins and hinge points go
 * @param widths how the frame's widths change
 * @param strains the highest bending strains, where depths are known
 */
public record SprungShape(
        List<Moved> places,
        List<ClampPull> clamps,
        List<BondPull> bonds,
        Strength strength,
        List<Fitted> fittings,
        List<WidthChange> widths,
        List<Strain> strains) {
    /** Copies the lists. */
    public SprungShape {
        places = List.copyOf(places);
        clamps = List.copyOf(clamps);
        bonds = List.copyOf(bonds);
        fittings = List.copyOf(fittings);
        widths = List.copyOf(widths);
        strains = List.copyOf(strains);
    }

    /** How a place goes, by its mark. */
    public Optional<Moved> at(String place) {
        return places.stream().filter(m -> m.place().id().equals(place)).findFirst();
    }

    /**
     * How a place goes, off where it is drawn.
     *
     * @param place the place
     * @param free the free part; empty where the part has no beam
     * @param clamped the part under the clamps
     * @param part the part after release
     * @param carrier the carrier after release; empty where it has no beam
     */
    public record Moved(
            FramePlace place,
            Optional<FramePoint> free,
            Optional<FramePoint> clamped,
            Optional<FramePoint> part,
            Optional<FramePoint> carrier) {}

    /**
     * What a clamp takes.
     *
     * @param pull how far the part stands off there
     * @param forceN force on the part, positive the way the clamp acts
     * @param beyondHand whether it is above the hand limit
     * @param wrongWay whether the clamp cannot act that way
     */
    public record ClampPull(Pull pull, double forceN, boolean beyondHand, boolean wrongWay) {}

    /**
     * What the bond carries at a place.
     *
     * @param place the place
     * @param runMm length of bond line that it stands for
     * @param peelNPerMm load across it, positive where it is pulled open
     * @param shearNPerMm load along it
     * @param openingMm how far the adhesive is pulled open, negative where it is pressed; empty where it is tied hard
     * @param overlaps whether it would have to close farther than its thickness
     * @param peelMpa load across it over its width; empty where no width is told
     * @param shearMpa load along it over its width; empty as well then
     */
    public record BondPull(
            FramePlace place,
            double runMm,
            double peelNPerMm,
            double shearNPerMm,
            OptionalDouble openingMm,
            boolean overlaps,
            OptionalDouble peelMpa,
            OptionalDouble shearMpa) {
        private static final double LEAST_OPENING_MM = 0.01;

        /** Whether it is pulled open by as much as is worth telling. */
        public boolean pulledOpen() {
            return openingMm.orElse(0) > LEAST_OPENING_MM;
        }
    }

    /**
     * The bond against the entered strength.
     *
     * @param judged what can be said
     * @param margin strength over load less one, the least of all places and both ways; empty without a strength or a load
     * @param at the place where it is least; empty as well then
     */
    public record Strength(Judged judged, OptionalDouble margin, String at) {}

    /** What can be said of the strength of the bond. */
    public enum Judged {
        /** No strength is entered: nothing is said. */
        NOT_GIVEN,
        /** The strength is assumed: a margin, and no verdict. */
        ASSUMED,
        /** One of the two strengths is not entered: a margin, and no verdict. */
        PARTLY,
        /** The load is within the entered strength. */
        WITHIN,
        /** The load is above it, be it assumed or not. */
        ABOVE
    }

    /**
     * Where a latch pin or hinge point goes.
     *
     * @param fitting the fitting
     * @param shift against its hole
     * @param lateralMm the part of it across the axis
     * @param leftMm clearance less that; negative where it binds
     * @param sureMm standard uncertainty of it, where those of the pulls are known
     * @param relief at which clamp the part is best relieved or shimmed for it; empty where it lies on its axis
     */
    public record Fitted(
            FrameFitting fitting,
            FramePoint shift,
            double lateralMm,
            double leftMm,
            OptionalDouble sureMm,
            Optional<PinRelief> relief) {
        /** Whether it no longer goes in freely. */
        public boolean binds() {
            return leftMm < 0;
        }

        /** Whether it binds, or has less clearance left than twice its standard uncertainty. */
        public boolean inDoubt() {
            return leftMm < 2 * sureMm.orElse(0);
        }
    }

    /**
     * How a width of the carrier changes when the clamps come off.
     *
     * @param width the width's mark
     * @param changeMm positive where it widens
     * @param readMm the same as the last trial read it; empty where none was made
     */
    public record WidthChange(String width, double changeMm, OptionalDouble readMm) {}

    /**
     * The highest bending strain.
     *
     * @param when in which state
     * @param from the beam's one end
     * @param to its other end
     * @param strain as a fraction
     * @param beyond whether it is above the limit
     */
    public record Strain(String when, String from, String to, double strain, boolean beyond) {}
}
