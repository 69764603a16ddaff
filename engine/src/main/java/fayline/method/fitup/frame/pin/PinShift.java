package fayline.method.fitup.frame.pin;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.frame.FramePoint;
import java.util.OptionalDouble;

/**
 * What the release does to a pin.
 *
 * @param pin which
 * @param displacement of the pin against its hole, mm
 * @param lateralMm the part of it across the axis
 * @param alongMm the part of it along the axis, positive along
 * @param clearanceLeftMm clearance less lateral; negative where it binds
 * @param tiltRad how far its axis leans out of line with the hole's
 * @param lateralStdMm standard deviation along the lateral way, where the covariance of the deviations is known
 * @param sensitivity the six freedoms of the pin's node (arm left out), one row each, for one millimetre of deviation at each
 *     clamp, one column each
 */
public record PinShift(
        LatchPin pin,
        FramePoint displacement,
        double lateralMm,
        double alongMm,
        double clearanceLeftMm,
        double tiltRad,
        OptionalDouble lateralStdMm,
        DenseMatrix sensitivity) {
    /** Whether the pin no longer goes in freely. */
    public boolean binds() {
        return clearanceLeftMm < 0;
    }
}
