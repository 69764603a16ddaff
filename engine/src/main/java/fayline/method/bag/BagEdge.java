package fayline.method.bag;

import fayline.basis.units.Length;

/**
 * The tape line of a bag and its pleats.
 *
 * @param length long side of the tape rectangle
 * @param width short side of the tape rectangle
 * @param pleatsPerLongSide pleats on each long side
 * @param pleatsPerShortSide pleats on each short side
 * @param pleatHeight height of a pleat
 * @param handEdge film beyond the tape on each side, to hold on to
 * @param rollLength tape on one roll
 * @param spare more tape, as a fraction
 * @param perimeter length of the tape line without pleats, where it is no rectangle; zero for the rectangle's own
 * @param morePleats pleats that belong to no side, for the tape alone
 */
public record BagEdge(
        Length length,
        Length width,
        int pleatsPerLongSide,
        int pleatsPerShortSide,
        Length pleatHeight,
        Length handEdge,
        Length rollLength,
        double spare,
        Length perimeter,
        int morePleats) {
    /** A rectangle with pleats counted for the tape alone. */
    public static BagEdge tape(Length length, Length width, int pleats, Length height, Length roll, double spare) {
        return new BagEdge(length, width, 0, 0, height, new Length(0), roll, spare, new Length(0), pleats);
    }

    /** A rectangle with pleats by side. */
    public static BagEdge film(
            Length length, Length width, Length handEdge, int perLongSide, int perShortSide, Length height) {
        return new BagEdge(
                length, width, perLongSide, perShortSide, height, handEdge, new Length(0), 0, new Length(0), 0);
    }

    /** All pleats of the tape line. */
    public int pleats() {
        return 2 * (pleatsPerLongSide + pleatsPerShortSide) + morePleats;
    }
}
