package fayline.flow.result.fit.frame;

import fayline.flow.project.fit.frame.FrameSection;
import fayline.method.fitup.frame.BeamSection;

/**
 * A section with the stiffness it came out with.
 *
 * @param section as it was told
 * @param beam the stiffness
 * @param origin where the figures are from, in words
 * @param assumed whether any of them is assumed
 */
public record UsedSection(FrameSection section, BeamSection beam, String origin, boolean assumed) {
    /** Stiffness in stretch, N. */
    public double stretchN() {
        return beam.eMpa() * beam.areaMm2();
    }

    /** Stiffness in bending in the plane of the part, N mm². */
    public double bendInPlaneNMm2() {
        return beam.eMpa() * beam.izMm4();
    }

    /** Stiffness in bending out of that plane, N mm². */
    public double bendOutNMm2() {
        return beam.eMpa() * beam.iyMm4();
    }

    /** Stiffness in twist, N mm². */
    public double twistNMm2() {
        return beam.gMpa() * beam.jMm4();
    }
}
