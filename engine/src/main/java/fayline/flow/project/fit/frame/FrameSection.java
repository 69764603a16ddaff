package fayline.flow.project.fit.frame;

import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.frame.BeamSection;
import java.util.OptionalDouble;

/**
 * What beams are made of.
 *
 * @param id its id
 * @param form how stiff it is
 * @param origin where its figures are from; empty for a laminate, whose materials say so
 * @param assumed whether its figures are assumed
 */
public record FrameSection(String id, Form form, String origin, boolean assumed) implements Keyed {
    /** How stiff a section is. */
    public sealed interface Form {}

    /**
     * Entered, or reckoned from an entered modulus and a shape.
     *
     * @param section the section, y across in the plane of the part and z out of it where the beam faces out
     */
    public record Plain(BeamSection section) implements Form {}

    /**
     * Laid up: a flat strip, or a box with a wall of the laminate all round.
     *
     * @param laminate the laminate's id
     * @param axisRad direction of the beam against the laminate's axis
     * @param acrossMm its width in the plane of the part
     * @param outMm outer height of a box out of the plane; empty for a flat strip
     */
    public record Laid(String laminate, double axisRad, double acrossMm, OptionalDouble outMm) implements Form {}
}
