package fayline.flow.result.fit;

import java.util.OptionalDouble;

/**
 * The flush at one station, positive where the part stands proud.
 *
 * @param station its mark
 * @param readMm as read, the mean of repeats; empty where it was not read
 * @param afterMm after the move that is advised, in the plane or in space; empty where none is known for it
 * @param lowerMm least in tolerance now, so that it is in the end
 * @param upperMm most in tolerance
 */
public record StationFlush(
        String station, OptionalDouble readMm, OptionalDouble afterMm, double lowerMm, double upperMm) {}
